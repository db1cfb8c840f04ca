// Report view: colour differences in words. In: CIEDE2000, the plan's own idea of what is just visible. Out: text.
import { differenceBands } from '../../model/colour.js';
import type { Plan } from '../../model/plan.js';
import type { NumberWords } from './word-numbers.js';
import { sharedWords } from './words.js';

export interface DifferenceWords {
  /** `3.6, just visible`. */
  readonly of: (dE00: number) => string;
  /** `3.6` alone. */
  readonly bare: (dE00: number) => string;
  /** From here on a difference is seen; of the assumptions, else the usual one. */
  readonly visible: number;
  /** What the numbers mean, said once. */
  readonly meaning: string;
}

const { plain, other } = differenceBands;

export function differenceWords(
  { assumptions }: Pick<Plan, 'assumptions'>,
  words: NumberWords,
): DifferenceWords {
  const visible =
    assumptions.find(({ name }) => name === 'just visible difference')?.likely ?? differenceBands.visible;
  const bare = (dE00: number): string => words.tenth(dE00);
  return {
    bare,
    visible,
    of: (dE00) => `${bare(dE00)}, ${bandOf(roundTenth(dE00), visible)}`,
    meaning: sharedWords.differences.meaning(words.plain(visible), plain, other),
  };
}

/** As shown: words must fit the number that stands beside them. */
const roundTenth = (value: number): number => Math.round(value * 10) / 10;

function bandOf(dE00: number, visible: number): string {
  const { differences } = sharedWords;
  if (dE00 < Math.min(1, visible)) return differences.unseen;
  if (dE00 < visible) return differences.hardly;
  if (dE00 < plain) return differences.visible;
  return dE00 < other ? differences.plain : differences.other;
}
