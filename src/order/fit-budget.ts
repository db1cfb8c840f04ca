// Order: what a budget finishes. In: demands by priority, shelf, market, solver, budget. Out: figures for each unit.
import type { OrderNeed, UnitDemand } from '../model/plan.js';
import { buildProgram } from './build-program.js';
import { type Buying, besides, cheapestCounts } from './choose-counts.js';
import { listWares, type Market } from './list-wares.js';
import type { Column, IntegerProgram, Row } from './solver/integer-program.js';
import { measureSupply, splitNeeds } from './split-needs.js';

/** What a fit works from. */
export interface Fitting {
  readonly budgetMinor: number;
  /** Units in painting order. */
  readonly demands: readonly UnitDemand[];
  /** Paint for so many figures of a unit. */
  readonly demandMl: (demand: UnitDemand, paint: string, figures: number) => number;
  readonly haveMl: ReadonlyMap<string, number>;
  readonly market: Market;
  readonly buying: Buying;
}

/** Figures finished, unit by unit in the order of the demands. */
export interface Fitted {
  readonly finished: readonly number[];
  readonly proved: boolean;
  readonly notTried: number;
}

/** Priorities tried after the first that the budget does not finish. */
const mostTries = 12;

/**
 * The figures that a budget finishes: whole priorities first, one after the other, as long as the cash lasts; then
 * of each further priority as many figures as can be had with what is left, a unit cut short where need be. Each of
 * these is one integer program (`programOf`). Paint that can't be had at all stands in nobody's way: it is unmet
 * with or without a budget.
 */
export async function fitBudget(fitting: Fitting): Promise<Fitted> {
  const { demands } = fitting;
  const levels = levelsOf(demands);
  const whole = await wholeLevels(levels, fitting);
  const finished = demands.map((demand, index) => (index < firstIndex(levels, whole) ? demand.figures : 0));
  let proved = true;
  const tried = levels.slice(whole, whole + mostTries);
  for (const level of tried) {
    const fit = await fitLevel(level, finished, fitting);
    proved &&= fit.proved;
    level.forEach((index, place) => {
      finished[index] = fit.figures[place] ?? 0;
    });
  }
  return { finished, proved, notTried: levels.slice(whole + mostTries).flat().length };
}

/** Indexes of the demands of each priority, in order. */
function levelsOf(demands: readonly UnitDemand[]): number[][] {
  const levels: number[][] = [];
  demands.forEach(({ priority }, index) => {
    if (index > 0 && demands[index - 1]?.priority === priority) levels.at(-1)?.push(index);
    else levels.push([index]);
  });
  return levels;
}

const firstIndex = (levels: readonly number[][], level: number): number =>
  levels.slice(0, level).flat().length;

/** How many priorities the budget finishes whole: halving, since more figures never cost less. */
async function wholeLevels(levels: readonly number[][], fitting: Fitting): Promise<number> {
  let [from, to] = [0, levels.length];
  while (from < to) {
    const middle = Math.ceil((from + to) / 2);
    const counts = fitting.demands.map(({ figures }, index) =>
      index < firstIndex(levels, middle) ? figures : 0,
    );
    if ((await cashFor(counts, fitting)) <= fitting.budgetMinor) from = middle;
    else to = middle - 1;
  }
  return from;
}

/** The least cash for so many figures of each unit. */
export async function cashFor(counts: readonly number[], fitting: Fitting): Promise<number> {
  const { within } = splitNeeds(toBuy(counts, fitting), measureSupply(fitting.market));
  return (await cheapestCounts(within, fitting.market, besides(fitting.buying))).totalMinor;
}

/** What so many figures of each unit need beyond the shelf. */
function toBuy(counts: readonly number[], fitting: Fitting): OrderNeed[] {
  return [...needsOf(counts, fitting)].flatMap(([paint, ml]) => {
    const missing = ml - (fitting.haveMl.get(paint) ?? 0);
    return missing > 1e-9 ? [{ paint, ml: missing }] : [];
  });
}

