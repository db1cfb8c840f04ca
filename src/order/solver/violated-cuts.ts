// Solver: cuts where they are of use. In: columns and rows of a program; values. Out: rows that every whole solution keeps and the
// values do not.
import { at } from '../../model/at.js';
import { isCovering } from './covering-rows.js';
import type { Column, Row } from './integer-program.js';
import type { Presolved } from './presolve.js';
import { roundingCuts } from './rounding-cuts.js';
import { subadditiveCuts } from './subadditive-cuts.js';

/** A row that is missed by less, whatever its scale, is not worth a line. */
const leastMissing = 1e-3;

/** Of each covering row the rounding cut that the values miss by most, and every subadditive cut that they miss. */
export function openViolatedCuts({ columns, rows }: Pick<Presolved, 'columns' | 'rows'>) {
  const covering = rows.filter((row) => isCovering(row, columns) && hasCost(row, columns));
  const subadditive = subadditiveCuts({ columns, rows });
  return (values: Float64Array): Row[] => {
    // What a row has to spare mostly keeps its cuts too.
    const tight = covering.filter((row) => missing(row, values) > -leastMissing);
    return [
      ...tight.flatMap((row) => mostMissed(roundingCuts(row), values) ?? []),
      ...subadditive.filter((cut) => missing(cut, values) > leastMissing),
    ];
  };
}

/** Rows over columns without a cost gain nothing by cuts. */
const hasCost = ({ terms }: Row, columns: readonly Column[]): boolean =>
  terms.some(([column]) => at(columns, column).cost !== 0);

function mostMissed(cuts: readonly Row[], values: Float64Array): Row | undefined {
  let [found, farthest]: [Row | undefined, number] = [undefined, leastMissing];
  for (const cut of cuts) {
    const by = missing(cut, values);
    if (by > farthest) [found, farthest] = [cut, by];
  }
  return found;
}

/** How far values are from a row that asks for so much. */
function missing({ lower, terms }: Row, values: Float64Array): number {
  let [sum, square] = [0, 0];
  for (const [column, coefficient] of terms) {
    sum += coefficient * at(values, column);
    square += coefficient ** 2;
  }
  return (lower - sum) / Math.sqrt(square);
}
