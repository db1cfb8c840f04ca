// Problems: a problem as one sentence for the painter. In: a Problem. Out: text such as
// `pots.csv row 14, "size ml" (B14): "a dab" is not a volume. Write a number of millilitres, such as 12.5.`
import type { Place, Problem } from '../model/problem.js';
import { saysOf } from './catalogue.js';

/** The whole sentence: place, what is wrong, what to do. */
export function wordProblem(of: Problem): string {
  return `${placeOf(of)}: ${saysOf(of)}. ${of.hint}`;
}

/** `pots.csv row 14, "size ml" (B14)`; in a workbook `army.xlsx, sheet pots, row 14, ...`. */
function placeOf(place: Place): string {
  const isPart = /\.(?:xls[xm]|ods), sheet /i.test(place.file);
  const isWorkbook = isPart || (place.sheet !== undefined && /\.(?:xls[xm]|ods)$/i.test(place.file));
  const sheet = isWorkbook && !isPart ? `, sheet ${place.sheet}` : '';
  const row = place.row === undefined ? '' : `${isWorkbook ? ',' : ''} row ${place.row}`;
  const column = place.column === undefined ? '' : `, "${place.column}"`;
  const cell = place.cell === undefined ? '' : ` (${place.cell})`;
  return `${place.file}${sheet}${row}${column}${cell}`;
}
