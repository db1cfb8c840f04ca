// Frontier: the best way to serve needs within one colour difference. In: servings, shelf, market, ways already known.
// Out: who serves each need, what is bought, and how far above the best it may lie.
import { at } from '../../model/at.js';
import type { OrderNeed } from '../../model/order.js';
import type { Offer } from '../../model/sheets.js';
import { sameMl } from '../../model/volume.js';
import type { Buying } from '../choose-counts.js';
import { findFirstOrder } from '../first-order.js';
import type { Column, IntegerProgram, Row } from '../solver/integer-program.js';
import { improveServing } from './improve-serving.js';
import { type Serving, takePlenty } from './list-servings.js';
import {
  type Asked,
  askedOf,
  buildServingProgram,
  checkServed,
  readServed,
  type Served,
  type ServingProgram,
  valuesOf,
} from './serving-program.js';

/** A way to serve needs that no program is needed to read. */
export interface Way {
  /** By the paint asked for. */
  readonly paintOf: ReadonlyMap<string, string>;
  readonly bought: ReadonlyMap<Offer, number>;
  readonly totalMinor: number;
}

/** What is known before a search: a paint for each serving, so that all can be served; a way found within less. */
interface Known {
  readonly paints: readonly string[];
  readonly before: Way | undefined;
}

export interface Searching extends Asked {
  readonly known: Known;
  readonly buying: Buying;
}

/** A number for each column, to be made least or held. */
type Weights = readonly number[];

export interface Found {
  readonly way: Way;
  /** No way weighs less than this. */
  readonly bound: number;
}

/** The least cash, ties not settled. The bound is in whole minor units. */
export async function leastCash({ known, buying, ...asked }: Searching): Promise<Found> {
  const program = buildServingProgram({ ...asked, servings: takeFree(asked) });
  const start = improveServing(program, findStart(program, known));
  const { served, bound } = await search(program, { weights: cashOf(program), held: [], start }, buying);
  const better = served.totalMinor <= start.totalMinor ? served : start;
  return { way: wayOf(program, better), bound: wholeBound(bound) };
}

/** Programs of fewer columns are searched for another order at the same cash whose swaps are nearer. */
const smallColumns = 200;

/** What a way at the same cash must hold besides. */
type Kept = 'cash' | 'cash and pots';

/**
 * Of the ways at no more than that cash (and those pots) the one whose swaps are nearest in sum, a swap weighing a
 * hundredth beside its distance, so that equal colours are not swapped for nothing. Among many paints only the ways
 * with the same order are compared, which is cheap; where the search does not end, it is the nearest found.
 */
export async function nearestWay(
  { buying, ...asked }: Omit<Searching, 'known'>,
  way: Way,
  kept: Kept,
): Promise<Way> {
  const program = buildServingProgram(asked);
  const start = readWay(program, way);
  if (start === undefined) return way;
  const values = valuesOf(program, start);
  const sums = kept === 'cash' ? [cashOf(program)] : [cashOf(program), potsOf(program)];
  const held = sums.map((weights) => atMost(Math.round(weigh(weights, values)), weights));
  const isSmall = program.columns.length < smallColumns;
  const searched = isSmall ? program : { ...program, columns: holdOrder(program, values) };
  const { served } = await search(searched, { weights: distancesOf(program), held, start }, buying);
  return wayOf(program, served);
}

const holdOrder = ({ columns, order }: ServingProgram, values: readonly number[]): Column[] =>
  columns.map((column, index) => {
    const value = at(values, index);
    return index < order.program.columns.length ? { ...column, lower: value, upper: value } : column;
  });

/** The fewest pots, then the least cash; how far above the best the pots may lie, and the cash at so many pots. */
export async function fewestPotsOf({
  known,
  buying,
  ...asked
}: Searching): Promise<{ way: Way; abovePots: number; aboveBestMinor: number }> {
  const program = buildServingProgram({ ...asked, servings: takeFree(asked) });
  const pots = potsOf(program);
  const few = await search(program, { weights: pots, held: [], start: findStart(program, known) }, buying);
  const mostPots = weigh(pots, valuesOf(program, few.served));
  const held = [atMost(mostPots, pots)];
  const cheap = await search(program, { weights: cashOf(program), held, start: few.served }, buying);
  return {
    way: wayOf(program, cheap.served),
    abovePots: Math.max(0, mostPots - wholeBound(few.bound)),
    aboveBestMinor: Math.max(0, cheap.served.totalMinor - wholeBound(cheap.bound)),
  };
}

/** Costs and pots are whole, so nothing lies under a bound rounded up. */
const wholeBound = (bound: number): number =>
  Number.isFinite(bound) ? Math.max(0, Math.ceil(bound - 1e-4)) : 0;

/** Needs that the shelf can serve whatever else it serves cost nothing: each is left one paint. */
function takeFree({ servings, haveMl }: Asked): Serving[] {
  const free = takePlenty(servings, haveMl);
  return servings.map(({ need, by }, index) => ({
    need,
    by: free[index] === undefined ? by : by.filter((one) => one.by === free[index]),
  }));
}

