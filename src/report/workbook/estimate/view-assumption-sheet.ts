// Report view: the workbook's assumptions. In: the plan's assumptions. Out: their sheet, and a cell for each name.
import { type Assumption, familyName } from '../../../model/assumption.js';
import { columnWords } from './column-words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { cellWords, sheetWords } from './words.js';
import type { SheetView } from './workbook-view.js';
import type { Term } from './write-formula.js';

export interface AssumptionSheet {
  /** The likely value. Throws on a name that the plan lacks, which only a mistake in the code can cause. */
  readonly likely: (name: string) => Term;
  /** The sheet, once everything that refers to it is written. */
  readonly view: () => SheetView;
}

/** One row an assumption; what no formula asks for is said to change nothing here. */
export function openAssumptions(assumptions: readonly Assumption[]): AssumptionSheet {
  const names = columnWords.assumptions;
  const columns = {
    name: [names.name, 28],
    likely: [names.likely, 11],
    unit: [names.unit, 22],
    works: [names.works, 21],
    low: [names.low, 9],
    high: [names.high, 9],
    mark: [names.mark, 16],
    source: [names.source, 60],
  } as const satisfies Record<string, ColumnOf>;
  const table = new SheetTable(sheetWords.assumptions.name, columns, ['low', 'high']);
  const rows = new Map<string, number>();
  for (const { name, low, likely, high, unit, mark, source } of assumptions) {
    rows.set(name, table.add({ name, likely, unit, works: cellWords.works.no, low, high, mark, source }));
  }
  const likely = (name: string): Term => {
    const row = rows.get(name) ?? rows.get(familyName(name));
    if (row === undefined) throw new Error(`no assumption is called "${name}"`);
    table.put(row, { works: cellWords.works.yes });
    return table.from('likely', row);
  };
  return { likely, view: () => table.view() };
}
