// Report view: the first sheet of the workbook. In: the plan, what the workbook holds. Out: what may be changed, what
// follows, and what does not.
import type { Plan } from '../../../model/plan.js';
import type { Recipes } from './list-recipes.js';
import { readMeWords } from './words.js';
import type { SheetView } from './workbook-view.js';

/** One column of text. */
export function viewReadMe(plan: Plan, { rows, leftOut }: Recipes): SheetView {
  const several = rows.reduce((sum, { unit, units }) => sum + (unit === '' ? units : 0), 0);
  const { name, header, lead, together, leftOut: left, sheets, plain } = readMeWords;
  const lines = [
    ...lead(plan.date, plan.settings.currency),
    ...(several > 0 ? [together(several)] : []),
    ...(leftOut.length > 0 ? [left(leftOut.length)] : []),
    '',
    ...sheets,
    '',
    ...plain,
  ];
  return { name, columns: [{ header, width: 120 }], rows: lines.map((line) => [line]) };
}
