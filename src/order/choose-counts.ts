// Order: counts of wares at the least cash, by the integer program. In: needs that can be met, market, solver.
// Out: counts, the exact cost, and how far above the best it may lie.
import { at } from '../model/at.js';
import type { OrderNeed } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import { boundWares } from './bound-wares.js';
import { buildProgram, columnsOf, type OrderProgram } from './build-program.js';
import { findFirstOrder, reachesLeastOrders } from './first-order.js';
import { findHolders, type Held, heldMl, listWares } from './list-wares.js';
import type { Market } from './open-market.js';
import { settleTies } from './settle-ties.js';
import type { IntegerProgram, Limits, OnProgress, Solution, Solve } from './solver/integer-program.js';
import { swapSets } from './start/swap-sets.js';
import type { Ware } from './ware.js';
import { type Chosen, costOfCounts } from './write-order.js';

/** The solver, how long it may search, and who is told meanwhile. */
export interface Buying {
  readonly solve: Solve;
  readonly limits: Limits;
  readonly onProgress?: OnProgress;
  /** Offers of which the order must hold so many: already ordered, or forced to learn what that would cost. */
  readonly held?: Held;
}

/** For side questions, many to a plan: a tenth of the time that the order itself may take. */
export const besides = (buying: Buying): Buying => within(0.1, buying);

/** A search of a share of the time. */
export function within(share: number, { limits, ...rest }: Buying): Buying {
  return { ...rest, limits: { ...limits, seconds: share * limits.seconds } };
}

/** The least-cash counts for needs within what the market holds, ties not settled. */
export async function cheapestCounts(
  needs: readonly OrderNeed[],
  market: Market,
  buying: Buying,
): Promise<Chosen> {
  return (await search(needs, market, buying)).chosen;
}

/**
 * The same with ties settled: fewest shops, then fewest pots, then the first names. Of counts that are not proved, ties are
 * left open without a word.
 */
export async function settledCounts(
  needs: readonly OrderNeed[],
  market: Market,
  buying: Buying,
): Promise<Chosen> {
  const { chosen, order } = await search(needs, market, buying);
  if (order === undefined || chosen.aboveBestMinor > 0) return chosen;
  const settled = await settleTies(order, chosen, { market, buying: besides(buying) });
  if (settled === undefined || !isAsCheap(settled.counts, { chosen, needs, order, market }))
    return { ...chosen, tiesOpen: true };
  return { ...chosen, counts: settled.counts, ...(settled.isProved ? {} : { tiesOpen: true }) };
}

interface Compared {
  readonly chosen: Chosen;
  readonly needs: readonly OrderNeed[];
  readonly order: OrderProgram;
  readonly market: Market;
}

/** Whether other counts are an order, and cost what the chosen ones do. */
const isAsCheap = (counts: readonly number[], { chosen, needs, order, market }: Compared): boolean =>
  covers(counts, needs, order) &&
  reachesLeastOrders(order.wares, counts, market) &&
  costOfCounts(order.wares, counts, market) === chosen.totalMinor;

interface Searched {
  readonly chosen: Chosen;
  /** Undefined where nothing is needed. */
  readonly order: OrderProgram | undefined;
}

async function search(asked: readonly OrderNeed[], market: Market, buying: Buying): Promise<Searched> {
  // In the order of names, so that the same needs are searched alike wherever they come from.
  const needs = [...asked].sort((a, b) => (a.paint < b.paint ? -1 : 1));
  const wares = listWares(needs, market, buying.held);
  if (needs.length === 0 || wares.length === 0) {
    return {
      chosen: { wares, counts: wares.map(() => 0), totalMinor: 0, aboveBestMinor: 0 },
      order: undefined,
    };
  }
  const known = openProgram(needs, { wares, market, buying });
  const { order, first } = known;
  const start = columnsOf(order, first, market.shops);
  const improveStart = swapsFor(order, needs, market);
  const program = { ...order.program, start, ...(improveStart === undefined ? {} : { improveStart }) };
  const found = await buying.solve(program, buying.limits, buying.onProgress);
  const missed = 'values' in found ? missedBy(found.values, needs, order) : [];
  const solution = missed.length === 0 ? found : await solveNearer(program, missed, { found, needs, buying });
  return { chosen: choose(solution, { ...known, needs, market }), order };
}

/** The program of the wares that a search is worth among, what is known of it, and an order to start from. */
interface OpenProgram {
  readonly order: OrderProgram;
  /** Covers the needs and reaches every least order. */
  readonly first: readonly number[];
  /** No order costs less. */
  readonly leastMinor: number;
  /** False where the program lacks wares that a cheaper order may hold: then its own bound says nothing. */
  readonly areAll: boolean;
}

