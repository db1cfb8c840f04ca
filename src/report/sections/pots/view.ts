// Report view: pots that run low. In: the plan, its sums. Out: one row and one bar per paint, grouped by state (which follows
// the chance of running short), the worst first, and low paints that this army does not use.

import type { PaintRange, Range } from '../../../model/ranges.js';
import type { PaintStock } from '../../../model/stock.js';
import { rangeOf, shareOf } from '../../drawing/scale.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordNoNeed } from '../../words/word-no-need.js';
import { mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { type LowHigh, wordChance, wordMlRange } from '../../words/word-sure.js';
import { type PotState, type PotWords, potWords } from './words.js';

/** What stands where: a label and its text. */
interface Amounts {
  readonly label: string;
  readonly text: string;
}

export interface PotsView {
  readonly labels: PotWords['labels'];
  readonly lead: string;
  /** By state, the worst first; states without a paint are left out. */
  readonly groups: readonly PotGroup[];
}

interface PotGroup {
  /** For looks: `none owned`, `short`, `tight`, `enough`, `low`. */
  readonly state: string;
  readonly title: string;
  /** What the state means, said once. */
  readonly meaning: string;
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
  readonly runningLow: boolean;
  readonly amounts: readonly Amounts[];
  readonly bar: PotBar;
  readonly trust: TrustView;
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
  ];
  const runningLow = lasting.states.flatMap(({ paints }) => paints).filter((one) => one.runningLow);
  const lead = texts.lead(runningLow.length, lasting.unusedLow.length);
  return {
    labels: texts.labels,
    lead: isShelf
      ? texts.onShelf.lead(lasting.unusedLow.length)
      : lasting.states.length === 0
        ? `${wordNoNeed(work)} ${lead}`
        : lead,
    groups: groups
      .filter(({ paints }) => paints.length > 0)
      .map(({ state, paints }) => ({
        state,
        title: isShelf && state === 'low' ? texts.onShelf.title : texts.states[state].title,
        meaning: texts.states[state].meaning,
        axis: listMarks(lineOf(state), texts),
        paints: paints.map((one) => viewPot(one, state, { ...inputs, texts })),
      })),
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

interface PotInputs extends ViewInputs {
  readonly texts: PotWords;
}

function viewPot(stock: PaintStock, state: PotState, { plan, texts, words, trust }: PotInputs): PotRow {
  const range = plan.ranges.paints.get(stock.paint);
  const doubt = plan.summary.lasting.paintTrust.get(stock.paint);
  return {
    paint: stock.paint,
    runningLow: stock.runningLow,
    amounts: listAmounts(stock, range, { texts, words, used: lineOf(state) === 'needed' }).concat(
      plan.lacking.includes('army') ? listWorth(stock.paint, { plan, texts, words }) : [],
    ),
    bar: drawnBar(stock, range, {
      hex: hexOf(plan, stock.paint),
      line: lineOf(state),
      title: texts.barTitle(stock.paint, state),
    }),
    trust: trust.of(doubt ?? { mark: stock.mark, biggestDoubt: '' }),
  };
}

interface Wording {
  readonly texts: PotWords;
  readonly words: NumberWords;
  /** False for a paint that this army does not need. */
  readonly used: boolean;
}

/** All share their digits, except what is to be bought: that reads alike wherever the report says it. */
function listAmounts(
  stock: PaintStock,
  range: PaintRange | undefined,
  { texts, words, used }: Wording,
): Amounts[] {
  const { needMl, haveMl, orderedMl, leftAfterMl, toBuyMl, keepMl, pots } = stock;
  const { amounts } = texts;
  const digits = mlDigits(Math.max(needMl, haveMl));
  const ml = (volumeMl: number): string => words.ml(volumeMl, digits);
  const lowHigh = (of: Range | undefined): string =>
    of === undefined || ml(of.low) === ml(of.high) ? '' : ` (${wordMlRange(of, digits, words)})`;
  const onWay = orderedMl > 0 ? `, ${texts.onWay(ml(orderedMl))}` : '';
  const have = {
    label: amounts.have,
    text: haveMl === 0 ? amounts.none : `${ml(haveMl)}${lowHigh(range?.haveMl)}${onWay}`,
  };
  const keep = pots.length > 0 ? [{ label: amounts.keep, text: ml(keepMl) }] : [];
  if (!used) return [have, ...keep];
  const need = { label: amounts.need, text: `${ml(needMl)}${lowHigh(range?.needMl)}` };
  const left = pots.length > 0 && leftAfterMl > 0 ? [{ label: amounts.left, text: ml(leftAfterMl) }] : [];
  const buy = toBuyMl > 0 ? [{ label: amounts.toBuy, text: words.ml(toBuyMl) }] : [];
  const chance = wordShort(stock, range, words);
  const short = chance === '' ? [] : [{ label: amounts.chance, text: chance }];
  return [have, need, ...short, ...buy, ...left, ...keep];
}

/** Nothing for a paint without a price. */
function listWorth(
  paint: string,
  { plan, texts, words }: Pick<PotInputs, 'plan' | 'texts' | 'words'>,
): Amounts[] {
  const worth = plan.summary.shelf.worthOf.get(paint);
  if (worth === undefined || worth.exactMinor.isZero()) return [];
  return [{ label: texts.amounts.worth, text: words.amount(worth) }];
}

/** A paint of which there is no pot runs short for sure: its state says so. */
function wordShort({ pots, needMl }: PaintStock, range: PaintRange | undefined, words: NumberWords): string {
  return range === undefined || pots.length === 0 || needMl === 0 ? '' : wordChance(range.chanceShort, words);
}

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
