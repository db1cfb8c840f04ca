// Report view: the workbook's totals. In: its sheets, the plan. Out: the sheet: each total now, and as planned.

import type { Amount } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { CostTable } from './view-cost-sheet.js';
import type { PaintTable } from './view-paint-sheet.js';
import type { SheetView } from './workbook-view.js';
import { either, isZero, minus, num, over, type Term } from './write-formula.js';

const columns = {
  what: ['total', 38],
  now: ['now', 14, 2],
  planned: ['as planned', 14, 2],
  change: ['change', 14, 2],
  unit: ['in', 8],
} as const satisfies Record<string, ColumnOf>;

interface Totals {
  readonly plan: Plan;
  readonly paints: PaintTable;
  readonly costs: CostTable;
  /** Minor units, also parts of one, as the spreadsheet has them. */
  readonly major: (minor: number) => number;
}

/** What changes with the workbook, beside what the plan said of it. */
export function writeTotals({ plan, paints, costs, major }: Totals): SheetView {
  const table = new SheetTable('totals', columns, ['planned']);
  const { estimate, stock, costs: planned, figureCount, settings } = plan;
  const add = (what: string, now: Term, [as, unit]: readonly [number, string]): number => {
    const row = table.add({ what, now, planned: isAlike(as, now.result) ? now.result : as, unit });
    table.put(row, { change: minus(table.here('now', row), table.here('planned', row)) });
    return row;
  };
  const needs = [...estimate.needs.values()];
  const ml = (of: (one: (typeof needs)[number]) => number): readonly [number, string] => [
    needs.reduce((sum, one) => sum + of(one), 0),
    'ml',
  ];
  const money = ({ exactMinor }: Amount): readonly [number, string] => [
    major(exactMinor.toNumber()),
    settings.currency,
  ];
  const missingMl = stock.reduce((sum, { needMl, haveMl }) => sum + Math.max(0, needMl - haveMl), 0);
  const figures = add('figures', costs.sum('figures'), [figureCount, 'figures']);
  add(
    'paint put out, whole scheme',
    paints.sum('wholeMl'),
    ml(({ wholeMl }) => wholeMl),
  );
  add(
    'paint put out, remaining',
    paints.sum('needMl'),
    ml(({ remainingMl }) => remainingMl),
  );
  add('likely to be missing', paints.sum('likelyMl'), [missingMl, 'ml']);
  const whole = add(
    `cost of use, whole scheme${atLeast(planned.useWhole)}`,
    costs.sum('whole'),
    money(planned.useWhole),
  );
  add(`of it extras${atLeast(planned.extrasWhole)}`, costs.sum('extras'), money(planned.extrasWhole));
  const each = major(planned.useWhole.exactMinor.toNumber()) / (figureCount || 1);
  const count = table.here('now', figures);
  const average = either(isZero(count), num(0), over(table.here('now', whole), count));
  add(`cost of use, a figure${atLeast(planned.useWhole)}`, average, [each, settings.currency]);
  add(
    `cost of use, remaining${atLeast(planned.useRemaining)}`,
    costs.sum('left'),
    money(planned.useRemaining),
  );
  add(
    `price of the unpainted figures${atLeast(planned.figuresPrice)}`,
    costs.sum('figuresPrice'),
    money(planned.figuresPrice),
  );
  table.add({ what: orderOf(plan), planned: major(planned.cashMinor), unit: settings.currency });
  return table.view();
}

const orderOf = ({ promised: { surePercent } }: Plan): string =>
  surePercent === undefined ? 'cash for the order' : `cash for the order, to be ${surePercent}% sure`;

/** Where something in a sum has no price. */
const atLeast = (sum: Amount): string => (sum.atLeast ? ', at least' : '');

/** Sums of one and the same in another order differ by a hair; the sheet shall open without a change. */
const isAlike = (one: number, other: number): boolean =>
  Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(one));
