// Armies: names that several armies write down alike count once; those that differ are told. In: sources. Out: sources without
// repeats, problems.

import { groupBy } from '../../model/group-by.js';
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { foldName } from '../check/fold-name.js';
import { settingRows } from '../columns/setting-rows.js';
import { headerKey } from '../match-header.js';
import type { FoundProblem } from '../read/grid.js';
import type { Table } from '../table.js';
import { changeTables, type OpenedTable, openTable, placeAt, type Source } from './source.js';

/** What names the rows that belong together; the first of the keys is blamed. */
const namedBy: Readonly<Partial<Record<SheetName, readonly string[]>>> = {
  paints: ['paint'],
  offers: ['offer', 'shop'],
  shops: ['shop'],
  figures: ['figure'],
  zones: ['zone', 'figure'],
  schemes: ['scheme'],
  extras: ['item'],
  settings: ['name'],
};

/** By name: which source has it, and all its rows as text. */
type Known = Map<string, { readonly source: string; readonly rows: string }>;

export function dropRepeats(sources: readonly Source[]): {
  readonly sources: readonly Source[];
  readonly problems: readonly FoundProblem[];
} {
  const problems: FoundProblem[] = [];
  let kept = sources;
  for (const [sheet, keys] of Object.entries(namedBy) as [SheetName, readonly string[]][]) {
    const known: Known = new Map();
    kept = kept.map((source) => {
      const groups: Known = new Map();
      const changed = changeTables(source, sheet, (table) => {
        const opened = openTable(table);
        return dropKnown(opened, { keys, known, groups, source: source.name, problems });
      });
      for (const [name, group] of groups) known.set(name, group);
      return changed;
    });
  }
  return { sources: kept, problems };
}

type Row = Table['rows'][number];

/** Rows without a name are told when they are checked; a shelf may be reached by two ways. */
const isTold = (name: string, { sheet }: Table): boolean =>
  name.trim() !== '' && !(sheet === 'settings' && name === headerKey(settingRows.shelf.name));

interface Dropping {
  readonly keys: readonly string[];
  readonly known: Known;
  readonly groups: Known;
  readonly source: string;
  readonly problems: FoundProblem[];
}

function dropKnown(opened: OpenedTable, { keys, known, groups, source, problems }: Dropping): Table {
  const { table, text } = opened;
  const nameOf = (row: Row): string => keys.map((key) => nameText(text(row, key), table)).join('\n');
  const byName = groupBy(table.rows, nameOf);
  const [blamed = ''] = keys;
  for (const [name, rows] of byName) {
    const written = rows
      .map((row) => opened.keys.map((key) => foldName(text(row, key))).join('\t'))
      .join('\n');
    const before = known.get(name);
    const [first] = rows;
    if (before === undefined) groups.set(name, { source, rows: written });
    else if (before.rows !== written && first !== undefined && isTold(name, table)) {
      const code = table.sheet === 'settings' ? 'settings-of-armies-differ' : 'names-of-armies-differ';
      const details = { found: text(first, blamed), expected: before.source };
      problems.push(problem(code, placeAt(opened, first, blamed), details));
    }
  }
  const rows = table.rows.filter((row) => !known.has(nameOf(row)));
  return rows.length === table.rows.length ? opened.written : { ...table, rows };
}

const nameText = (text: string, { sheet }: Table): string =>
  sheet === 'settings' ? headerKey(text) : foldName(text);
