// Armies: where their shelf stands. In: what was read of each army, the folder that was named. Out: the shelf's path, problems.
import { basename, dirname, resolve } from 'node:path';
import { problem } from '../../problems/catalogue.js';
import { settingRows } from '../columns/setting-rows.js';
import { headerKey } from '../match-header.js';
import type { FoundProblem } from '../read/grid.js';
import { fileIn, openTable, type Source } from './source.js';

interface FoundShelf {
  /** Undefined: the pots stand in the armies' own sheets. */
  readonly path: string | undefined;
  readonly problems: readonly FoundProblem[];
}

/** `named` counts from the current folder, a setting from its sheets; they may not name two. */
export function findShelf(armies: readonly Source[], named: string | undefined): FoundShelf {
  let path = named === undefined ? undefined : resolve(named);
  const problems: FoundProblem[] = [];
  for (const { found, file, row, own } of armies.flatMap(listShelves)) {
    const place = { file, sheet: 'settings', row } as const;
    if (path !== undefined && own !== path)
      problems.push(problem('two-shelves', place, { found, expected: path }));
    path ??= own;
  }
  return { path, problems };
}

interface NamedShelf {
  readonly file: string;
  readonly row: number;
  /** As written. */
  readonly found: string;
  readonly own: string;
}

function listShelves({ name, path, read }: Source): NamedShelf[] {
  return read.tables
    .filter(({ sheet }) => sheet === 'settings')
    .flatMap((table) => {
      const { table: filled, text } = openTable(table);
      // A workbook stands in the folder that its shelf counts from.
      const folder = table.file.startsWith(basename(resolve(path))) ? dirname(path) : path;
      return filled.rows
        .filter((row) => headerKey(text(row, 'name')) === settingRows.shelf.name && text(row, 'value') !== '')
        .map((row) => ({
          ...{ file: fileIn(name, table.file), row: row.row, found: text(row, 'value') },
          own: resolve(folder, text(row, 'value')),
        }));
    });
}
