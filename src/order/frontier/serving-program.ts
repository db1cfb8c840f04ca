// Frontier: which paint serves each need and what to buy, as one integer program. In: servings, shelf, market.
// Out: columns and rows, and what they mean.
import { at } from '../../model/at.js';
import { sameMl } from '../../model/volume.js';
import { leaveFarWares } from '../bound-wares.js';
import { buildProgram, columnsOf, type OrderProgram } from '../build-program.js';
import { reachesLeastOrders } from '../first-order.js';
import { heldMl, listWares } from '../list-wares.js';
import type { Market } from '../open-market.js';
import type { Column, Row } from '../solver/integer-program.js';
import { costOfCounts } from '../write-order.js';
import { mostAsked, type Serving } from './list-servings.js';

/** What a program is written from. */
export interface Asked {
  readonly servings: readonly Serving[];
  readonly haveMl: ReadonlyMap<string, number>;
  readonly market: Market;
}

export interface ServingProgram extends Asked {
  /** Columns for the wares and shops alone. */
  readonly order: OrderProgram;
  /** False where there are too many wares for one program: its bounds say nothing then. */
  readonly areAllWares: boolean;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** For each serving and each paint that may serve it, the column that says so; none where there is but one paint. */
  readonly servedBy: readonly ReadonlyMap<string, number>[];
}

/** A way to serve every need. */
export interface Served {
  /** Who serves each serving. */
  readonly paints: readonly string[];
  /** How many of each ware of the program are bought. */
  readonly counts: readonly number[];
  readonly totalMinor: number;
}

const atLeast = (lower: number, terms: Row['terms']): Row => ({
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});

/**
 * Least cash for offers, and a paint for each need that it can serve whole. Beside the order's own columns and rows a
 * yes-or-no *served_np* for each need n and paint p: `sum over p of served_np = 1`; each paint:
 * `bought_p + have_p >= sum of need_n x served_np`. That alone would let a fraction of a pot serve a fraction of a need,
 * so each pair has a row of its own: who serves more than the shelf holds must be bought,
 * `sum of min(ml, lack_np) x count >= lack_np x served_np`.
 */
export function buildServingProgram(asked: Asked): ServingProgram {
  const { servings, haveMl, market } = asked;
  const most = mostAsked(servings);
  const lacking = [...most].map(([paint, ml]) => ({ paint, ml: ml - (haveMl.get(paint) ?? 0) }));
  const needs = lacking.filter(({ ml }) => ml > sameMl);
  const { wares, areAll } = leaveFarWares(listWares(needs, market), needs, market);
  const order = buildProgram({ needs: [], wares, held: wares.map(() => 0), shops: market.shops });
  const columns = [...order.program.columns];
  const rows = [...order.program.rows];
  const servedBy = servings.map(({ by }) => placeServing(by, columns, rows));
  const askers = findAskers(servings, servedBy);
  for (const { paint, ml } of lacking) {
    if (ml > sameMl)
      rows.push(...coverRows({ paint, mostMl: ml, askers: askers.get(paint) ?? [] }, asked, order));
  }
  return { ...asked, order, areAllWares: areAll, columns, rows, servedBy };
}

function placeServing(by: Serving['by'], columns: Column[], rows: Row[]): Map<string, number> {
  const [, second] = by;
  if (second === undefined) return new Map();
  const yesOrNo: Column = { cost: 0, lower: 0, upper: 1, integer: true };
  const placed = new Map(by.map((one) => [one.by, columns.push(yesOrNo) - 1]));
  rows.push({ lower: 1, upper: 1, terms: [...placed.values()].map((column) => [column, 1]) });
  return placed;
}

/** A need that a paint serves: surely, where no column says so. */
interface Asker {
  readonly column: number | undefined;
  readonly ml: number;
}