interface Goal {
  readonly weights: Weights;
  readonly held: readonly Row[];
  /** Keeps to what is held. */
  readonly start: Served;
}

/** The way of least weight; the start where the solver's can't be used or weighs more. */
async function search(
  program: ServingProgram,
  { weights, held, start }: Goal,
  { solve, limits }: Buying,
): Promise<{ served: Served; bound: number }> {
  const startValues = valuesOf(program, start);
  if (program.columns.length === 0) return { served: start, bound: 0 };
  const asked: IntegerProgram = {
    columns: program.columns.map((column, index) => ({ ...column, cost: at(weights, index) })),
    rows: [...program.rows, ...held],
    start: startValues,
    isStartNear: true,
  };
  const solution = await solve(asked, limits);
  if (!('values' in solution)) return { served: start, bound: Number.NEGATIVE_INFINITY };
  const bound = program.areAllWares ? solution.bound : Number.NEGATIVE_INFINITY;
  const served = readServed(program, solution.values);
  const isSound = served !== undefined && keeps(valuesOf(program, served), held);
  const isBetter = isSound && weigh(weights, valuesOf(program, served)) <= weigh(weights, startValues);
  return { served: isBetter ? served : start, bound };
}

const weigh = (weights: Weights, values: readonly number[]): number =>
  weights.reduce((sum, weight, index) => sum + weight * at(values, index), 0);

const atMost = (upper: number, weights: Weights): Row => ({
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms: weights.flatMap((weight, index): [number, number][] => (weight === 0 ? [] : [[index, weight]])),
});

/** Sums that are held are whole. */
const keeps = (values: readonly number[], held: readonly Row[]): boolean =>
  held.every(
    ({ terms, upper }) =>
      Math.round(terms.reduce((sum, [index, weight]) => sum + weight * at(values, index), 0)) <= upper,
  );

const cashOf = ({ columns }: ServingProgram): Weights => columns.map(({ cost }) => cost);

const potsOf = ({ columns, order }: ServingProgram): Weights =>
  columns.map((_, index) => order.wares[index]?.pots ?? 0);

function distancesOf({ columns, servings, servedBy }: ServingProgram): Weights {
  const weights = columns.map(() => 0);
  for (const [index, { need, by }] of servings.entries()) {
    for (const one of by) {
      const column = at(servedBy, index).get(one.by);
      if (column !== undefined && one.by !== need.paint) weights[column] = one.dE00 + 0.01;
    }
  }
  return weights;
}

/** The cheaper of the way known before and a first order for the paints known to suffice. */
function findStart(program: ServingProgram, { paints, before }: Known): Served {
  const known = before && readWay(program, before);
  const only = onlyPaints(program, paints);
  const counts = findFirstOrder(
    lackOf(program, only),
    { ...program.order, held: program.order.wares.map(() => 0) },
    program.market,
  );
  const first = checkServed(program, only, counts);
  const ways = [known, first].filter((way) => way !== undefined);
  const [best] = ways.sort((a, b) => a.totalMinor - b.totalMinor);
  if (best === undefined) throw new Error('all needs can be served, yet no order serves them');
  return best;
}

/** The paints as given, but for servings that are left one paint. */
const onlyPaints = ({ servings }: ServingProgram, paints: readonly string[]): string[] =>
  servings.map(({ by, need }, index) => (by.length === 1 ? by[0]?.by : paints[index]) ?? need.paint);

function lackOf({ servings, haveMl }: ServingProgram, paints: readonly string[]): OrderNeed[] {
  return [...askedOf(servings, paints)]
    .map(([paint, ml]) => ({ paint, ml: ml - (haveMl.get(paint) ?? 0) }))
    .filter(({ ml }) => ml > sameMl)
    .sort((a, b) => (a.paint < b.paint ? -1 : 1));
}

/** A way in terms of a program; undefined where that does not serve its needs, or can't say it. */
function readWay(program: ServingProgram, { paintOf, bought }: Way): Served | undefined {
  const { order, servings } = program;
  const given = servings.map(({ need }) => paintOf.get(need.paint) ?? need.paint);
  const paints = onlyPaints(program, given);
  if (servings.some(({ by }, index) => !by.some((one) => one.by === paints[index]))) return undefined;
  const counts = order.wares.map(({ offer }) => bought.get(offer) ?? 0);
  const isSaid = counts.filter((count) => count > 0).length === bought.size;
  const isWithin = counts.every((count, index) => count <= at(program.columns, index).upper);
  return isSaid && isWithin ? checkServed(program, paints, counts) : undefined;
}

function wayOf({ order, servings }: ServingProgram, { paints, counts, totalMinor }: Served): Way {
  return {
    totalMinor,
    paintOf: new Map(servings.map(({ need }, index) => [need.paint, paints[index] ?? need.paint])),
    bought: new Map(
      order.wares.flatMap(({ offer }, index) => (counts[index] ? [[offer, counts[index]] as const] : [])),
    ),
  };
}
