// Solver: subadditive cuts. In: columns and rows of a program. Out: rows that every whole solution keeps and fractions need not.
import { at } from '../../model/at.js';
import { feasibilityTolerance, isCovering } from './covering-rows.js';
import type { Column, IntegerProgram, Row } from './integer-program.js';

/** One of several sizes that cover: how much, and at what cost. */
interface Size {
  readonly covers: number;
  readonly cost: number;
}

/** A search that takes more steps is given up, and its cut left out. */
const mostSteps = 500;

/** Of a coefficient, what rounding may have added. */
const rounding = 1e-12;

/**
 * For each covering row `sum of a x >= b` the cut `sum of m(a) x >= m(b)`, with m(r) the least cost of covering r by the row's own
 * columns, those that stand in no other covering row. m never falls, and it is subadditive, since two covers laid together
 * cover the sum: so the cut holds for every whole solution, whatever its other columns cost. Where thousands of pots of two
 * sizes cover a need, it says what that costs, and no fraction of a pot is left to branch on.
 *
 * Source: Nemhauser & Wolsey 1988 (Integer and Combinatorial Optimization), chapter II.1, from memory.
 */
export function subadditiveCuts({ columns, rows }: Pick<IntegerProgram, 'columns' | 'rows'>): Row[] {
  const covering = rows.filter((row) => isCovering(row, columns));
  const times = new Uint32Array(columns.length);
  for (const { terms } of covering) for (const [column] of terms) times[column] = at(times, column) + 1;
  return covering.flatMap((row) => {
    const own = row.terms.filter(([column]) => at(times, column) === 1 && at(columns, column).cost > 0);
    const sizes = listSizes(own, columns);
    // Of one size alone the rounding cut says as much.
    return sizes.length < 2 ? [] : cutOf(row, sizes);
  });
}

/** Each size at its least cost, by the cost of what it covers. */
function listSizes(terms: Row['terms'], columns: readonly Column[]): readonly Size[] {
  const costOf = new Map<number, number>();
  for (const [column, covers] of terms) {
    const { cost } = at(columns, column);
    costOf.set(covers, Math.min(cost, costOf.get(covers) ?? cost));
  }
  const sizes = [...costOf].map(([covers, cost]) => ({ covers, cost }));
  return sizes.sort((a, b) => a.cost / a.covers - b.cost / b.covers);
}

function cutOf({ lower, upper, terms }: Row, sizes: readonly Size[]): Row[] {
  const least = leastCost(lower - feasibilityTolerance, sizes);
  if (least === undefined) return [];
  const priced: [column: number, coefficient: number][] = [];
  for (const [column, covers] of terms) {
    const cost = leastCost(covers * (1 - rounding), sizes);
    if (cost === undefined) return [];
    priced.push([column, cost]);
  }
  return [{ lower: least, upper, terms: priced }];
}

/** The least cost of whole numbers of sizes that cover an amount, by price; undefined where that takes too many steps to tell. */
export function leastCost(amount: number, sizes: readonly Size[]): number | undefined {
  let best = Number.POSITIVE_INFINITY;
  let steps = 0;
  const cover = (place: number, left: number, cost: number): void => {
    const size = sizes[place];
    if (left <= 0) best = Math.min(best, cost);
    if (left <= 0 || size === undefined) return;
    const next = sizes[place + 1];
    for (let count = Math.ceil(left / size.covers); count >= 0 && steps < mostSteps; count--) {
      steps++;
      const rest = left - count * size.covers;
      const sum = cost + count * size.cost;
      // Fewer of this size leave more to dearer ones, so once the best is passed it stays passed.
      const bound = next === undefined ? Number.POSITIVE_INFINITY : sum + (rest * next.cost) / next.covers;
      if (rest > 0 && bound >= best) break;
      cover(place + 1, rest, sum);
    }
  };
  cover(0, amount, 0);
  return steps < mostSteps ? best : undefined;
}
