// Answer: whether today's pots last, as a chance and the paints that decide it. In: the verdict, ranges. Out: text.
import type { Chance, Ranges } from '../../../model/ranges.js';
import type { Lasting, Verdict } from '../../../model/summary.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { isTrace, wordChance } from '../../words/word-sure.js';

interface Worded {
  readonly figure: string;
  readonly says: string;
}

/** Of one paint needed or more. The chance for the whole army first; a paint of which there is no pot leaves none. */
export function wordLasting(lasting: Lasting, ranges: Ranges, words: NumberWords): Worded {
  const none = lasting.states.find(({ state }) => state === 'none owned')?.paints ?? [];
  return {
    figure: none.length > 0 ? 'No' : wordVerdict(lasting.verdict, ranges.chanceAllLast, words),
    says: `${wordWhole(none, words)}${wordStates(lasting, words)}${wordRisky(lasting, words)}`,
  };
}

const verdicts: Record<Verdict, string> = { yes: 'Yes', likely: 'Likely', hardly: 'Hardly', no: 'No' };

function wordVerdict(verdict: Verdict, chance: Chance, words: NumberWords): string {
  const only = verdict === 'no' && !isTrace(chance) ? 'only ' : '';
  return `${verdicts[verdict]}: ${only}${wordChance(chance, words)} sure`;
}

function wordWhole(none: readonly { readonly paint: string }[], words: NumberWords): string {
  return none.length === 0
    ? 'That is the chance that today’s pots last for the whole army. '
    : `The chance that today’s pots last for the whole army is ${words.percent(0)}: there is no pot of ${listOf(none.map(({ paint }) => nameOf(paint)))}. `;
}

function wordStates({ states }: Lasting, words: NumberWords): string {
  const counts = states.map(({ state, paints }) => `${words.count(paints.length)} ${state}`);
  const needed = states.flatMap(({ paints }) => paints).length;
  return `${countOf(words, needed, 'paint')} needed: ${listOf(counts)}.`;
}

/** The owned paints that are most likely to run short. */
function wordRisky({ risky }: Lasting, words: NumberWords): string {
  if (risky.length === 0) return '';
  const named = risky
    .slice(0, 3)
    .map(({ paint, chanceShort }) => `${nameOf(paint)} (${wordChance(chanceShort, words)})`);
  return ` ${risky.length > 3 ? 'Most likely to run short' : 'May run short'}: ${listOf(named)}.`;
}