function needsOf(counts: readonly number[], { demands, demandMl }: Fitting): Map<string, number> {
  const needs = new Map<string, number>();
  demands.forEach((demand, index) => {
    const figures = counts[index] ?? 0;
    for (const paint of figures > 0 ? demand.perFigureMl.keys() : []) {
      needs.set(paint, (needs.get(paint) ?? 0) + demandMl(demand, paint, figures));
    }
  });
  return needs;
}

interface LevelFit {
  readonly figures: readonly number[];
  readonly proved: boolean;
}

async function fitLevel(
  level: readonly number[],
  finished: readonly number[],
  fitting: Fitting,
): Promise<LevelFit> {
  const { program, figureColumns } = programOf(level, finished, fitting);
  const solution = await fitting.buying.solve(program, fitting.buying.limits, fitting.buying.onProgress);
  if (!('values' in solution)) return { figures: level.map(() => 0), proved: false };
  const figures = figureColumns.map((column) => solution.values[column] ?? 0);
  const counts = finished.slice();
  level.forEach((index, place) => {
    counts[index] = figures[place] ?? 0;
  });
  // What the solver holds within its tolerances must hold to the last minor unit too.
  const isWithin = (await cashFor(counts, fitting)) <= fitting.budgetMinor;
  return {
    figures: isWithin ? figures : level.map(() => 0),
    proved: isWithin && solution.state === 'proved',
  };
}

/**
 * Most figures of one priority, then least cash: beside the order's own columns one for the figures n and one for
 * the sittings k of each unit, `batch x k >= n`; each paint: `bought >= committed + sum(n x per figure + k x per
 * sitting) - have`; `cash <= budget`; minimise `cash - (budget + 1) x sum(n)`. Sittings being whole, this is exact.
 */
function programOf(level: readonly number[], finished: readonly number[], fitting: Fitting) {
  const { demands, market, budgetMinor } = fitting;
  const full = demands.map(({ figures }, index) =>
    level.includes(index) ? figures : (finished[index] ?? 0),
  );
  const { within, unmet } = splitNeeds(toBuy(full, fitting), measureSupply(market));
  const wares = listWares(within, market);
  const order = buildProgram({ needs: [], wares, held: [], shops: market.shops });
  const columns: Column[] = [...order.program.columns];
  const cash: Row = {
    lower: Number.NEGATIVE_INFINITY,
    upper: budgetMinor,
    terms: columns.map(({ cost }, column) => [column, cost] as const),
  };
  const rows: Row[] = [...order.program.rows, cash];
  const units = level.flatMap((index) => {
    const demand = demands[index];
    if (demand === undefined) return [];
    const figures =
      columns.push({ cost: -(budgetMinor + 1), lower: 0, upper: demand.figures, integer: true }) - 1;
    const most = Math.ceil(demand.figures / demand.batch);
    const sittings = columns.push({ cost: 0, lower: 0, upper: most, integer: true }) - 1;
    rows.push({
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
      terms: [
        [sittings, demand.batch],
        [figures, -1],
      ],
    });
    return [{ demand, figures, sittings }];
  });
  const committed = needsOf(
    finished.map((count, index) => (level.includes(index) ? 0 : count)),
    fitting,
  );
  for (const { paint } of within) {
    const bought = (order.holders.get(paint) ?? []).map(({ column, ml }): [number, number] => [column, ml]);
    const used = units.flatMap(({ demand, figures, sittings }): [number, number][] => [
      [figures, -(demand.perFigureMl.get(paint) ?? 0)],
      [sittings, -(demand.perSittingMl.get(paint) ?? 0)],
    ]);
    // What the offers lack of a paint is unmet with or without a budget.
    const lacking = unmet.find((need) => need.paint === paint)?.ml ?? 0;
    const lower = (committed.get(paint) ?? 0) - (fitting.haveMl.get(paint) ?? 0) - lacking;
    rows.push({
      lower,
      upper: Number.POSITIVE_INFINITY,
      terms: [...bought, ...used.filter(([, ml]) => ml !== 0)],
    });
  }
  const program: IntegerProgram = { columns, rows };
  return { program, figureColumns: units.map(({ figures }) => figures) };
}
