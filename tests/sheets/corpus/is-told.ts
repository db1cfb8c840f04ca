// Tests: whether the program tells of a cell. In: problems, where a cell stands. Out: yes or no.
import type { Problem } from '../../../src/model/problem.js';
import type { SheetName } from '../../../src/model/words.js';
import { columnNumber } from '../../../src/sheets/read/name-cell.js';

export interface Spot {
  /** Name of the file or folder that is read. */
  readonly top: string;
  /** Of a folder, the file in it; else the same. */
  readonly file: string;
  readonly is: SheetName;
  readonly headerRow: number;
  readonly row: number;
  readonly letter: string;
  /** What a person calls the column. */
  readonly called: string;
  /** As a person reads the cell. */
  readonly reading: string;
  /** The program read nothing as this sheet. */
  readonly isUnread: boolean;
}

/** Words of another alphabet may be misread all together, of which one warning tells. */
const ofLetters = 'guessed-encoding';
/** Tells of all of another sheet, whose cells stand beside those of its own. */
const ofBeside = 'table-beside';
/** Names its column by letter alone. */
const ofLetter = 'column-without-header';

/**
 * An error tells of all that it names: a file, a sheet, a column or a cell. A warning tells of its column or cell; of a whole
 * file only where nothing was read from it.
 */
export function isTold(problems: readonly Problem[], spot: Spot): boolean {
  return problems.some((problem) => tells(problem, spot));
}

function tells(problem: Problem, spot: Spot): boolean {
  const { file, sheet, row, column, code } = problem;
  const isOfFile = file === spot.file || file === spot.top;
  if (code === ofLetters) return isOfFile && /[^\0-~]/.test(spot.reading);
  if (code === ofBeside && problem.expected === spot.is) return isOfFile;
  if (code === ofLetter) return isOfFile && problem.expected === spot.letter;
  const isOfAll = problem.severity === 'error' || spot.isUnread;
  if (sheet === undefined && row === undefined) return isOfAll && isOfFile;
  if (sheet !== undefined && sheet !== spot.is) return false;
  if (sheet !== undefined && !isOfFile && !spot.isUnread) return false;
  if (row !== undefined) return isAt(problem, row, spot);
  return column === undefined ? isOfAll : column === spot.called;
}

/** A header tells of its whole column, a merged range of all its cells; a column that is not there has none. */
function isAt({ cell, column }: Problem, row: number, spot: Spot): boolean {
  const [first = '', last = first] = (cell ?? '').split(':');
  const [left, right] = [first, last].map((one) => columnNumber(one.replace(/\d+/g, '')));
  const bottom = Number(/\d+/.exec(last)?.[0] ?? row);
  const isInRows = (row <= spot.row && spot.row <= bottom) || row === spot.headerRow;
  if (cell === undefined) return row === spot.row && (column === undefined || column === spot.called);
  const at = columnNumber(spot.letter);
  return isInRows && (left ?? 0) <= at && at <= (right ?? 0);
}
