// Report view: pots that run low. In: the plan, its sums. Out: one row and one bar per paint, grouped by state (which follows
// the chance of running short), the worst first, and low paints that this army does not use.

import type { PaintRange, Range } from '../../../model/ranges.js';
import type { PaintStock, StockState } from '../../../model/stock.js';
import { isNeeded, type Lasting } from '../../../model/summary.js';
import { rangeOf, shareOf } from '../../drawing/scale.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { nameOf } from '../../words/word-name.js';
import { wordNoNeed } from '../../words/word-no-need.js';
import { countOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { type LowHigh, lowHighMeaning, wordChance, wordMlRange } from '../../words/word-sure.js';

/** What stands where: a label and its text. */
interface Amounts {
  readonly label: string;
  readonly text: string;
}

export interface PotsView {
  readonly lead: string;
  /** What low and high mean. */
  readonly ranges: string;
  /** By state, the worst first; states without a paint are left out. */
  readonly groups: readonly PotGroup[];
}

interface PotGroup {
  /** For looks: `none owned`, `short`, `tight`, `enough`, `low`. */
  readonly state: string;
  readonly title: string;
  /** What the state means, said once. */
  readonly meaning: string;
  /** What the line across each bar stands for. */
  readonly line: 'needed' | 'keep level';
  readonly paints: readonly PotRow[];
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
  /** Unique within the page, letters, digits and hyphens only. */
  readonly id: string;
  /** `#rrggbb`, or '' where no sheet gives the colour. */
  readonly hex: string;
  readonly line: 'needed' | 'keep level';
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
  readonly says: string;
}

/** What each state means; the chances are those of the stock stage. */
const groups: readonly {
  readonly state: StockState;
  readonly title: string;
  readonly meaning: (words: NumberWords) => string;
}[] = [
  {
    state: 'none owned',
    title: 'None owned',
    meaning: () => 'The army needs it and no pot of it is on your shelf.',
  },
  {
    state: 'short',
    title: 'Short',
    meaning: ({ percent }) =>
      `It runs short more likely than not: the chance that today’s pots do not last is over ${percent(0.5)}.`,
  },
  {
    state: 'tight',
    title: 'Tight',
    meaning: ({ percent }) =>
      `It may run short: the chance of that is over ${percent(0.1)}, up to ${percent(0.5)}.`,
  },
  {
    state: 'enough',
    title: 'Enough',
    meaning: ({ percent }) =>
      `The chance that it runs short is ${percent(0.1)} or less. Many small chances add up: to be sure of the whole army, some more of it may still be bought.`,
  },
];

/** Every paint that the army still needs, then the low ones that it does not. */
export function viewPots(inputs: ViewInputs): PotsView {
  const { plan, words } = inputs;
  const { lasting, work } = plan.summary;
  const byState = groups.flatMap(({ state, title, meaning }) => {
    const paints = lasting.states.find((one) => one.state === state)?.paints ?? [];
    const line = 'needed' as const;
    return { state, title, meaning: meaning(words), line, paints: paints.map((one) => viewPot(one, inputs)) };
  });
  const lowGroup: PotGroup = {
    state: 'low',
    title: 'Low, though this army does not need it',
    meaning: 'Less is left than the keep level; a line marks that level.',
    line: 'keep level',
    paints: lasting.unusedLow.map((one) => viewPot(one, inputs)),
  };
  return {
    ranges: `In brackets, and drawn across each bar: low to high, ${lowHighMeaning}.`,
    lead: `${lasting.states.length === 0 ? `${wordNoNeed(work)} ` : ''}${wordLead(lasting, words)}`,
    groups: [...byState, lowGroup].filter(({ paints }) => paints.length > 0),
  };
}

function wordLead({ states, unusedLow: unused }: Lasting, words: NumberWords): string {
  const low = states.flatMap(({ paints }) => paints).filter(({ runningLow }) => runningLow).length;
  const unusedLow = unused.length;
  const after = `${countOf(words, low, 'owned paint')} will be running low after this army: less than its keep level will be left.`;
  const already = `${countOf(words, unusedLow, 'paint')} that it does not need ${unusedLow === 1 ? 'is' : 'are'} low already.`;
  const none = 'No owned pot falls below its keep level.';
  return [low > 0 ? after : '', unusedLow > 0 ? already : '', low === 0 && unusedLow === 0 ? none : '']
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function viewPot(stock: PaintStock, { plan, words, trust }: ViewInputs): PotRow {
  const { work, lasting } = plan.summary;
  const used = isNeeded(work, stock.paint);
  const range = plan.ranges.paints.get(stock.paint);
  const amounts = wordAmounts(stock, range, { words, used });
  const state = used ? stock.state : 'low';
  const doubt = lasting.paintTrust.get(stock.paint);
  return {
    paint: stock.paint,
    runningLow: stock.runningLow,
    amounts,
    bar: drawnBar(stock, range, {
      id: `pot-${plan.stock.indexOf(stock) + 1}`,
      hex: hexOf(plan, stock.paint),
      line: used ? 'needed' : 'keep level',
      title: `${nameOf(stock.paint)}: ${state}`,
      says: amounts.map(({ label, text }) => `${label} ${text}`).join(', '),
    }),
    trust: trust.of(doubt ?? { mark: stock.mark, biggestDoubt: '' }),
  };
}

interface Wording {
  readonly words: NumberWords;
  /** False for a paint that this army does not need. */
  readonly used: boolean;
}

/** All share their digits, except what is to be bought: that reads alike wherever the report says it. */
function wordAmounts(stock: PaintStock, range: PaintRange | undefined, { words, used }: Wording): Amounts[] {
  const { needMl, haveMl, orderedMl, leftAfterMl, toBuyMl, keepMl } = stock;
  const digits = mlDigits(Math.max(needMl, haveMl));
  const ml = (volumeMl: number): string => words.ml(volumeMl, digits);
  const lowHigh = (of: Range | undefined): string =>
    of === undefined || ml(of.low) === ml(of.high) ? '' : ` (${wordMlRange(of, digits, words)})`;
  const onWay = orderedMl > 0 ? `, ${ml(orderedMl)} of it on the way` : '';
  const have = {
    label: 'have',
    text: haveMl === 0 ? 'none' : `${ml(haveMl)}${lowHigh(range?.haveMl)}${onWay}`,
  };
  const keep = stock.pots.length > 0 ? [{ label: 'keep level', text: ml(keepMl) }] : [];
  if (!used) return [have, ...keep];
  const need = { label: 'need', text: `${ml(needMl)}${lowHigh(range?.needMl)}` };
  const left =
    stock.pots.length > 0 && leftAfterMl > 0 ? [{ label: 'likely left', text: ml(leftAfterMl) }] : [];
  const buy = toBuyMl > 0 ? [{ label: 'to buy', text: words.ml(toBuyMl) }] : [];
  return [have, need, ...wordShort(stock, range, words), ...buy, ...left, ...keep];
}

/** A paint of which there is no pot runs short for sure: its state says so. */
function wordShort(
  { pots, needMl }: PaintStock,
  range: PaintRange | undefined,
  words: NumberWords,
): Amounts[] {
  if (range === undefined || pots.length === 0 || needMl === 0) return [];
  return [{ label: 'chance of running short', text: wordChance(range.chanceShort, words) }];
}

type BarLooks = Pick<PotBar, 'id' | 'hex' | 'line' | 'title' | 'says'>;

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
