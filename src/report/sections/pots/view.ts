// Report view: how long the pots last. In: the plan, its sums. Out: one row and one bar per paint, grouped by state (which
// follows the chance of running short), the worst first, and low paints that this army does not use.

import type { Chance, PaintRange } from '../../../model/ranges.js';
import type { PaintStock } from '../../../model/stock.js';
import { rangeOf, shareOf } from '../../drawing/scale.js';
import { hexOf } from '../../words/hex-of.js';
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs, Worded } from '../../words/view-inputs.js';
import { wordNoNeed } from '../../words/word-no-need.js';
import type { LowHigh } from '../../words/word-sure.js';
import { type FullRow, viewFull } from './view-full.js';
import { type PotState, type PotWords, potWords } from './words.js';

export interface PotsView {
  readonly labels: PotWords['labels'];
  readonly heading: string;
  readonly lead: string;
  /** By state, the worst first; states without a paint are left out. */
  readonly groups: readonly PotGroup[];
  /** Every paint of them with all its amounts. */
  readonly rows: readonly FullRow[];
}

interface PotGroup {
  /** For looks: `none owned`, `short`, `tight`, `enough`, `low`. */
  readonly state: string;
  readonly title: string;
  /** What is not urgent. */
  readonly isFolded: boolean;
  /** What the lines across its bars stand for, at shares of the first. */
  readonly axis: readonly PotMark[];
  readonly paints: readonly PotRow[];
}

export interface PotMark {
  readonly share: number;
  readonly text: string;
}

interface PotRow {
  readonly paint: string;
  readonly says: readonly string[];
  readonly bar: PotBar;
}

/** A paint's bar. Shares are of the line: 1 is what the army needs (or the keep level). */
export interface PotBar {
  /** `#rrggbb`, or '' where no sheet gives the colour. */
  readonly hex: string;
  readonly line: 'needed' | 'keep';
  readonly hereShare: number;
  /** On its way, beyond what is here. */
  readonly orderedShare: number;
  /** What is to be bought, beyond what is here and on its way. */
  readonly buyShare: number;
  /** Low and high of the need, and of what is here and on its way; undefined where they are exact. */
  readonly need: LowHigh | undefined;
  readonly have: LowHigh | undefined;
  /** Where the paint must reach to stay at its keep level; undefined: not ticked. */
  readonly keepShare: number | undefined;
  readonly title: string;
}

/** Every paint that the army still needs, then the low ones that it does not. */
export function viewPots(inputs: ViewInputs): PotsView {
  const { plan, words } = inputs;
  const { lasting, work } = plan.summary;
  const texts = potWords(words);
  const isShelf = plan.lacking.includes('army');
  const kept = isShelf ? plan.stock.filter(({ runningLow }) => !runningLow) : [];
  const groups = [
    ...lasting.states,
    { state: 'low' as const, paints: lasting.unusedLow },
    { state: 'kept' as const, paints: kept },
  ].filter(({ paints }) => paints.length > 0);
  const noNeed = lasting.states.length === 0 ? wordNoNeed(work) : '';
  return {
    labels: texts.labels,
    heading: isShelf ? texts.onShelf.heading : texts.labels.heading,
    lead: isShelf ? texts.onShelf.lead(lasting.unusedLow.length) : joinSentences(noNeed, texts.lead(lasting)),
    groups: groups.map(({ state, paints }) => ({
      state,
      title: isShelf && state === 'low' ? texts.onShelf.title : texts.states[state],
      isFolded: state === 'enough' || state === 'kept' || (state === 'low' && !isShelf),
      axis: listMarks(lineOf(state), texts),
      paints: paints.map((one) => viewPot(one, state, { ...inputs, texts })),
    })),
    rows: groups.flatMap(({ state, paints }) =>
      paints.map((one) => viewFull(one, state, { ...inputs, texts })),
    ),
  };
}

const lineOf = (state: PotState): PotBar['line'] => (state === 'low' || state === 'kept' ? 'keep' : 'needed');

const listMarks = (line: PotBar['line'], { axis }: PotWords): PotGroup['axis'] =>
  line === 'keep'
    ? [{ share: 1, text: axis.keep }]
    : [
        { share: 1, text: axis.need },
        { share: 2, text: axis.twice },
      ];

function viewPot(stock: PaintStock, state: PotState, { plan, texts, words }: Worded<PotWords>): PotRow {
  const { paint, haveMl, orderedMl, needMl, keepMl } = stock;
  const range = plan.ranges.paints.get(paint);
  const worth = plan.lacking.includes('army') ? plan.summary.shelf.worthOf.get(paint) : undefined;
  return {
    paint,
    says: texts.row({
      ...{ haveMl, keepMl, onWayMl: orderedMl },
      needMl: lineOf(state) === 'keep' ? undefined : needMl,
      worth: worth === undefined || worth.exactMinor.isZero() ? '' : words.amount(worth),
      chance: chanceOf(stock, range),
      reach: stock.pots.length === 0 ? undefined : plan.summary.lasting.reach.get(paint),
    }),
    bar: drawnBar(stock, range, {
      hex: hexOf(plan, paint),
      line: lineOf(state),
      title: texts.barTitle(paint, state),
    }),
  };
}

/** A paint of which there is no pot runs short for sure: its state says so. */
const chanceOf = ({ pots, needMl }: PaintStock, range: PaintRange | undefined): Chance | undefined =>
  pots.length === 0 || needMl === 0 ? undefined : range?.chanceShort;

type BarLooks = Pick<PotBar, 'hex' | 'line' | 'title'>;

function drawnBar(stock: PaintStock, range: PaintRange | undefined, looks: BarLooks): PotBar {
  const { needMl, haveMl, orderedMl, toBuyMl, keepMl, pots } = stock;
  const lineMl = looks.line === 'needed' ? needMl : keepMl;
  const ticked = looks.line === 'needed' && needMl > 0 && pots.length > 0 && keepMl > 0;
  return {
    ...looks,
    hereShare: shareOf(haveMl, lineMl, -orderedMl),
    orderedShare: shareOf(orderedMl, lineMl),
    buyShare: shareOf(toBuyMl, lineMl),
    need: rangeOf(range?.needMl, lineMl),
    have: rangeOf(range?.haveMl, lineMl),
    keepShare: ticked ? shareOf(needMl, lineMl, keepMl) : undefined,
  };
}
