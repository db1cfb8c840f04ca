// Report view: the workbook's totals. In: its sheets, the plan. Out: the sheet: each total now, and as planned.
import type { Amount } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import { SheetTable } from './sheet-table.js';
import { sheetWords } from './sheet-words.js';
import type { CostTable } from './view-cost-sheet.js';
import type { PaintTable } from './view-paint-sheet.js';
import { totalWords } from './words.js';
import type { SheetView } from './workbook-view.js';
import { either, isZero, minus, num, over, type Term } from './write-formula.js';

interface Totals {
  readonly plan: Plan;
  readonly paints: PaintTable;
  readonly costs: CostTable;
  /** Minor units, also parts of one, as the spreadsheet has them. */
  readonly major: (minor: number) => number;
}

/** What changes with the workbook, beside what the plan said of it. */
export function writeTotals({ plan, paints, costs, major }: Totals): SheetView {
  const table = new SheetTable(sheetWords.totals);
  const { estimate, stock, costs: planned, figureCount } = plan;
  const { currency } = plan.settings;
  const add = (what: string, now: Term, as: number, unit: string): Term => {
    const { here, put } = table.add({ what, now, planned: isAlike(as, now.result) ? now.result : as, unit });
    put({ change: minus(here('now'), here('planned')) });
    return here('now');
  };
  const addMoney = (what: string, now: Term, sum: Amount, figures = 1): Term =>
    add(what + atLeast(sum), now, major(sum.exactMinor.toNumber()) / figures, currency);
  const needs = [...estimate.needs.values()];
  const wholeMl = needs.reduce((sum, need) => sum + need.wholeMl, 0);
  const remainingMl = needs.reduce((sum, need) => sum + need.remainingMl, 0);
  const missingMl = stock.reduce((sum, { needMl, haveMl }) => sum + Math.max(0, needMl - haveMl), 0);

  const count = add(totalWords.figures, costs.sum('figures'), figureCount, totalWords.figures);
  add(totalWords.whole, paints.sum('wholeMl'), wholeMl, 'ml');
  add(totalWords.remaining, paints.sum('needMl'), remainingMl, 'ml');
  add(totalWords.missing, paints.sum('likelyMl'), missingMl, 'ml');
  const whole = addMoney(totalWords.cost, costs.sum('whole'), planned.useWhole);
  addMoney(totalWords.extras, costs.sum('extras'), planned.extrasWhole);
  const average = either(isZero(count), num(0), over(whole, count));
  addMoney(totalWords.each, average, planned.useWhole, figureCount || 1);
  addMoney(totalWords.left, costs.sum('left'), planned.useRemaining);
  addMoney(totalWords.figuresPrice, costs.sum('figuresPrice'), planned.figuresPrice);
  table.add({ what: totalWords.order(plan), planned: major(planned.cashMinor), unit: currency });
  return table.view();
}

/** Where something in a sum has no price. */
const atLeast = (sum: Amount): string => (sum.atLeast ? totalWords.atLeast : '');

/** Sums of one and the same in another order differ by a hair; the sheet shall open without a change. */
const isAlike = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one));
