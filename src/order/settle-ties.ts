// Order: one of several orders at the same cost. In: the program, the order found. Out: counts that break ties alike.
import { at } from '../model/at.js';
import { columnsOf, type OrderProgram } from './build-program.js';
import type { Market } from './open-market.js';
import type { IntegerProgram, Limits, Row, Solve } from './solver/integer-program.js';
import type { Chosen } from './write-order.js';

/** One of the orders at the cost found. */
interface Settled {
  readonly counts: readonly number[];
  /** False where a search ended before all of them were compared. */
  readonly isProved: boolean;
}

interface Settling {
  readonly market: Market;
  readonly buying: { readonly solve: Solve; readonly limits: Limits };
}

/**
 * Further objectives in turn (lexicographic), each with those before it held as rows. At no more than the cost found the fewest
 * shops and then the fewest pots, as one program in which a shop weighs more than all pots there can be; then the first names, as
 * another. Undefined where a short search ends without an answer.
 */
export async function settleTies(
  order: OrderProgram,
  { counts, totalMinor }: Chosen,
  { market, buying }: Settling,
): Promise<Settled | undefined> {
  const { columns } = order.program;
  const cost = columns.map((column) => column.cost);
  const weights = weighShopsAndPots(order);
  const names = columns.map((_, index) => (index < order.wares.length ? index : 0));
  const cheapest = [atMost(totalMinor, cost)];
  const start = columnsOf(order, counts, market.shops);
  const few = await buying.solve(minimise(order, weights, cheapest, start), buying.limits);
  if (!('values' in few)) return undefined;
  const fewest = atMost(Math.round(sumOf(weights, few.values)), weights);
  const named = await buying.solve(minimise(order, names, [...cheapest, fewest], few.values), buying.limits);
  return {
    counts: ('values' in named ? named : few).values.slice(0, order.wares.length),
    isProved: few.state === 'proved' && named.state === 'proved',
  };
}

/** Pots weigh 1 each; a shop weighs one more than every pot that the columns allow. */
function weighShopsAndPots({ program, wares, shops }: OrderProgram): number[] {
  const mostPots = wares.reduce((sum, { pots }, index) => sum + pots * at(program.columns, index).upper, 0);
  const used = new Set([...shops.values()].map((columns) => columns.used));
  return program.columns.map((_, index) => wares[index]?.pots ?? (used.has(index) ? mostPots + 1 : 0));
}

const sumOf = (weights: readonly number[], values: readonly number[]): number =>
  weights.reduce((sum, weight, index) => sum + weight * at(values, index), 0);

const atMost = (upper: number, weights: readonly number[]): Row => ({
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms: weights.flatMap((weight, index): [number, number][] => (weight === 0 ? [] : [[index, weight]])),
});

/** The order's program with other weights and more rows, from an order that keeps to them. */
function minimise(
  { program }: OrderProgram,
  weights: readonly number[],
  more: readonly Row[],
  start: readonly number[],
): IntegerProgram {
  const columns = program.columns.map((column, index) => ({ ...column, cost: at(weights, index) }));
  return { columns, rows: [...program.rows, ...more], start };
}