/** Who asks each paint, in the order of the servings. */
function findAskers(
  servings: readonly Serving[],
  servedBy: ServingProgram['servedBy'],
): ReadonlyMap<string, readonly Asker[]> {
  const askers = new Map<string, Asker[]>();
  for (const [index, { need, by }] of servings.entries()) {
    for (const one of by) {
      const known = askers.get(one.by) ?? [];
      known.push({ column: at(servedBy, index).get(one.by), ml: need.ml });
      askers.set(one.by, known);
    }
  }
  return askers;
}

/** One paint of which the shelf lacks up to `mostMl`. */
interface LackedPaint {
  readonly paint: string;
  readonly mostMl: number;
  readonly askers: readonly Asker[];
}

function coverRows(
  { paint, mostMl, askers }: LackedPaint,
  { haveMl }: Pick<Asked, 'haveMl'>,
  order: OrderProgram,
): Row[] {
  const holders = order.holders.get(paint) ?? [];
  const bought = (cutMl: number): Row['terms'] =>
    holders.map(({ column, ml }) => [column, Math.min(ml, cutMl)]);
  let surelyMl = -(haveMl.get(paint) ?? 0);
  const maybe: [column: number, ml: number][] = [];
  for (const { column, ml } of askers) {
    if (column === undefined) surelyMl += ml;
    else maybe.push([column, ml]);
  }
  const all = atLeast(surelyMl, [...bought(mostMl), ...maybe.map(([column, ml]) => [column, -ml] as const)]);
  const sureMl = Math.max(0, surelyMl);
  const pairs = maybe
    .filter(([, ml]) => surelyMl + ml > sameMl)
    .map(([column, ml]) => {
      const lackMl = surelyMl + ml;
      return atLeast(sureMl, [...bought(lackMl), [column, sureMl - lackMl]]);
    });
  const sure = sureMl > sameMl && maybe.length > 0 ? [atLeast(sureMl, bought(sureMl))] : [];
  // Of a single pair its own row says all.
  return maybe.length === 1 && pairs.length === 1 ? [...pairs, ...sure] : [all, ...pairs, ...sure];
}

/** Every column's value of a way to serve. */
export function valuesOf(
  { order, columns, servedBy, market }: ServingProgram,
  served: Omit<Served, 'totalMinor'>,
): number[] {
  const values = columns.map(() => 0);
  for (const [column, value] of columnsOf(order, served.counts, market.shops).entries())
    values[column] = value;
  for (const [index, placed] of servedBy.entries()) {
    const column = placed.get(at(served.paints, index));
    if (column !== undefined) values[column] = 1;
  }
  return values;
}

/** What values of the columns mean, the cash counted anew; undefined where rounding left a need or a sum unmet. */
export function readServed(program: ServingProgram, values: readonly number[]): Served | undefined {
  const { order, servings, servedBy } = program;
  const counts = values.slice(0, order.wares.length);
  const paints = servings.map(({ by, need }, index) => {
    const chosen = [...at(servedBy, index)].find(([, column]) => values[column] === 1);
    return chosen?.[0] ?? by[0]?.by ?? need.paint;
  });
  return checkServed(program, paints, counts);
}

/** Prices a way to serve; undefined where a paint does not suffice, or a shop misses its least order. */
export function checkServed(
  program: ServingProgram,
  paints: readonly string[],
  counts: readonly number[],
): Served | undefined {
  const { order, servings, haveMl, market } = program;
  const asked = askedOf(servings, paints);
  const hasEnough = [...asked].every(([paint, ml]) => {
    const boughtMl = heldMl(order.holders, paint, (column) => at(counts, column));
    return (haveMl.get(paint) ?? 0) + boughtMl >= ml - sameMl;
  });
  if (!hasEnough || !reachesLeastOrders(order.wares, counts, market)) return undefined;
  return { paints, counts, totalMinor: costOfCounts(order.wares, counts, market) };
}

/** Ml asked of each paint where so the needs are served. */
export function askedOf(servings: readonly Serving[], paints: readonly string[]): Map<string, number> {
  const asked = new Map<string, number>();
  for (const [index, { need }] of servings.entries()) {
    const paint = at(paints, index);
    asked.set(paint, (asked.get(paint) ?? 0) + need.ml);
  }
  return asked;
}
