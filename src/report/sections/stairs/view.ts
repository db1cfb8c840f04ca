// Report view: cash against figures. In: the plan's staircase. Out: the steps as rows, what one more figure costs, notes.
import type { Plan } from '../../../model/plan.js';
import type { Rise, StairSums } from '../../../model/summary.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordAim } from '../../words/word-aim.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordBut } from '../../words/word-promise.js';
import { searchLonger } from '../../words/word-proof.js';
import { type StairsChart, viewStairsChart } from './view-chart.js';

export interface StairsView {
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
  return {
    lead: wordLead(plan, words),
    next: wordNext(plan, sums, words),
    chart: viewStairsChart({ plan, sums }, words),
    caption: `Where the cash rises, ${countOf(words, rises.length, 'step')}${unproved === 0 ? ', each proved: no order for so many figures costs less' : ''}`,
    rows: rises.map((rise, index) => viewRow(rise, index + 1, { plan, words })),
    showProved: unproved > 0,
    notes: wordNotes(plan, unproved, words),
  };
}

function wordLead(plan: Plan, words: NumberWords): string {
  const { firstUnit } = plan.summary;
  const start = firstUnit === undefined ? '' : `, ${nameOf(firstUnit.unit)} first`;
  return `The least cash for paint, postage included, against the number of figures. They are painted by priority${start}; after the army’s last figure a second army follows from scratch, in the same order. What ${wordAim(plan, words)} takes over the likely needs of your army is kept in proportion at every number of figures. Paint that no offer covers costs nothing here.`;
}

/** The step right after the army is looked for whatever the others are; later ones may have been passed over. */
function wordNext(plan: Plan, { next }: StairSums, words: NumberWords): StairsView['next'] {
  const { figureCount, order } = plan;
  const reach = wordReach(order);
  if (next === undefined) return { figure: 'nothing', says: `${reach}, even for twice the army.` };
  const { rise, extraMinor, reachesFigure, isNext } = next;
  const extra = wordExtra(rise, extraMinor, words);
  const because = listOf(rise.because.map(nameOf));
  if (reachesFigure === figureCount && isNext)
    return { figure: extra, says: `More of ${because} would be needed.` };
  const step = `figure ${words.count(rise.figures)} (${because}): ${extra}`;
  const says = isNext
    ? `The next step is ${step}.`
    : `The next step shown is ${step}; not every step was looked for, so it may come earlier.`;
  return { figure: 'nothing', says: `${reach}, up to figure ${words.count(reachesFigure)}. ${says}` };
}

/** A step that is not proved may be had for less. */
function wordExtra({ proved }: Rise, extraMinor: number, words: NumberWords): string {
  const money = words.money(extraMinor);
  return proved || extraMinor === 0 ? money : `at most ${money}`;
}

function wordReach(order: Plan['order']): string {
  const what = order.lines.length === 0 ? 'Your pots' : 'Your pots and this order';
  return `${what} still reach${wordBut(order)}`;
}

/** A step of a large army may come of hundreds of paints; plan.json has them all. */
const mostNames = 12;

function viewRow(
  { figures, cashMinor, riseMinor, because, proved }: Rise,
  no: number,
  { plan, words }: { readonly plan: Plan; readonly words: NumberWords },
): StairRow {
  return {
    no: words.count(no),
    figures: words.count(figures),
    cash: words.money(cashMinor),
    rise: words.money(riseMinor),
    paints: because.slice(0, mostNames).map((paint) => ({ paint, hex: hexOf(plan, paint) })),
    others: because.length > mostNames ? `and ${words.count(because.length - mostNames)} more` : '',
    proved: proved ? 'proved' : 'not proved',
  };
}

function wordNotes({ stairs }: Plan, unproved: number, words: NumberWords): string[] {
  const missed =
    'There are too many steps to look for each: between those shown the cash may rise earlier than drawn, never later.';
  const open = `${countOf(words, unproved, 'step is', 'steps are')} not proved: a cheaper order may exist there. ${searchLonger}`;
  return [...(stairs.everyStep ? [] : [missed]), ...(unproved === 0 ? [] : [open])];
}
