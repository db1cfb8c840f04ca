// Promise: where paints take many pots. In: what is sought, what is known. Out: more of it, from steps about the best way.
import { within } from '../choose-counts.js';
import { type CutSearch, leastOfBound, openCuts } from './cut-search.js';
import type { Fineness } from './list-steps.js';
import { cheaper, isProved, isProvedBest, mended, note, type Searching } from './note-found.js';
import { boughtIn, type Way, wayOf } from './way.js';

/** Steps of such paints are not looked at all. */
export const ofMany: Fineness = { shareLeft: 0.01 };

/** Times that steps are chosen anew. */
const mostChoices = 8;

/** Of the time of a program, for one of them in whole numbers: ten times as much gains a thousandth of the bound, if that. */
const shareOfMany = 0.1;

/**
 * Of paints of many pots steps lie close about what relaxations buy and about the best way; as long as the bound rises they are chosen
 * anew about the next ones. Then whole numbers are asked for.
 */
export async function searchAbout({ sought, known }: Searching): Promise<void> {
  const { solve, limits, onProgress } = within(shareOfMany, sought.buying);
  let about = boughtBy(known.best);
  for (let choice = 0; choice < mostChoices && !isProved(known); choice++) {
    const before = known.leastMinor;
    const cuts = openCuts(sought, { ...ofMany, about }, known.missed);
    const relaxed = cuts === undefined ? undefined : await cutFractions(cuts, { sought, known });
    if (cuts === undefined || relaxed === undefined) return;
    about = [relaxed, ...boughtBy(known.best)];
    if (known.leastMinor > before * (1 + leastGain)) continue;
    const solution = await solve(cuts.program(known.best), limits, onProgress);
    const missed = note(solution, cuts, { sought, known });
    if (!isProvedBest(solution) || missed === undefined) return;
    about = [boughtIn(missed), ...boughtBy(known.best)];
  }
}

const boughtBy = (way: Way | undefined): Map<string, number>[] => (way === undefined ? [] : [boughtIn(way)]);

/** A bound that rises by less than this share is as good as still; a relaxation may be so once, not twice in a row. */
const leastGain = 2e-3;
const mostSlow = 2;

/**
 * The rows that matter most, from relaxations alone: what these cost bounds the promise. Gives what the last one buys, likely usable ml by paint;
 * rounded down and mended it may be the best way. Undefined where none was solved in the time there is.
 */
async function cutFractions(
  cuts: CutSearch,
  { sought, known }: Searching,
): Promise<Map<string, number> | undefined> {
  const { solve, limits } = sought.buying;
  let counts: readonly number[] | undefined;
  let [before, slow] = [0, 0];
  while (slow < mostSlow) {
    const solution = await solve(cuts.relaxed(), limits);
    if (solution.state !== 'proved') break;
    counts = solution.values.slice(0, cuts.wares.length);
    known.leastMinor = Math.max(known.leastMinor, leastOfBound(solution));
    slow = solution.bound < before * (1 + leastGain) ? slow + 1 : 0;
    before = solution.bound;
    if (!cuts.cutOffValues(solution.values)) break;
  }
  if (counts === undefined) return undefined;
  const fewer = counts.map((count) => Math.floor(count + wholeWithin));
  known.best = cheaper(known.best, mended(wayOf(cuts.wares, fewer, sought), { sought, known }));
  return boughtIn({ wares: cuts.wares, counts });
}

/** Of a count, what rounding may have taken. */
const wholeWithin = 1e-6;