function openProgram(
  needs: readonly OrderNeed[],
  {
    wares,
    market,
    buying,
  }: { readonly wares: readonly Ware[]; readonly market: Market; readonly buying: Buying },
): OpenProgram {
  const { shops } = market;
  const heldOf = ({ offer }: Ware): number => buying.held?.get(offer) ?? 0;
  const counts = findFirstOrder(
    needs,
    { wares, holders: findHolders(wares), held: wares.map(heldOf) },
    market,
  );
  const inFirst = new Map(
    wares.flatMap((ware, place) => (counts[place] ? [[ware, counts[place]] as const] : [])),
  );
  const bounded = boundWares(wares, {
    ...{ needs, shops, knownMinor: costOfCounts(wares, counts, market) },
    isKept: (ware) => inFirst.has(ware) || heldOf(ware) > 0,
  });
  const order = buildProgram({ needs, wares: bounded.wares, held: bounded.wares.map(heldOf), shops });
  const { leastMinor, areAll } = bounded;
  return { order, first: bounded.wares.map((ware) => inFirst.get(ware) ?? 0), leastMinor, areAll };
}

/** What `swapSets` looks at in a second, about: measured on 2026-11-29 on two cores. */
const swappedPerSecond = 1e7;

/**
 * With so many sets to a paint, on average, their choice hangs together, and sets swapped lead to orders that the solver does not find;
 * with fewer it finds the best from any start as soon.
 */
const leastSetsOfPaint = 3;

/** A better start by swapping sets; undefined where there are few. */
function swapsFor(
  order: OrderProgram,
  needs: readonly OrderNeed[],
  market: Market,
): IntegerProgram['improveStart'] {
  const { wares, holders, program } = order;
  const inSets = needs.flatMap(({ paint }) =>
    (holders.get(paint) ?? []).filter(({ column }) => at(wares, column).mlOf.size > 1),
  );
  if (inSets.length < leastSetsOfPaint * needs.length) return undefined;
  const held = wares.map((_, column) => at(program.columns, column).lower);
  return (start, seconds) => {
    const swapping = { known: start.slice(0, wares.length), mostWork: seconds * swappedPerSecond };
    const { counts, work } = swapSets(needs, { wares, holders, held }, market, swapping);
    const isOrder = covers(counts, needs, order);
    return {
      start: isOrder ? columnsOf(order, counts, market.shops) : start,
      seconds: work / swappedPerSecond,
    };
  };
}

interface Missing {
  readonly found: Solution;
  /** In the order of the program's first rows. */
  readonly needs: readonly OrderNeed[];
  readonly buying: Buying;
}

/**
 * Once more, where a solver's tolerance let an order pass that misses needs: these ask for ten times what counts as the same
 * beyond their ml. Where nothing is feasible then, what was found.
 */
async function solveNearer(
  program: IntegerProgram,
  missed: readonly OrderNeed[],
  { found, needs, buying }: Missing,
): Promise<Solution> {
  const rows = program.rows.map((row, at) => {
    const need = needs[at];
    return need !== undefined && missed.includes(need) ? { ...row, lower: row.lower + 10 * sameMl } : row;
  });
  const nearer = await buying.solve({ ...program, rows }, buying.limits, buying.onProgress);
  return 'values' in nearer ? nearer : found;
}

interface Tried extends OpenProgram {
  readonly needs: readonly OrderNeed[];
  readonly market: Market;
}

/** The solver's counts, or the first order where it found nothing better; the cost counted anew in whole minor units. */
function choose(solution: Solution, { order, needs, market, first, leastMinor, areAll }: Tried): Chosen {
  if (solution.state === 'impossible')
    throw new Error('the offers hold every need, yet no order covers them');
  const { wares } = order;
  const firstMinor = costOfCounts(wares, first, market);
  // Costs are whole, so nothing lies under a bound rounded up; what the bound does not reach is not proved.
  const bound = areAll && 'bound' in solution && Number.isFinite(solution.bound) ? solution.bound : 0;
  const bestMinor = Math.max(0, Math.ceil(Math.max(bound, leastMinor) - 1e-4));
  const aboveBest = (minor: number): number => Math.max(0, minor - bestMinor);
  if (solution.state === 'none found')
    return { wares, counts: first, totalMinor: firstMinor, aboveBestMinor: aboveBest(firstMinor) };
  const found = solution.values.slice(0, wares.length);
  const foundMinor = costOfCounts(wares, found, market);
  const isSound = covers(found, needs, order) && reachesLeastOrders(wares, found, market);
  const [counts, totalMinor] =
    isSound && foundMinor <= firstMinor ? [found, foundMinor] : [first, firstMinor];
  return { wares, counts, totalMinor, aboveBestMinor: aboveBest(totalMinor) };
}

/** True where rounding to whole counts left every need covered. */
const covers = (counts: readonly number[], needs: readonly OrderNeed[], order: OrderProgram): boolean =>
  missedBy(counts, needs, order).length === 0;

/** Needs of which some counts hold less, by more than counts as the same. */
function missedBy(
  counts: readonly number[],
  needs: readonly OrderNeed[],
  { holders }: OrderProgram,
): OrderNeed[] {
  return needs.filter(
    ({ paint, ml }) => heldMl(holders, paint, (column) => at(counts, column)) < ml - sameMl,
  );
}
