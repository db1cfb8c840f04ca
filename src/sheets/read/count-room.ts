// Readers: how much of one source, a folder or a workbook, may still be read. In: cells and letters as they come. Out: an error once it is too much.
import { mostRows } from '../most-rows.js';
import { tooLarge } from './workbook-error.js';

/** What all sheets together may still hold. */
export interface Room {
  rows: number;
  cells: number;
  letters: number;
}

/** A hundred thousand rows of twenty columns, blank cells before the last of a row counted. */
const MOST_CELLS = 2_000_000;
const MOST_LETTERS = 16_000_000;

export const makeRoom = (): Room => ({ rows: mostRows, cells: MOST_CELLS, letters: MOST_LETTERS });

/** For rows that hold something. Throws a WorkbookError where the room is used up. */
export function takeRows(room: Room, count: number): void {
  room.rows -= count;
  if (room.rows < 0) throw tooLarge('more rows', inWords(mostRows));
}

/** Throws a WorkbookError where the room is used up. */
export function takeCells(room: Room, count: number): void {
  room.cells -= count;
  if (room.cells < 0) throw tooLarge('more cells', inWords(MOST_CELLS));
}

/** Throws a WorkbookError where the room is used up. */
export function takeLetters(room: Room, count: number): void {
  room.letters -= count;
  if (room.letters < 0) throw tooLarge('more letters', inWords(MOST_LETTERS));
}

const inWords = (count: number): string =>
  count < 1e6 ? `${count / 1e3} thousand` : `${count / 1e6} million`;
