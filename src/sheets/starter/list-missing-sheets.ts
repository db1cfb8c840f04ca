// Starter: the sheets that a painter's folder lacks. In: its tables. Out: those sheets under their headers, with the names that
// the others speak of; all else is left to be filled in.
import type { SheetName } from '../../model/words.js';
import { makeFindings } from '../check/collect-findings.js';
import { anyPrice } from '../check/read-cell/read-price.js';
import { readRows } from '../check/read-rows.js';
import type { ReadTables } from '../table.js';
import { listStarterSheets, type StarterSheet } from './list-starter-sheets.js';

/** By sheet, where the names in its first needed column of that header stand too. */
const named: Partial<Record<SheetName, { readonly header: string; readonly in: readonly SheetName[] }>> = {
  pots: { header: 'paint', in: ['schemes'] },
  paints: { header: 'paint', in: ['pots', 'schemes', 'offers'] },
  shops: { header: 'shop', in: ['offers'] },
  figures: { header: 'figure', in: ['army'] },
  schemes: { header: 'scheme', in: ['army'] },
  army: { header: 'figure', in: ['figures'] },
};

/** Each sheet that is not among the tables nor among the broken ones that problems tell of. */
export function listMissingSheets(read: ReadTables): StarterSheet[] {
  const broken = read.problems.flatMap(({ code, sheet }) => (code === 'missing-sheet' ? [] : [sheet]));
  const there = new Set<string | undefined>([...read.tables.map(({ sheet }) => sheet), ...broken]);
  return listStarterSheets()
    .filter(({ sheet }) => !there.has(sheet))
    .map(({ sheet, columns }) => {
      const { header = '', in: others = [] } = named[sheet] ?? {};
      const names = new Set(others.flatMap((other) => namesIn(read, other, header)));
      const rows = [...names].map((name) => columns.map((one) => (one.header === header ? name : '')));
      return { sheet, columns, rows };
    });
}

/** What stands under a header, however the painter calls it; what is wrong there is told by the checks. */
function namesIn({ tables }: ReadTables, sheet: SheetName, key: string): readonly string[] {
  return tables
    .filter((table) => table.sheet === sheet)
    .flatMap((table) => {
      const { rows } = readRows(sheet, { table, terms: { price: anyPrice }, findings: makeFindings() });
      const cells = rows.flatMap((row) => Object.entries(row));
      return cells.flatMap(([of, value]) => (of === key && typeof value === 'string' ? [value] : []));
    });
}
