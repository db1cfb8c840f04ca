// Promise: the order as an integer program in which each paint may be raised by steps. In: steps, wares, shops. Out: columns and
// rows, and which column says that a step is taken.
import { at } from '../../model/at.js';
import type { Shop } from '../../model/sheets.js';
import { sameMl } from '../../model/volume.js';
import { buildProgram, columnsOf, type OrderProgram } from '../build-program.js';
import type { Column, IntegerProgram, Row } from '../solver/integer-program.js';
import type { Ware } from '../ware.js';
import { countUpTo, type Steps } from './list-steps.js';

export interface PromiseProgram {
  readonly order: OrderProgram;
  readonly program: IntegerProgram;
  /** For each paint, in the order of the steps, the columns of its steps from the first on. */
  readonly stepColumns: readonly (readonly number[])[];
}

const yesOrNo: Column = { cost: 0, lower: 0, upper: 1, integer: true };

/**
 * Each paint's first amount is a need as ever. For each further step *l* a yes-or-no *z_l*, none before the one under it:
 *
 *     bought >= amount_0 + sum (amount_l - amount_(l-1)) z_l,   z_l <= z_(l-1)
 */
export function writePromiseProgram(
  steps: readonly Steps[],
  wares: readonly Ware[],
  shops: ReadonlyMap<string, Shop>,
): PromiseProgram {
  const needs = steps.map(({ paint, amounts }) => ({ paint, ml: at(amounts, 0) }));
  const asked = needs.filter(({ ml }) => ml > sameMl);
  const order = buildProgram({ needs: asked, wares, held: wares.map(() => 0), shops });
  const columns: Column[] = [...order.program.columns];
  const rows: Row[] = [...order.program.rows];
  const stepColumns = steps.map((one) => addSteps(one, { order, columns, rows }));
  return { order, program: { columns, rows }, stepColumns };
}

interface Writing {
  readonly order: OrderProgram;
  readonly columns: Column[];
  readonly rows: Row[];
}

function addSteps({ paint, amounts }: Steps, { order, columns, rows }: Writing): number[] {
  const placed = amounts.slice(1).map(() => columns.push(yesOrNo) - 1);
  if (placed.length === 0) return placed;
  const rises = placed.map((column, step): [number, number] => [
    column,
    at(amounts, step) - at(amounts, step + 1),
  ]);
  const bought = (order.holders.get(paint) ?? []).map(({ column, ml }): [number, number] => [column, ml]);
  rows.push(atLeast(at(amounts, 0), [...bought, ...rises]));
  placed.slice(1).forEach((column, step) => {
    rows.push(
      atLeast(0, [
        [at(placed, step), 1],
        [column, -1],
      ]),
    );
  });
  return placed;
}

const atLeast = (lower: number, terms: Row['terms']): Row => ({
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});

/** The step that so many ml of each paint reach. */
export function stepsReached(steps: readonly Steps[], bought: ReadonlyMap<string, number>): number[] {
  return steps.map(({ paint, amounts }) => Math.max(0, countUpTo(amounts, bought.get(paint) ?? 0) - 1));
}

/** Every column's value where so many of each ware are bought. */
export function valuesOf(
  { order, program, stepColumns }: PromiseProgram,
  { counts, reached }: { readonly counts: readonly number[]; readonly reached: readonly number[] },
  shops: ReadonlyMap<string, Shop>,
): number[] {
  const values = stepValues({ program, stepColumns }, reached);
  for (const [column, value] of columnsOf(order, counts, shops).entries()) values[column] = value;
  return values;
}

/** The values of the columns of steps that are reached; of all others 0. */
export function stepValues(
  { program, stepColumns }: Pick<PromiseProgram, 'program' | 'stepColumns'>,
  reached: readonly number[],
): number[] {
  const values = new Array<number>(program.columns.length).fill(0);
  stepColumns.forEach((columns, place) => {
    for (const column of columns.slice(0, reached[place])) values[column] = 1;
  });
  return values;
}
