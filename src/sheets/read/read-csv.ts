// Readers: one CSV file to a grid. In: its bytes, its name and which sheet it is. Out: rows of trimmed cells,
// problems.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { knownHeaderKeys } from '../spell-headers.js';
import { longCells } from './check-shape.js';
import { makeRoom, type Room, takeCells, takeLetters, takeRows } from './count-room.js';
import { type DecodedText, decodeText, isGuessed, nameOfGuess } from './decode-text.js';
import { findDelimiter } from './find-delimiter.js';
import { type FoundProblem, type Grid, type GridRow, spreadsheetLimits, startOf } from './grid.js';
import { MOST_TEXT_MB, readBytes } from './read-bytes.js';
import { sniffFile } from './sniff-file.js';
import { type QuoteTrouble, splitRecords } from './split-records.js';
import { WorkbookError } from './workbook-error.js';

export interface CsvPlace {
  readonly file: string;
  readonly sheet: SheetName;
}

export interface ReadCsv {
  /** Undefined where the file is no text. */
  readonly grid: Grid | undefined;
  readonly problems: readonly FoundProblem[];
}

const WORD_LETTERS = 40;
/** Of a cell that no spreadsheet holds, one letter more is kept: it is told, and costs no more than that. */
const LONGEST = spreadsheetLimits.cellCharacters;

const delimiterNames: Readonly<Record<string, string>> = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'bar',
};

/**
 * Reads a CSV file; no bytes give a grid without rows. Takes from `room` what it holds, and gives a problem where that is
 * too much, before it is split into cells. Never throws for what the file holds.
 */
export function readCsv(bytes: Uint8Array, place: CsvPlace, room = makeRoom()): ReadCsv {
  const kind = sniffFile(bytes);
  if (kind === 'document') return { grid: undefined, problems: [problem('csv-is-not-text', place)] };
  if (kind !== 'other') return { grid: undefined, problems: [problem('csv-is-workbook', place)] };
  const decoded = decodeText(bytes, knownHeaderKeys(place.sheet));
  if (decoded === undefined) return { grid: undefined, problems: [problem('csv-is-not-text', place)] };

  try {
    return readText(decoded, place, room);
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    const full = { found: error.message, expected: error.most };
    return { grid: undefined, problems: [problem(error.fault, place, full)] };
  }
}

/** The same of a file on the disk; one that cannot be opened is a problem. */
export function readCsvFile(path: string, place: CsvPlace, room = makeRoom()): ReadCsv {
  const read = readBytes(path, place, MOST_TEXT_MB);
  return 'trouble' in read ? { grid: undefined, problems: [read.trouble] } : readCsv(read.bytes, place, room);
}

function readText(decoded: DecodedText, place: CsvPlace, room: Room): ReadCsv {
  takeLetters(room, decoded.text.length);
  // Before the line ends are made alike, which takes memory for each.
  takeCells(room, countLetters(decoded.text, '\n') + countLetters(decoded.text, '\r'));
  const text = decoded.text.includes('\r') ? decoded.text.replace(/\r\n?/g, '\n') : decoded.text;
  const { delimiter, start } = findDelimiter(text, knownHeaderKeys(place.sheet));
  takeCells(room, countLetters(text, delimiter));
  const { records, troubles } = splitRecords(text.slice(start), delimiter);
  const rows = keepRows(records);
  takeRows(room, rows.length);
  const brokenRows = new Set(troubles.map(({ record }) => record + 1));
  const grid = { ...place, rows, brokenRows, delimiterName: delimiterNames[delimiter] ?? delimiter };
  return {
    grid,
    problems: [
      ...encodingProblems(decoded, place),
      ...quoteProblems(troubles, place),
      ...longCells(rows, place),
    ],
  };
}

function countLetters(text: string, letter: string): number {
  let count = 0;
  for (let at = text.indexOf(letter); at !== -1; at = text.indexOf(letter, at + 1)) count += 1;
  return count;
}

/**
 * Trims every cell in place and leaves blank records out; the records become the rows' cells. Counting loops,
 * since iterators over a million cells cost as much as parsing them.
 */
function keepRows(records: readonly string[][]): GridRow[] {
  const rows: GridRow[] = [];
  for (let index = 0; index < records.length; index += 1) {
    const cells = records[index];
    if (cells !== undefined && trimCells(cells)) rows.push({ row: index + 1, cells });
  }
  return rows;
}

/** Trims in place; whether anything is left. */
function trimCells(cells: string[]): boolean {
  let filled = false;
  for (let column = 0; column < cells.length; column += 1) {
    const cell = cells[column] ?? '';
    const trimmed = cell.length > LONGEST ? cell.slice(0, LONGEST + 1).trim() : cell.trim();
    // Writing back a text that is the same costs more than comparing the lengths.
    if (trimmed.length !== cell.length) cells[column] = trimmed;
    if (trimmed !== '') filled = true;
  }
  return filled;
}

function encodingProblems({ text, encoding }: DecodedText, place: CsvPlace): FoundProblem[] {
  if (!isGuessed(encoding)) return [];
  const words = { found: startOf(specialWord(text)), expected: nameOfGuess(encoding) };
  return [problem('guessed-encoding', place, words)];
}

/** The first word with a letter that is not ASCII; of a very long one the letters around it. */
function specialWord(text: string): string {
  const at = text.search(/[^\0-~\s]/);
  const before = /[^\s,;|"]*$/.exec(text.slice(Math.max(0, at - WORD_LETTERS), at))?.[0] ?? '';
  return before + (/^[^\s,;|"]*/.exec(text.slice(at, at + WORD_LETTERS))?.[0] ?? '');
}

function quoteProblems(troubles: readonly QuoteTrouble[], place: CsvPlace): FoundProblem[] {
  return troubles.map(({ record, kind, snippet }) =>
    problem(
      kind === 'stray' ? 'stray-quote' : 'unclosed-quote',
      { ...place, row: record + 1 },
      { found: snippet },
    ),
  );
}
