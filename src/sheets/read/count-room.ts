// Readers: how much of one source, a folder or a workbook, may still be read. In: cells and letters as they come. Out: an error once it is too much.
import { tooLarge } from './workbook-error.js';

/** What all sheets together may still hold. */
export interface Room {
  cells: number;
  letters: number;
}

/** A hundred thousand rows of twenty columns, blank cells before the last of a row counted. */
const MOST_CELLS = 2_000_000;
const MOST_LETTERS = 32_000_000;

export const makeRoom = (): Room => ({ cells: MOST_CELLS, letters: MOST_LETTERS });

/** Throws a WorkbookError where the room is used up. */
export function takeCells(room: Room, count: number): void {
  room.cells -= count;
  if (room.cells < 0) throw tooLarge('more cells', inMillions(MOST_CELLS));
}

/** Throws a WorkbookError where the room is used up. */
export function takeLetters(room: Room, count: number): void {
  room.letters -= count;
  if (room.letters < 0) throw tooLarge('more letters', inMillions(MOST_LETTERS));
}

const inMillions = (count: number): string => `${count / 1e6} million`;
