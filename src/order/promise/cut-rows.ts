// Promise: what every order that keeps it must do otherwise than one that does not. In: groups of draws, the steps that an order
// reaches. Out: rows over steps.
import { at } from '../../model/at.js';
import type { Row } from '../solver/integer-program.js';
import type { DrawGroup } from './group-draws.js';

export interface CutInputs {
  readonly groups: readonly DrawGroup[];
  /** Draws of the groups that may fail. */
  readonly mayFail: number;
  readonly stepColumns: readonly (readonly number[])[];
}

/**
 * Each draw is given to one paint: it does only where that paint takes the draw's step. So for any way to give them
 *
 *     sum over draws of z(paint given to, its step) >= draws - mayFail
 *
 * holds for every order that keeps the promise. Each draw is given to a paint whose step has the least value, so that no such row is
 * missed by more; of equal ones to that which just reaches its step, where it would fail first, and then to the paint that most draws
 * fail in, or to that which fewest do; or first of all to a paint of which it asks nothing. Of these three rows the broken ones are given.
 * Values may be fractions.
 *
 * Source: each row is a Benders cut of the program with a yes-or-no for each draw (Luedtke, Ahmed & Nemhauser 2010, An integer
 * programming approach for linear programs with probabilistic constraints).
 */
export function cutRows(inputs: CutInputs, columnValues: ArrayLike<number>): Row[] {
  const { groups, stepColumns } = inputs;
  // The first amount is there in any case; past the last step nothing is.
  const values = stepColumns.map((columns) => [1, ...columns.map((column) => at(columnValues, column)), 0]);
  const failing = values.map((of, place) =>
    groups.reduce((sum, { draws, steps }) => sum + draws * (1 - at(of, at(steps, place))), 0),
  );
  const mostFirst = failing.map((_, place) => place).sort((a, b) => at(failing, b) - at(failing, a));
  const ways = [
    { places: mostFirst, ofNone: 0.5 },
    { places: mostFirst.toReversed(), ofNone: 0.5 },
    { places: mostFirst, ofNone: -1 },
  ];
  return ways.flatMap((way) => cutRow(inputs, values, way));
}

/** Groups looked at for pairs; where there would be more, the search has enough to do without them. */
const mostPairWork = 3e7;

/**
 * For two paints: where one is not raised past a step, the other must be raised so far that no more draws fail in one of the two than
 * may. Each row is a cover of two columns; all together they bring a search to its proof in half the work (the sample's four levels).
 */
export function pairRows(inputs: CutInputs): Row[] {
  const places = [...inputs.stepColumns.keys()];
  const columns = inputs.stepColumns.flat().length;
  if (places.length * columns * inputs.groups.length > mostPairWork) return [];
  return places.flatMap((one) => places.slice(one + 1).flatMap((other) => rowsOfPair(inputs, one, other)));
}

/** From the last step of the one on: the farther it is not raised, the farther the other must be. */
function rowsOfPair({ groups, mayFail, stepColumns }: CutInputs, one: number, other: number): Row[] {
  const [ofOne, ofOther] = [at(stepColumns, one), at(stepColumns, other)];
  const failing = (step: number, otherStep: number): number =>
    groups.reduce((sum, { draws, steps }) => {
      const isFailing = (steps[one] as number) > step || (steps[other] as number) > otherStep;
      return sum + (isFailing ? draws : 0);
    }, 0);
  const rows: Row[] = [];
  let needed = 0;
  for (const [step, column] of [...ofOne.entries()].toReversed()) {
    const before = needed;
    while (needed <= ofOther.length && failing(step, needed) > mayFail) needed++;
    const raised = ofOther[needed - 1];
    const terms: Row['terms'] =
      raised === undefined
        ? [[column, 1]]
        : [
            [column, 1],
            [raised, 1],
          ];
    if (needed > before) rows.push({ lower: 1, upper: Number.POSITIVE_INFINITY, terms });
  }
  return rows;
}

interface Way {
  /** Of equal ones the first. */
  readonly places: readonly number[];
  /** Where a paint of which nothing is asked stands among those that serve: one that just reaches its step is at 0, others at 1. */
  readonly ofNone: number;
}

/** What counts between equal values: how little of the next step is taken, then the order of paints. */
const ofNext = 1e-3;
const ofOrder = 1e-6;

/** Draws that are missing: of whole numbers one at the least; of fractions less is not worth a row. */
const leastMissing = 0.5;

/** Nothing where the values keep the row. */
function cutRow(
  { groups, mayFail, stepColumns }: CutInputs,
  values: readonly (readonly number[])[],
  { places, ofNone }: Way,
): Row[] {
  const keys = values.map((of, place) =>
    of.map((value, step) => {
      const next = step === 0 ? ofNone : (of[step + 1] ?? 0);
      return value + ofNext * next + ofOrder * places.indexOf(place);
    }),
  );
  const draws = stepColumns.map((columns) => new Float64Array(columns.length + 1));
  let [needed, served] = [-mayFail, 0];
  for (const { draws: count, steps } of groups) {
    const place = leastPlace(steps, keys);
    const step = at(steps, place);
    const given = at(draws, place);
    given[step] = at(given, step) + count;
    needed += count;
    served += count * at(at(values, place), step);
  }
  if (served > needed - leastMissing) return [];
  const lower = draws.reduce((sum, [ofNone = 0]) => sum - ofNone, needed);
  const terms = stepColumns.flatMap((columns, place) =>
    columns.map((column, step): [number, number] => [
      column,
      Math.min(lower, at(at(draws, place), step + 1)),
    ]),
  );
  return [{ lower, upper: Number.POSITIVE_INFINITY, terms: terms.filter(([, count]) => count > 0) }];
}

/** In this loop over all draws and paints checked reads would take as long again. */
function leastPlace(steps: Uint16Array, keys: readonly (readonly number[])[]): number {
  let [found, least] = [0, Number.POSITIVE_INFINITY];
  for (let place = 0; place < keys.length; place++) {
    const key = (keys[place] as readonly number[])[steps[place] as number] as number;
    if (key < least) [found, least] = [place, key];
  }
  return found;
}
