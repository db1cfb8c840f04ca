// Solver: rows that costs imply. In: columns and rows of a program. Out: more rows, which cut off fractions only.
import { isCover, rowsWithin } from './covering-rows.js';
import type { Column, IntegerProgram, Row } from './integer-program.js';

/** One of several sizes that cover: how much, and at what cost. */
interface Size {
  readonly covers: number;
  readonly cost: number;
}

/** A search that takes more steps is given up, and its row left out. */
const mostSteps = 500;

/** Of a coefficient, what rounding may have added. */
const rounding = 1e-12;

/**
 * For each row `sum of a x >= b` with a > 0 over whole x >= 0 one more row. Let m(r) be the least cost of covering r with the
 * row's own columns, those that stand in no other such row. Two covers laid together cover the sum, so m(r + s) <= m(r) + m(s).
 * Hence `sum of m(a) x >= m(b)` for every whole solution, whatever its other columns cost. Where thousands of pots of two
 * sizes cover a need, no fraction of a pot is left to argue about: the row says what the need costs.
 *
 * Source: valid rows from subadditive functions, Nemhauser & Wolsey 1988 (Integer and Combinatorial Optimization),
 * chapter II.1, from memory.
 */
export function priceRows({ columns, rows }: Pick<IntegerProgram, 'columns' | 'rows'>): Row[] {
  const covers = rows.filter((row) => isCover(row, columns));
  const times = new Uint32Array(columns.length);
  for (const { terms } of covers) for (const [column] of terms) times[column] = (times[column] ?? 0) + 1;
  return covers.flatMap((row) => {
    const own = row.terms.filter(([column]) => times[column] === 1 && (columns[column]?.cost ?? 0) > 0);
    const sizes = listSizes(own, columns);
    // One size alone is what rounding says already.
    return sizes.length < 2 ? [] : priceRow(row, sizes);
  });
}

/** Each size at its least cost, by the cost of what it covers. */
function listSizes(terms: Row['terms'], columns: readonly Column[]): readonly Size[] {
  const costOf = new Map<number, number>();
  for (const [column, covers] of terms) {
    const cost = columns[column]?.cost ?? 0;
    costOf.set(covers, Math.min(cost, costOf.get(covers) ?? cost));
  }
  const sizes = [...costOf].map(([covers, cost]) => ({ covers, cost }));
  return sizes.sort((a, b) => a.cost / a.covers - b.cost / b.covers);
}

function priceRow({ lower, upper, terms }: Row, sizes: readonly Size[]): Row[] {
  const least = leastCost(lower - rowsWithin, sizes);
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
  const cover = (at: number, left: number, cost: number): void => {
    const size = sizes[at];
    if (left <= 0) best = Math.min(best, cost);
    if (left <= 0 || size === undefined) return;
    const next = sizes[at + 1];
    for (let count = Math.ceil(left / size.covers); count >= 0 && steps < mostSteps; count--) {
      steps++;
      const rest = left - count * size.covers;
      const sum = cost + count * size.cost;
      // Fewer of this size leave more to dearer ones, so once the best is passed it stays passed.
      const bound = next === undefined ? Number.POSITIVE_INFINITY : sum + (rest * next.cost) / next.covers;
      if (rest > 0 && bound >= best) break;
      cover(at + 1, rest, sum);
    }
  };
  cover(0, amount, 0);
  return steps < mostSteps ? best : undefined;
}
