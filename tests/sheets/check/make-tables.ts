// Tables for tests of the checks, without files: each sheet as rows of cells, the header row first.
import { registry } from '../../../src/assumptions/registry.js';
import type { SheetName } from '../../../src/model/words.js';
import { checkTables } from '../../../src/sheets/check/check-tables.js';
import type { Cell, Table } from '../../../src/sheets/table.js';

export type SheetRows = Partial<Record<SheetName, readonly (readonly Cell[])[]>>;

/** The least that can be planned. */
export const shortRows = {
  pots: [
    ['paint', 'size ml'],
    ['brick red', '17'],
    ['earth wash', '24'],
  ],
  figures: [
    ['figure', 'eye mm'],
    ['spearman', '28'],
  ],
  schemes: [
    ['scheme', 'step', 'zone', 'layer', 'paint'],
    ['red line', '1', 'whole', 'base coat', 'brick red'],
    ['red line', '2', 'whole', 'wash', 'earth wash'],
  ],
  army: [
    ['unit', 'figure', 'count'],
    ['first spears', 'spearman', '20'],
  ],
} as const satisfies SheetRows;

export function makeTables(sheets: SheetRows): Table[] {
  return Object.entries(sheets).map(([sheet, [headers = [], ...rows]]) => ({
    sheet: sheet as SheetName,
    file: `${sheet}.csv`,
    headerRow: 1,
    headers: headers.map(String),
    rows: rows.map((cells, index) => ({ row: index + 2, cells })),
  }));
}

/** Checks the short sheets with some of them replaced. */
export function check(sheets: SheetRows = {}, chosenDay?: string) {
  const tables = makeTables({ ...shortRows, ...sheets });
  return checkTables({ tables, problems: [] }, { assumptions: registry, today: '2026-11-02', chosenDay });
}

/** As `check`, for sheets that are right; throws with the problems where they are not. */
export function checkRight(sheets: SheetRows = {}) {
  const { sheets: right, problems } = check(sheets);
  if (right === undefined) throw new Error(JSON.stringify(problems, undefined, 1));
  return right;
}
