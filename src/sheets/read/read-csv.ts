// Readers: one CSV file to a grid. In: its bytes, its name and which sheet it is. Out: rows of trimmed cells,
// problems.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { longCells } from './check-shape.js';
import { makeRoom, type Room, takeCells, takeLetters } from './count-room.js';
import { type DecodedText, decodeText } from './decode-text.js';
import { findDelimiter } from './find-delimiter.js';
import {
  type FoundProblem,
  type Grid,
  type GridRow,
  knownHeaderKeys,
  spreadsheetLimits,
  startOf,
} from './grid.js';
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

const LINE_END = 0x0a;
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
 * too much, before the text is split. Never throws for what the file holds.
 */
export function readCsv(bytes: Uint8Array, place: CsvPlace, room = makeRoom()): ReadCsv {
  const kind = sniffFile(bytes);
  if (kind === 'document') return { grid: undefined, problems: [problem('csv-is-not-text', place)] };
  if (kind !== 'other') return { grid: undefined, problems: [problem('csv-is-workbook', place)] };
  const decoded = decodeText(bytes);
  if (decoded === undefined) return { grid: undefined, problems: [problem('csv-is-not-text', place)] };

  const text = decoded.text.includes('\r') ? decoded.text.replace(/\r\n?/g, '\n') : decoded.text;
  const { delimiter, start } = findDelimiter(text, knownHeaderKeys(place.sheet));
  const full = takeText(text, { delimiter, room });
  if (full !== undefined) return { grid: undefined, problems: [problem('too-large-file', place, full)] };
  const { records, troubles } = splitRecords(text.slice(start), delimiter);
  const rows = keepRows(records);
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

/** Takes room for a text and its cells; where there is not enough, what is too much and how much would be read. */
function takeText(
  text: string,
  { delimiter, room }: { readonly delimiter: string; readonly room: Room },
): { readonly found: string; readonly expected: string } | undefined {
  const parting = delimiter.charCodeAt(0);
  let cells = 1;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text.charCodeAt(at);
    if (letter === parting || letter === LINE_END) cells += 1;
  }
  try {
    takeLetters(room, text.length);
    takeCells(room, cells);
    return undefined;
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    return { found: error.message, expected: error.most };
  }
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
  if (encoding !== 'windows-1252') return [];
  const special = /[^\s,;|"]*[^\0-~\s,;|"][^\s,;|"]*/.exec(text);
  return [problem('guessed-encoding', place, { found: startOf(special?.[0] ?? '') })];
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
