// Armies: where their shelf stands. In: what was read of each army, the folder that was named. Out: the shelf's path, problems.
import { stat } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { problem } from '../../problems/catalogue.js';
import { headerKey } from '../match-header.js';
import type { FoundProblem } from '../read/grid.js';
import { fileIn, openTable, type Source } from './source.js';

interface FoundShelf {
  /** Undefined: the pots stand in the armies' own sheets. */
  readonly path: string | undefined;
  readonly problems: readonly FoundProblem[];
}

/** `named` counts from the current folder, a setting from its sheets; they may not name two. */
export async function findShelf(armies: readonly Source[], named: string | undefined): Promise<FoundShelf> {
  let path = named === undefined ? undefined : resolve(named);
  const problems: FoundProblem[] = [];
  for (const { name, path: sheets, read } of armies) {
    for (const table of read.tables.filter((one) => one.sheet === 'settings')) {
      const { table: filled, text } = openTable(table);
      for (const row of filled.rows.filter((one) => headerKey(text(one, 'name')) === 'shelf')) {
        const value = text(row, 'value');
        const own = value === '' ? path : resolve(await folderOf(sheets), value);
        const place = { file: fileIn(name, table.file), sheet: table.sheet, row: row.row };
        if (path !== undefined && own !== path)
          problems.push(problem('two-shelves', place, { found: value, expected: path }));
        path ??= own;
      }
    }
  }
  return { path, problems };
}

async function folderOf(path: string): Promise<string> {
  const found = await stat(path).catch(() => undefined);
  return found?.isDirectory() === true ? path : dirname(path);
}
