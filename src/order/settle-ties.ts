// Order: one of several orders at the same cost. In: the program, the order found. Out: counts that break ties alike.
import { columnsOf, type OrderProgram } from './build-program.js';
import type { Market } from './list-wares.js';
import type { IntegerProgram, Limits, Solve } from './solver/integer-program.js';
import type { Chosen } from './write-order.js';

/** Ties are no matter of money: a short search, the same on every machine. */
const nodesForTies = 200;

interface Settling {
  readonly market: Market;
  readonly buying: { readonly solve: Solve; readonly limits: Limits };
}

/**
 * Minimises shops, then pots, then the places of names in their order, at no more than the cost found. The weights
 * keep the three apart: all names together weigh less than one pot, all pots less than one shop.
 * Undefined where the short search ends without an answer.
 */
export async function settleTies(
  order: OrderProgram,
  { counts, totalMinor }: Chosen,
  { market, buying }: Settling,
): Promise<readonly number[] | undefined> {
  const { wares, shops, program } = order;
  const mostPots = wares.reduce((sum, { pots }, index) => sum + pots * (counts[index] ?? 0), 0) * 4 + 4;
  const nameWeight = 1 / (mostPots * (wares.length + 1));
  const usedColumns = new Set([...shops.values()].map(({ used }) => used));
  const columns = program.columns.map((column, index) => {
    const ware = wares[index];
    if (ware !== undefined) return { ...column, cost: ware.pots + index * nameWeight };
    return { ...column, cost: usedColumns.has(index) ? mostPots : 0 };
  });
  const budget = {
    lower: Number.NEGATIVE_INFINITY,
    upper: totalMinor,
    terms: program.columns.flatMap(({ cost }, index): [number, number][] =>
      cost === 0 ? [] : [[index, cost]],
    ),
  };
  const tied: IntegerProgram = {
    columns,
    rows: [...program.rows, budget],
    start: columnsOf(order, counts, market.shops),
  };
  const solution = await buying.solve(tied, { ...buying.limits, nodes: nodesForTies });
  return solution.state === 'proved' || solution.state === 'not proved'
    ? solution.values.slice(0, wares.length)
    : undefined;
}
