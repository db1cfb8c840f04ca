// Report words: volumes that are parts of one another. In: ml. Out: text, rounded by largest remainder so that it adds up.
import { at } from '../../model/at.js';
import { splitWhole } from '../../model/money.js';
import { mlDigits, type NumberWords } from './word-numbers.js';

/** Parts that add up to the whole as it is shown with so many digits. */
export function splitMl(
  wholeMl: number,
  partsMl: readonly number[],
  digits: number,
  words: NumberWords,
): string[] {
  const step = 10 ** digits;
  return splitWhole(Math.round(wholeMl * step), partsMl).map((steps) => words.bareMl(steps / step, digits));
}

export interface MlTable {
  /** As the rows given; '' where there is nothing. */
  readonly cells: readonly (readonly string[])[];
  readonly rowTotals: readonly string[];
  readonly columnTotals: readonly string[];
  readonly total: string;
}

/** Rounded over the whole table, so that rows and columns add up to what is shown; a trace is `under 0.1`. */
export function roundMlTable(
  rowsMl: readonly (readonly number[])[],
  wholeMl: number,
  words: NumberWords,
): MlTable {
  const digits = digitsOfParts(wholeMl);
  const step = 10 ** digits;
  const wide = rowsMl[0]?.length ?? 0;
  const parts = splitWhole(Math.round(wholeMl * step), rowsMl.flat());
  const text = (steps: number): string => words.bareMl(steps / step, digits);
  const cell = (ml: number, steps: number): string => {
    if (ml === 0) return '';
    return steps === 0 ? words.bareMl(Math.min(ml, 0.4 / step), digits) : text(steps);
  };
  const stepsAt = (row: number, column: number): number => at(parts, row * wide + column);
  const sum = (steps: readonly number[]): string => text(steps.reduce((total, one) => total + one, 0));
  const columns = Array.from({ length: wide }, (_, column) => column);
  return {
    cells: rowsMl.map((ofRow, row) => ofRow.map((ml, column) => cell(ml, stepsAt(row, column)))),
    rowTotals: rowsMl.map((_, row) => sum(columns.map((column) => stepsAt(row, column)))),
    columnTotals: columns.map((column) => sum(rowsMl.map((_, row) => stepsAt(row, column)))),
    total: text(Math.round(wholeMl * step)),
  };
}

/** Parts are mostly a tenth of the whole or less. */
const digitsOfParts = (wholeMl: number): number => mlDigits(wholeMl / 10);
