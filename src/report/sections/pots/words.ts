// Pots: its English. In: results, ways to say numbers. Out: text.
import type { StockState } from '../../../model/stock.js';
import { formOf } from '../../words/form-of.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';
import { lowHighMeaning } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

/** A needed paint's state; `low` for one that this army does not need. */
export type PotState = StockState | 'low' | 'kept';

const labels = {
  heading: 'Pots that run low',
  ranges: `In brackets, and drawn across each bar: low to high, ${lowHighMeaning}.`,
  here: 'on your shelf',
  onWay: 'on the way',
  toBuy: 'to buy',
  need: 'the line: what the army is likely to need',
  reach: 'low to high: above, the need; in the bar, what you have',
  keep: 'reach this, and the pot stays at its keep level',
  mark: {
    before: 'Under each paint stand the ',
    link: 'mark',
    after: ' of its weakest input and what causes most of its doubt.',
  },
  sure: { before: 'What is to be bought follows from ', link: 'the way you buy', after: '.' },
  runningLow: 'running low',
};

export const potWords = (say: NumberWords) => ({
  labels,
  axis: { need: 'likely need', twice: 'twice', keep: 'keep level' },
  lead: (runningLow: number, unusedLow: number): string =>
    runningLow === 0 && unusedLow === 0
      ? 'No owned pot falls below its keep level.'
      : [wordRunningLow(runningLow, say), wordUnused(unusedLow, say)].filter(Boolean).join(' '),
  states: stateWords(say),
  /** Of a shelf without an army. */
  onShelf: {
    title: 'Below their keep level',
    lead: (low: number): string =>
      `${countOf(say, low, 'paint')} below ${formOf(low, 'its', 'their')} keep level.`,
  },
  barTitle: (paint: string, state: PotState): string =>
    `${nameOf(paint)}: ${state === 'low' || state === 'kept' ? barStates[state] : sharedWords.states[state]}`,
  amounts: {
    have: 'have',
    need: 'need',
    chance: 'chance of running short',
    toBuy: 'to buy',
    left: 'likely left',
    keep: 'keep level',
    none: 'none',
    worth: 'worth',
  },
  onWay: (ml: string): string => `${ml} of it on the way`,
});
export type PotWords = ReturnType<typeof potWords>;

function wordRunningLow(paints: number, say: NumberWords): string {
  if (paints === 0) return '';
  return `${countOf(say, paints, 'owned paint')} will be running low after this army: less than its keep level will be left.`;
}

function wordUnused(paints: number, say: NumberWords): string {
  if (paints === 0) return '';
  return `${countOf(say, paints, 'paint')} that it does not need ${formOf(paints, 'is', 'are')} low already.`;
}

const barStates = { low: 'low', kept: 'above its keep level' };

interface StateWords {
  readonly title: string;
  readonly meaning: string;
}

/** The chances are those of the stock stage. */
function stateWords({ percent }: NumberWords): Readonly<Record<PotState, StateWords>> {
  return {
    'none owned': {
      title: 'None owned',
      meaning: 'The army needs it and no pot of it is on your shelf.',
    },
    short: {
      title: 'Short',
      meaning: `It runs short more likely than not: the chance that today’s pots do not last is over ${percent(0.5)}.`,
    },
    tight: {
      title: 'Tight',
      meaning: `It may run short: the chance of that is over ${percent(0.1)}, up to ${percent(0.5)}.`,
    },
    enough: {
      title: 'Enough',
      meaning: `The chance that it runs short is ${percent(0.1)} or less. Many small chances add up: to be sure of the whole army, some more of it may still be bought.`,
    },
    kept: { title: 'Above their keep level', meaning: 'A line marks that level.' },
    low: {
      title: 'Low, though this army does not need it',
      meaning: 'Less is left than the keep level; a line marks that level.',
    },
  };
}
