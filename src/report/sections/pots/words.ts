// Pots: its English. In: results, ways to say numbers. Out: text.
import type { Chance } from '../../../model/ranges.js';
import type { StockState } from '../../../model/stock.js';
import type { Lasting, PaintReach, Reach } from '../../../model/summary.js';
import { formOf } from '../../words/form-of.js';
import { nameOf } from '../../words/word-name.js';
import { aboutDigits, countOf, type NumberWords } from '../../words/word-numbers.js';
import { lowHighMeaning, wordTimes } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

/** A needed paint's state; `low` for one that this army does not need. */
export type PotState = StockState | 'low' | 'kept';

const labels = {
  heading: 'How long your pots last',
  here: 'on your shelf',
  onWay: 'on the way',
  toBuy: 'to buy',
  need: 'likely need',
  reach: 'low to high',
  keep: 'keep level',
  full: 'Every pot in full',
  ranges: `Ranges are ${lowHighMeaning}. Under each paint stands its weakest mark, and what causes most of its doubt.`,
  fullCaption: 'Millilitres; what is on the way counts as had',
  paint: 'Paint',
  have: 'have',
  needed: 'need',
  chance: 'runs out',
  lasts: 'lasts',
  left: 'likely left',
  keepLevel: 'keep level',
  runningLow: 'running low',
};

export const potWords = (say: NumberWords) => ({
  labels,
  axis: { need: 'likely need', twice: 'twice', keep: 'keep level' },
  lead: ({ states, unusedLow }: Lasting): string => {
    const count = (state: StockState): number =>
      states.find((one) => one.state === state)?.paints.length ?? 0;
    const clauses = [
      wordPaints(count('none owned'), 'is missing', 'are missing'),
      wordPaints(count('short'), 'is likely to run out', 'are likely to run out'),
      wordPaints(count('tight'), 'may', 'may'),
      wordPaints(count('enough'), 'should last', 'should last'),
    ].filter((clause) => clause !== undefined);
    const [first, ...others] = clauses;
    const rest = others.map(({ paints, what }) => `, ${say.count(paints)} ${what}`).join('');
    return first === undefined
      ? wordUnused(unusedLow.length, say)
      : `${countOf(say, first.paints, 'paint')} ${first.what}${rest}.`;
  },
  states: stateWords,
  /** Of a shelf without an army. */
  onShelf: {
    heading: 'Your pots',
    title: 'Below their keep level',
    lead: (low: number): string =>
      `${countOf(say, low, 'paint')} below ${formOf(low, 'its', 'their')} keep level.`,
  },
  barTitle: (paint: string, state: PotState): string =>
    `${nameOf(paint)}: ${state === 'low' || state === 'kept' ? barStates[state] : sharedWords.states[state]}`,
  /** `to figure 57, in Lower Gate Watch`, `2.4 for 5.1 ml`, `1.2 ml on the way`, `runs out in 92 of 100` */
  row: ({ haveMl, needMl, keepMl, onWayMl, worth, chance, reach }: PotAmounts): string[] => {
    const digits = aboutDigits(Math.max(haveMl, needMl ?? keepMl));
    const of = say.ml(needMl ?? keepMl, digits);
    const some = haveMl === 0 ? 'none' : say.bareMl(haveMl, digits);
    const have = needMl === undefined ? `${say.ml(haveMl, digits)}, to keep ${of}` : `${some} for ${of}`;
    return [
      ...(reach?.low === undefined ? [] : [wordFirst(reach, say)]),
      have,
      ...(onWayMl > 0 ? [`${say.ml(onWayMl, digits)} of it on the way`] : []),
      ...(worth === '' ? [] : [`worth ${worth}`]),
      ...(chance === undefined ? [] : [`runs out in ${wordTimes(chance, say)}`]),
    ];
  },
  lasts: (reach: PaintReach): string => wordReach(reach, say),
  none: 'none',
});
export type PotWords = ReturnType<typeof potWords>;

/** What a row is worded from. */
interface PotAmounts {
  readonly haveMl: number;
  /** Undefined for a paint that the army does not need. */
  readonly needMl: number | undefined;
  readonly keepMl: number;
  readonly onWayMl: number;
  /** Of a shelf without an army, what it is worth; else ''. */
  readonly worth: string;
  /** Undefined where the state says it. */
  readonly chance: Chance | undefined;
  /** Undefined where there is no pot. */
  readonly reach: PaintReach | undefined;
}

/** Figures as they are painted, one after the other. */
const wordTo = ({ figures, unit, ofUnit }: Reach, say: NumberWords): string =>
  figures === 0
    ? 'for no figure'
    : `to figure ${say.count(figures)}, ${ofUnit === 0 ? 'before' : 'in'} ${nameOf(unit)}`;

const wordTen = (low: Reach, say: NumberWords): string =>
  `one time in ten ${low.figures === 0 ? '' : 'only '}${wordTo(low, say)}`;

/** Likely; of a paint that is likely to last, one time in ten. */
const wordFirst = ({ likely, low }: PaintReach, say: NumberWords): string =>
  likely === undefined && low !== undefined ? wordTen(low, say) : wordReach({ likely, low: likely }, say);

function wordReach({ likely, low }: PaintReach, say: NumberWords): string {
  const text = likely === undefined ? 'for all' : wordTo(likely, say);
  return low === undefined || low.figures === likely?.figures ? text : `${text} (${wordTen(low, say)})`;
}

const wordPaints = (paints: number, one: string, many: string) =>
  paints === 0 ? undefined : { paints, what: formOf(paints, one, many) };

function wordUnused(paints: number, say: NumberWords): string {
  if (paints === 0) return '';
  return `${countOf(say, paints, 'low paint')} this army does not need.`;
}

/** The chances behind them are those of the stock stage. */
const stateWords: Readonly<Record<PotState, string>> = {
  'none owned': 'Missing',
  short: 'Likely to run out',
  tight: 'May run out',
  enough: 'Should last',
  low: 'Low, though this army does not need it',
  kept: 'Above their keep level',
};

const barStates = { low: 'low', kept: 'above its keep level' };
