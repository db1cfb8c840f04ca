// Report view: cash against figures. In: the plan's staircase. Out: the steps as rows, what one more figure costs, notes.

import type { Rise, StairSums } from '../../../model/order-sums.js';
import type { Plan } from '../../../model/plan.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs, Worded } from '../../words/view-inputs.js';
import { type StairsChart, viewStairsChart } from './view-chart.js';
import { type StairsWords, stairsWords } from './words.js';

export interface StairsView {
  readonly labels: StairsWords['labels'];
  readonly heading: string;
  readonly lead: string;
  /** What one more figure costs right now. */
  readonly next: { readonly figure: string; readonly says: string };
  /** Undefined where nothing has to be bought up to twice the army. */
  readonly chart: StairsChart | undefined;
  readonly caption: string;
  readonly rows: readonly StairRow[];
  /** True where some rows are not proved, so that each says how it stands. */
  readonly showProved: boolean;
  /** Steps not looked for, steps not proved. */
  readonly notes: readonly string[];
}

interface StairRow {
  /** The number of the step in the chart. */
  readonly no: string;
  readonly figures: string;
  readonly cash: string;
  readonly rise: string;
  readonly paints: readonly { readonly paint: string; readonly hex: string }[];
  /** Paints beyond those: `and 3 more`; '' for none. */
  readonly others: string;
  readonly proved: string;
}

/** Undefined for an army of nobody, which has no steps. */
export function viewStairs({ plan, words }: ViewInputs): StairsView | undefined {
  const sums = plan.summary.stairs;
  if (sums === undefined) return undefined;
  const { rises, unproved } = sums;
  const texts = stairsWords(words);
  return {
    labels: texts.labels,
    heading: texts.heading(plan.stairs.mostFigures),
    lead: texts.lead(plan),
    next: viewNext(plan, sums, texts.next),
    chart: viewStairsChart({ plan, sums, words, texts: texts.chart }),
    caption: texts.caption(sums),
    rows: rises.map((rise, index) => viewRow(rise, index + 1, { plan, words, texts })),
    showProved: unproved > 0,
    notes: [
      ...(plan.stairs.everyStep ? [] : [texts.missed]),
      ...(unproved === 0 ? [] : [texts.open(unproved)]),
    ],
  };
}

/** The step right after the army is looked for whatever the others are; later ones may have been passed over. */
function viewNext(
  { figureCount, order }: Plan,
  { next }: StairSums,
  texts: StairsWords['next'],
): StairsView['next'] {
  if (next === undefined) return { figure: texts.nothing, says: texts.evenTwice(order) };
  const extra = texts.extra(next);
  return next.reachesFigure === figureCount && next.isNext
    ? { figure: extra, says: texts.needed(next) }
    : { figure: texts.nothing, says: texts.later(order, next, extra) };
}

/** A step of a large army may come of hundreds of paints; plan.json has them all. */
const mostNames = 12;

function viewRow(rise: Rise, no: number, { plan, words, texts }: Worded<StairsWords>): StairRow {
  const { figures, cashMinor, riseMinor, because, proved } = rise;
  return {
    no: words.count(no),
    figures: words.count(figures),
    cash: words.money(cashMinor),
    rise: words.money(riseMinor),
    paints: because.slice(0, mostNames).map((paint) => ({ paint, hex: hexOf(plan, paint) })),
    others: texts.others(because.length - mostNames),
    proved: texts.proved(proved),
  };
}
