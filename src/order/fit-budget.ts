// Order: what a budget finishes. In: demands by priority, shelf, market, solver, budget. Out: figures for each unit.
import { at } from '../model/at.js';
import { demandMl } from '../model/demand-ml.js';
import type { OrderNeed } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import type { UnitDemand } from '../model/work.js';
import { type BudgetLevel, preferEarlier, withMost, writeBudgetProgram } from './budget-program.js';
import { type Buying, besides, cheapestCounts } from './choose-counts.js';
import type { Market } from './open-market.js';
import { measureSupply, splitNeeds } from './split-needs.js';

/** What a fit works from. */
export interface Fitting {
  readonly budgetMinor: number;
  /** Units in painting order. */
  readonly demands: readonly UnitDemand[];
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
 * The figures that a budget finishes: whole priorities first, one after the other, as long as the cash lasts; then whole units of
 * each further priority, as many of their figures as can be had; and then of each, with as many in whole units, as many figures as
 * can be had with what is left, a unit cut short where need be. Each of these is an integer program (`writeBudgetProgram`). Paint
 * that can't be had at all stands in nobody's way: it is unmet with or without a budget.
 */
export async function fitBudget(fitting: Fitting): Promise<Fitted> {
  const { demands } = fitting;
  const levels = levelsOf(demands);
  const whole = await wholeLevels(levels, fitting);
  const done = unitsBefore(levels, whole);
  const all = demands.map(({ figures }) => figures);
  const finished = all.map((figures, index) => (index < done ? figures : 0));
  let proved = true;
  const tried = levels.slice(whole, whole + mostTries);
  for (const isWhole of [true, false]) {
    for (const level of tried) {
      const inWholeUnits = isWhole ? undefined : sumOf(level, finished);
      if (inWholeUnits === sumOf(level, all)) continue;
      const fit = await fitLevel({ level, inWholeUnits, finished }, fitting);
      proved &&= fit.proved;
      level.forEach((index, place) => {
        finished[index] = at(fit.figures, place);
      });
    }
  }
  return { finished, proved, notTried: demands.length - unitsBefore(levels, whole + mostTries) };
}

/** Indexes of the demands of each priority, in order. */
function levelsOf(demands: readonly UnitDemand[]): number[][] {
  const levels: number[][] = [];
  demands.forEach(({ priority }, index) => {
    if (index > 0 && at(demands, index - 1).priority === priority) levels.at(-1)?.push(index);
    else levels.push([index]);
  });
  return levels;
}

const sumOf = (level: readonly number[], counts: readonly number[]): number =>
  level.reduce((sum, index) => sum + at(counts, index), 0);

const unitsBefore = (levels: readonly number[][], level: number): number =>
  levels.slice(0, level).reduce((sum, { length }) => sum + length, 0);

/** How many priorities the budget finishes whole: halving, since more figures never cost less. */
async function wholeLevels(levels: readonly number[][], fitting: Fitting): Promise<number> {
  let [from, to] = [0, levels.length];
  while (from < to) {
    const middle = Math.ceil((from + to) / 2);
    const done = unitsBefore(levels, middle);
    const counts = fitting.demands.map(({ figures }, index) => (index < done ? figures : 0));
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
    return missing > sameMl ? [{ paint, ml: missing }] : [];
  });
}

function needsOf(counts: readonly number[], { demands }: Pick<Fitting, 'demands'>): Map<string, number> {
  const needs = new Map<string, number>();
  demands.forEach((demand, index) => {
    const figures = at(counts, index);
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

/** Searches again with fewer figures, should the cash not hold to the last minor unit, at most so often. */
const mostSearches = 4;

interface OpenLevel extends Pick<BudgetLevel, 'inWholeUnits'> {
  /** Indexes of its demands. */
  readonly level: readonly number[];
  /** So far. */
  readonly finished: readonly number[];
}

async function fitLevel(open: OpenLevel, fitting: Fitting): Promise<LevelFit> {
  const { level, finished } = open;
  const { budgetMinor, buying } = fitting;
  const budgeted = writeBudgetProgram(levelOf(open, fitting), fitting.market);
  const { limits } = besides(buying);
  let mostFigures = Number.POSITIVE_INFINITY;
  for (let search = 1; search <= mostSearches; search++) {
    const found = await buying.solve(withMost(budgeted, mostFigures), limits);
    if (!('values' in found)) break;
    const even = await buying.solve(preferEarlier(budgeted, found.values), limits);
    const { values } = 'values' in even ? even : found;
    const figures = budgeted.figureColumns.map(([column, each]) => each * at(values, column));
    const counts = finished.slice();
    for (const [place, index] of level.entries()) counts[index] = at(figures, place);
    if ((await cashFor(counts, fitting)) <= budgetMinor) {
      return { figures, proved: found.state === 'proved' && budgeted.areAllWares && search === 1 };
    }
    mostFigures = figures.reduce((sum, count) => sum + count, 0) - 1;
  }
  return { figures: level.map((index) => at(finished, index)), proved: false };
}

/** What the program of a priority is written from: its units, and what is committed to those before it. */
function levelOf({ level, finished, inWholeUnits }: OpenLevel, fitting: Fitting): BudgetLevel {
  const { demands, haveMl, budgetMinor, market } = fitting;
  const own = new Set(level);
  const full = demands.map(({ figures }, index) => (own.has(index) ? figures : at(finished, index)));
  const before = finished.map((count, index) => (own.has(index) ? 0 : count));
  return {
    budgetMinor,
    haveMl,
    inWholeUnits,
    units: level.map((index) => at(demands, index)),
    committedMl: needsOf(before, fitting),
    needs: splitNeeds(toBuy(full, fitting), measureSupply(market)),
  };
}
