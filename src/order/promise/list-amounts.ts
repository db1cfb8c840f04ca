// Promise: what whole pots of a paint come to. In: sizes. Out: amounts in ml, rising.
import { at } from '../../model/at.js';
import { sameMl } from '../../model/volume.js';

/** Pots (or sets) that hold so much of a paint, and how many of them make sense. */
export interface Size {
  readonly ml: number;
  readonly most: number;
}

/** Sums of several sizes meet often: so many times more are looked at than are kept. */
const sumsToAmount = 16;

/**
 * Every sum of whole pots from 0 up to the first that reaches `to`. Undefined where there are more than `most`.
 * Pots of 12 and 17 ml, up to 30: 0, 12, 17, 24, 29, 34.
 */
export function listAmounts(sizes: readonly Size[], to: number, most: number): readonly number[] | undefined {
  let sums: readonly number[] | undefined = [0];
  for (const size of sizes) {
    sums = addSize(sums, size, to, most);
    if (sums === undefined) return undefined;
  }
  const last = sums.findIndex((ml) => ml >= to - sameMl);
  return last < 0 ? sums : sums.slice(0, last + 1);
}

/** The sums with any number of one more size, each once. */
function addSize(
  sums: readonly number[],
  { ml, most: pots }: Size,
  to: number,
  most: number,
): readonly number[] | undefined {
  const found: number[] = [];
  for (const sum of sums) {
    const useful = Math.min(pots, Math.ceil(Math.max(0, to - sum - sameMl) / ml));
    if (found.length + useful > sumsToAmount * most) return undefined;
    for (let count = 0; count <= useful; count++) found.push(sum + count * ml);
  }
  found.sort((a, b) => a - b);
  const each = found.filter((one, place) => place === 0 || one - at(found, place - 1) > sameMl);
  return each.length > most ? undefined : each;
}
