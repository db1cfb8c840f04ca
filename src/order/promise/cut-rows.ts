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

/** Draws of the groups in which an order that reaches such steps does not do. */
export function countShort(groups: readonly DrawGroup[], reached: readonly number[]): number {
  return groups.reduce((sum, { draws, steps }) => sum + (isShort(steps, reached) ? draws : 0), 0);
}

/** Whether a group of draws takes a step that is not reached. */
export const isShort = (steps: Uint16Array, reached: readonly number[]): boolean =>
  reached.some((step, place) => (steps[place] as number) > step);

/**
 * Each draw is given to one paint: it does only where that paint takes the draw's step. So for any way to give them
 *
 *     sum over draws of z(paint given to, its step) >= draws - mayFail
 *
 * holds for every order that keeps the promise. A draw that an order fails goes to a paint that it fails in, so the row cuts that
 * order off. A draw that it does goes to a paint whose step it just reaches: there it would fail first.
 * Of the ways there are, three: failing draws to the paint with most or with fewest of them first.
 *
 * Source: each row is a Benders cut of the program with a yes-or-no for each draw (Luedtke, Ahmed & Nemhauser 2010, An integer
 * programming approach for linear programs with probabilistic constraints).
 */
export function cutRows(inputs: CutInputs, reached: readonly number[]): Row[] {
  const { groups } = inputs;
  const failing = reached.map((step, place) =>
    groups.reduce((sum, { draws, steps }) => sum + ((steps[place] as number) > step ? draws : 0), 0),
  );
  const mostFirst = failing.map((_, place) => place).sort((a, b) => at(failing, b) - at(failing, a));
  const ways = [
    { places: mostFirst, isTight: true },
    { places: mostFirst.toReversed(), isTight: true },
    { places: mostFirst, isTight: false },
  ];
  return ways.flatMap(({ places, isTight }) => {
    const give = ({ steps }: DrawGroup) => givenTo(steps, reached, { places, isTight });
    return cutRow(inputs, groups.map(give));
  });
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
  readonly places: readonly number[];
  /** Draws that are served go to a step that is just reached; else to a paint that they ask nothing of. */
  readonly isTight: boolean;
}

/** The paint that a group of draws is given to. */
function givenTo(steps: Uint16Array, reached: readonly number[], { places, isTight }: Way): number {
  const stepOf = (place: number): number => at(steps, place);
  const failing = places.find((place) => stepOf(place) > at(reached, place));
  if (failing !== undefined) return failing;
  const tight = isTight
    ? places.find((place) => stepOf(place) > 0 && stepOf(place) === reached[place])
    : undefined;
  return tight ?? places.find((place) => stepOf(place) === 0) ?? (places[0] as number);
}

/** Nothing where what needs no step is enough. */
function cutRow({ groups, mayFail, stepColumns }: CutInputs, given: readonly number[]): Row[] {
  let lower = -mayFail;
  const draws = new Map<number, number>();
  for (const [row, group] of groups.entries()) {
    const place = at(given, row);
    const column = stepColumns[place]?.[(group.steps[place] as number) - 1];
    if (column === undefined) continue;
    lower += group.draws;
    draws.set(column, (draws.get(column) ?? 0) + group.draws);
  }
  if (lower <= 0) return [];
  const terms = [...draws].map(([column, count]): [number, number] => [column, Math.min(count, lower)]);
  return [{ lower, upper: Number.POSITIVE_INFINITY, terms }];
}
