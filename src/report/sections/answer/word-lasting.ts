// Report view: whether today's pots last, as a chance and the paints that decide it. In: paints needed, ranges. Out: text.
import type { PaintStock } from '../../../model/plan.js';
import type { Chance, Ranges } from '../../../model/ranges.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordChance } from '../../words/word-sure.js';

interface Lasting {
  readonly figure: string;
  readonly says: string;
}

/** Of one paint needed or more. The chance for the whole army first; a paint of which there is no pot leaves none. */
export function wordLasting(needed: readonly PaintStock[], ranges: Ranges, words: NumberWords): Lasting {
  const none = needed.filter(({ state }) => state === 'none owned');
  return {
    figure: none.length > 0 ? 'No' : wordVerdict(ranges.chanceAllLast, words),
    says: `${wordWhole(none, words)}${wordStates(needed, words)}${wordDeciding(needed, ranges, words)}`,
  };
}

/** Certain enough above nine in ten, as a paint is `enough`; below one in ten not worth hoping for. */
function wordVerdict(chance: Chance, words: NumberWords): string {
  const sure = `${wordChance(chance, words)} sure`;
  if (chance.chance >= 0.9) return `Yes: ${sure}`;
  if (chance.chance >= 0.5) return `Likely: ${sure}`;
  if (chance.chance >= 0.1) return `Hardly: ${sure}`;
  return chance.chance < 0.005 ? `No: ${sure}` : `No: only ${sure}`;
}

function wordWhole(none: readonly PaintStock[], words: NumberWords): string {
  return none.length === 0
    ? 'That is the chance that today’s pots last for the whole army. '
    : `The chance that today’s pots last for the whole army is ${words.percent(0)}: there is no pot of ${listOf(none.map(({ paint }) => nameOf(paint)))}. `;
}

function wordStates(needed: readonly PaintStock[], words: NumberWords): string {
  const counts = (['none owned', 'short', 'tight', 'enough'] as const)
    .map((state) => ({ state, count: needed.filter((one) => one.state === state).length }))
    .filter(({ count }) => count > 0)
    .map(({ state, count }) => `${words.count(count)} ${state}`);
  return `${countOf(words, needed.length, 'paint')} needed${counts.length > 0 ? `: ${listOf(counts)}` : ''}.`;
}

/** Under this chance of running short a paint decides nothing. */
const leastChance = 0.01;

/** The owned paints that are most likely to run short. */
function wordDeciding(needed: readonly PaintStock[], { paints }: Ranges, words: NumberWords): string {
  const risky = needed
    .filter(({ state }) => state !== 'none owned')
    .flatMap(({ paint }) => {
      const short = paints.get(paint)?.chanceShort;
      return short === undefined || short.chance < leastChance ? [] : [{ paint, short }];
    })
    .sort((a, b) => b.short.chance - a.short.chance);
  if (risky.length === 0) return '';
  const named = risky.slice(0, 3).map(({ paint, short }) => `${nameOf(paint)} (${wordChance(short, words)})`);
  return ` ${risky.length > 3 ? 'Most likely to run short' : 'May run short'}: ${listOf(named)}.`;
}
