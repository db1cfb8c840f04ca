// Promise: the program with a column for each group of draws. In: the program over steps, groups. Out: columns and rows.
import { at } from '../../model/at.js';
import type { Column, IntegerProgram, Row } from '../solver/integer-program.js';
import { type CutInputs, isShort } from './cut-rows.js';
import type { DrawGroup } from './group-draws.js';
import type { PromiseProgram } from './promise-program.js';

/** With more rows than this cuts are sooner near: measured on drawn markets of 20 and 36 paints, 60 offers, 3 shops. */
const mostRows = 1000;

/** Whether the rows of such a program are too many. */
export function isLarge(groups: readonly DrawGroup[]): boolean {
  const rows = groups.reduce((sum, { steps }) => sum + steps.filter((step) => step > 0).length, 0);
  return rows > mostRows;
}

/** A way that keeps the promise: the steps that it reaches, and the values of the columns without groups. */
export interface Start {
  readonly reached: readonly number[];
  readonly values: readonly number[];
}

/**
 * For each group *g* of draws a share *u_g* that is served, which is all or nothing where steps are:
 *
 *     u_g <= z(paint, the step that g takes of it) for each paint,   sum of draws_g u_g >= draws - mayFail
 *
 * All cuts together say just as much; where orders near the best are many, one such program is sooner done than a program for each.
 */
export function writeWhole(
  { program }: PromiseProgram,
  { groups, mayFail, stepColumns }: CutInputs,
  start: Start | undefined,
): IntegerProgram {
  const columns: Column[] = [...program.columns];
  const rows: Row[] = [...program.rows];
  const served = groups.map(() => columns.push({ cost: 0, lower: 0, upper: 1, integer: false }) - 1);
  for (const [group, { steps }] of groups.entries())
    for (const [place, step] of steps.entries()) {
      const column = stepColumns[place]?.[step - 1];
      if (column === undefined) continue;
      rows.push(
        atLeast(0, [
          [column, 1],
          [at(served, group), -1],
        ]),
      );
    }
  const draws = groups.reduce((sum, group) => sum + group.draws, 0);
  rows.push(
    atLeast(
      draws - mayFail,
      groups.map((group, place) => [at(served, place), group.draws]),
    ),
  );
  if (start === undefined) return { columns, rows };
  const isServed = groups.map(({ steps }) => (isShort(steps, start.reached) ? 0 : 1));
  return { columns, rows, start: [...start.values, ...isServed] };
}

const atLeast = (lower: number, terms: Row['terms']): Row => ({
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});
