// Report view: the workbook's assumptions. In: the plan's assumptions. Out: their sheet, and a cell for each name.
import { type Assumption, familyName } from '../../../model/assumption.js';
import { SheetTable } from './sheet-table.js';
import { sheetWords } from './sheet-words.js';
import { cellWords } from './words.js';
import type { Term } from './write-formula.js';

/** The likely value of a name. Throws on one that the plan lacks, which only a mistake in the code can cause. */
export type Likely = (name: string) => Term;

/** One row an assumption; what no formula asks for is said to change nothing here. The sheet is complete once all formulas are. */
export function openAssumptions(assumptions: readonly Assumption[]) {
  const table = new SheetTable(sheetWords.assumptions);
  const rows = new Map(
    assumptions.map(({ name, low, likely, high, unit, mark, source }) => [
      name,
      table.add({ name, likely, unit, works: cellWords.works.no, low, high, mark, source }),
    ]),
  );
  const likely: Likely = (name) => {
    const row = rows.get(name) ?? rows.get(familyName(name));
    if (row === undefined) throw new Error(`no assumption is called "${name}"`);
    row.put({ works: cellWords.works.yes });
    return row.from('likely');
  };
  return { likely, table };
}
