// Promise: what keeps it at one quantile, common to all paints. In: what is asked for in each draw. Out: needs by paint.
import { sameMl } from '../../model/volume.js';
import type { Asked } from './list-asked.js';
import { needsOf, type Way } from './way.js';

/**
 * What must be bought of each paint so that no more than `mayFail` draws lack anything: one quantile, common to all paints, just
 * high enough. Each draw is as hard as its hardest paint, by rank; so the quantile is the hardness that all other draws do not
 * pass. Needs no search, and mostly asks for more than the cheapest way.
 */
export function commonNeeds(asked: readonly Asked[], mayFail: number): Map<string, number> {
  const { hardness, least } = hardnessOf(asked, mayFail);
  const rank = hardness.sort()[least] ?? least;
  return new Map(asked.map(({ paint, rising }) => [paint, rising[rank] ?? 0]));
}

/** The same within what a way holds, which may be much more of a paint than its promise takes: a pot is bought whole. */
export function leastNeeds(way: Way, asked: readonly Asked[], mayFail: number): Map<string, number> {
  const { hardness, least } = hardnessOf(asked, mayFail);
  const rank = hardness.filter((_, draw) => way.fails[draw] === 0).sort()[least] ?? least;
  return needsOf(
    { fails: way.fails.map((fails, draw) => (fails === 0 && (hardness[draw] ?? 0) <= rank ? 0 : 1)) },
    asked,
  );
}

/** Of each draw the rank of its hardest paint, but no less than that which a promise of one paint takes. */
function hardnessOf(asked: readonly Asked[], mayFail: number) {
  const draws = asked[0]?.ml.length ?? 0;
  const least = draws - mayFail - 1;
  const hardness = new Int32Array(draws).fill(least);
  for (const one of asked) raiseHardness(hardness, one);
  return { hardness, least };
}

function raiseHardness(hardness: Int32Array, { ml: asked, rising }: Asked): void {
  for (let draw = 0; draw < hardness.length; draw++) {
    const [ml, rank] = [asked[draw] as number, hardness[draw] as number];
    // Where the value at the rank found so far does for this paint too, the draw is no harder for it.
    if (ml <= sameMl || (rising[rank] as number) >= ml) continue;
    hardness[draw] = countBelow(rising, ml, rank + 1);
  }
}

/** How many of some rising values are below one, of which the first `least` are known to be. */
function countBelow(rising: Float64Array, value: number, least: number): number {
  let [low, high] = [least, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}
