// Model: what many draws say. In: a column of draws, or how many of them count. Out: quantiles, chances with their standard
// error.
import type { Chance, Range } from './ranges.js';

/**
 * The value that a share `p` (0 to 1) of draws does not pass: of the draws in rising order the one nearest to
 * `p x draws + 1/2`. JCGM 101:2008, 7.7.2. Of no draws 0.
 */
export function quantileOf(draws: Float64Array, p: number): number {
  return selectRank(draws.slice(), rankOf(p, draws.length));
}

/** The same of draws that are in rising order already. */
export const quantileOfRising = (rising: Float64Array, p: number): number =>
  rising[rankOf(p, rising.length)] ?? 0;

const rankOf = (p: number, draws: number): number =>
  Math.min(draws, Math.max(1, Math.round(p * draws + 0.5))) - 1;

/** P10 and P90. */
export function rangeOf(draws: Float64Array): Range {
  const mixed = draws.slice();
  const low = selectRank(mixed, rankOf(0.1, draws.length));
  return { low, high: selectRank(mixed, rankOf(0.9, draws.length)) };
}

/**
 * P10 and P90, or the likely value where that lies beyond one of them: the formula at the likely values need not stand in the
 * middle of what is drawn, where many values are held at a bound or a weighing is far from all that was expected.
 */
export function rangeAbout(likely: number, draws: Float64Array): Range {
  const { low, high } = rangeOf(draws);
  return { low: Math.min(low, likely), high: Math.max(high, likely) };
}

/** The value that stands at a rank once the column is sorted; the column is left partly sorted. Hoare 1961, algorithm 65. */
function selectRank(column: Float64Array, rank: number): number {
  let [from, to] = [0, column.length - 1];
  while (from < to) {
    const [low, high] = partition(column, from, to);
    if (rank <= high) to = high;
    else if (rank >= low) from = low;
    else break;
  }
  return column[rank] ?? 0;
}

/** Values up to the pivot before the place `high`, those from it on after `low`, and only the pivot's own between them. */
function partition(column: Float64Array, from: number, to: number): readonly [low: number, high: number] {
  const pivot = column[(from + to) >> 1] as number;
  let [low, high] = [from, to];
  while (low <= high) {
    while ((column[low] as number) < pivot) low++;
    while ((column[high] as number) > pivot) high--;
    if (low > high) break;
    const kept = column[low] as number;
    column[low++] = column[high] as number;
    column[high--] = kept;
  }
  return [low, high];
}

/**
 * The share of draws and its standard error `sqrt(p (1 - p) / n)`. Where all or none of them count, the error is that of
 * one draw more or less. Of no draws all count.
 */
export function chanceOf(counted: number, draws: number): Chance {
  if (draws === 0) return { chance: 1, error: 0 };
  const chance = counted / draws;
  const held = Math.min(1 - 1 / draws, Math.max(1 / draws, chance));
  return { chance, error: Math.sqrt((held * (1 - held)) / draws) };
}
