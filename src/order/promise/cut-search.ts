// Promise: the program of a promise, which grows by rows that cut off what does not keep it. In: what is sought, how fine. Out: the
// program, and a way to cut off.
import { at } from '../../model/at.js';
import { listWares } from '../list-wares.js';
import type { IntegerProgram, Solution } from '../solver/integer-program.js';
import type { Ware } from '../ware.js';
import { cutRows, pairRows } from './cut-rows.js';
import { groupDraws } from './group-draws.js';
import { type Fineness, listSteps, type Steps } from './list-steps.js';
import type { Sought } from './open-promise.js';
import { stepsReached, stepValues, valuesOf, writePromiseProgram } from './promise-program.js';
import { boughtIn, type Way } from './way.js';

export interface CutSearch {
  /** Its first columns count them. */
  readonly wares: readonly Ware[];
  /** The program as cut so far, from a way that keeps the promise where one is known. */
  program(from: Way | undefined): IntegerProgram;
  /** The same without whole numbers, which is soon solved. */
  relaxed(): IntegerProgram;
  /** Cuts off a way that does not keep the promise; false where its steps do, and only finer ones could tell. */
  cutOff(way: Way): boolean;
  /** Cuts off values of the columns; false where they keep the promise, in fractions. */
  cutOffValues(values: readonly number[]): boolean;
}

/** With more columns of steps than this the search has enough to do without them. */
const mostStepColumns = 2000;

/** With the ways that were missed before already cut off. Undefined where no order can keep the promise. */
export function openCuts(sought: Sought, fineness: Fineness, missed: readonly Way[]): CutSearch | undefined {
  const { market, supply, mayFail, asked } = sought;
  const steps = listEach(sought, fineness);
  const tops = steps.map(({ paint, amounts }) => ({ paint, ml: amounts.at(-1) ?? 0 }));
  const wares = listWares(tops, market);
  const { groups, hopeless } = groupDraws(asked, steps, (paint) => supply.get(paint) ?? 0);
  if (hopeless > mayFail) return undefined;
  const written = writePromiseProgram(steps, wares, market.shops);
  const { columns } = written.program;
  const cutting = { groups, mayFail: mayFail - hopeless, stepColumns: written.stepColumns };
  const rows = [...written.program.rows, ...(fineness.about === undefined ? pairRows(cutting) : [])];
  const reachedBy = (way: Way): number[] => stepsReached(steps, boughtIn(way));
  const cutOffValues = (values: ArrayLike<number>): boolean => {
    const cuts = cutRows(cutting, values);
    rows.push(...cuts);
    return cuts.length > 0;
  };
  const cutOff = (way: Way): boolean => cutOffValues(stepValues(written, reachedBy(way)));
  for (const reached of [steps.map(() => 0), ...missed.map(reachedBy)])
    cutOffValues(stepValues(written, reached));
  const startFrom = (from: Way | undefined): number[] | undefined => {
    const counts = from === undefined ? undefined : countsIn(wares, from);
    if (counts === undefined || from === undefined) return undefined;
    return valuesOf(written, { counts, reached: reachedBy(from) }, market.shops);
  };
  return {
    wares,
    program: (from) => ({ columns, rows, ...startWith(startFrom(from)) }),
    relaxed: () => ({ columns: columns.map((column) => ({ ...column, integer: false })), rows }),
    ...{ cutOff, cutOffValues },
  };
}

/** A way that keeps the promise has been mended from a near miss. */
const startWith = (start: readonly number[] | undefined): Pick<IntegerProgram, 'start' | 'isStartNear'> =>
  start === undefined ? {} : { start, isStartNear: true };

/** Steps of one paint, and of all together, beyond which they are not looked at all. */
const manySteps = { ofOne: 32, ofAll: 150 };

/** Whether there are paints of so many pots. */
export function isManyPots(sought: Omit<Sought, 'buying'>, fineness: Fineness): boolean {
  const steps = listAll(sought, fineness).map(({ amounts }) => amounts.length - 1);
  const all = steps.reduce((sum, count) => sum + count, 0);
  return all > manySteps.ofAll && steps.some((count) => count > manySteps.ofOne);
}

/** The steps of every paint; only the first of each where there would be too many. */
function listEach(sought: Sought, fineness: Fineness): Steps[] {
  const steps = listAll(sought, fineness);
  const columns = steps.reduce((sum, { amounts }) => sum + amounts.length - 1, 0);
  if (columns <= mostStepColumns) return steps;
  return steps.map(({ paint, amounts, beyond }) => ({
    paint,
    amounts: amounts.slice(0, 1),
    beyond: beyond.slice(0, 1),
  }));
}

const listAll = ({ asked, sizes, supply, mayFail }: Omit<Sought, 'buying'>, fineness: Fineness): Steps[] =>
  asked.map((one) => {
    const inputs = { sizes: sizes.get(one.paint) ?? [], supplyMl: supply.get(one.paint) ?? 0, mayFail };
    return listSteps(one, inputs, fineness);
  });

/** A way's counts among other wares; undefined where it buys what is not among them. */
function countsIn(wares: readonly Ware[], { wares: own, counts }: Way): number[] | undefined {
  const countOf = new Map(own.map(({ offer }, place) => [offer, at(counts, place)]));
  const found = wares.map(({ offer }) => countOf.get(offer) ?? 0);
  const sum = (all: readonly number[]): number => all.reduce((total, count) => total + count, 0);
  return sum(found) === sum([...countOf.values()]) ? found : undefined;
}

/** Costs are whole, so nothing lies under the bound rounded up. */
export function leastOfBound(solution: Solution): number {
  if (!('values' in solution) || !Number.isFinite(solution.bound)) return 0;
  return Math.max(0, Math.ceil(solution.bound - 1e-4));
}
