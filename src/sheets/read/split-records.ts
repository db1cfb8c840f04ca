// Readers: a CSV text to records of cells. In: the text with line ends as \n, its delimiter. Out: records,
// and every quotation mark that does not pair up. Each letter is looked at a few times at the most, whatever stands there.
import { spreadsheetLimits } from './grid.js';

export interface QuoteTrouble {
  /** Record from 0, blank ones counted. */
  readonly record: number;
  /** `unclosed`: the cell would run over line ends; `stray`: text follows the closing mark. */
  readonly kind: 'unclosed' | 'stray';
  /** The first words after the opening mark. */
  readonly snippet: string;
}

export interface SplitRecords {
  readonly records: string[][];
  readonly troubles: readonly QuoteTrouble[];
}

/** Of a text with more broken quotes than this, the first are told. */
const MOST_TROUBLES = 20;
const SNIPPET_LETTERS = 20;
/** A cell in quotation marks is no longer, even if each of its letters is a mark and doubled. */
const LONGEST_QUOTED = 2 * spreadsheetLimits.cellCharacters;

/**
 * Splits by RFC 4180; a blank line, and what follows the last line end, is a record of one blank cell. A
 * quotation mark that opens a cell and has no proper partner is reported and read as if it were not there, so
 * that it does not swallow the rows below it. An empty text gives no records.
 */
export function splitRecords(text: string, delimiter: string): SplitRecords {
  const troubles: QuoteTrouble[] = [];
  const records: string[][] = [];
  let mark = text.indexOf('"');
  for (let at = text === '' ? -1 : 0; at !== -1; ) {
    const lineEnd = endOf(text, text.indexOf('\n', at));
    // Where no mark stands in the line the system splits it, several times as fast.
    if (mark === -1 || mark >= lineEnd) {
      records.push(text.slice(at, lineEnd).split(delimiter));
      at = lineEnd === text.length ? -1 : lineEnd + 1;
    } else {
      const record = splitMarked(text, at, { delimiter, number: records.length, troubles });
      records.push(record.cells);
      at = record.next;
      if (at !== -1 && mark < at) mark = text.indexOf('"', at);
    }
  }
  return { records, troubles };
}

/** Where something was found, else the end of the text. */
const endOf = (text: string, found: number): number => (found === -1 ? text.length : found);

interface Marked {
  readonly delimiter: string;
  readonly number: number;
  readonly troubles: QuoteTrouble[];
}

/** A record with quotation marks in it, cell by cell; `next` is where the one after it begins, -1 for none. */
function splitMarked(
  text: string,
  start: number,
  { delimiter, number, troubles }: Marked,
): { readonly cells: string[]; readonly next: number } {
  const cells: string[] = [];
  for (let at = start; ; ) {
    const isMarked = text[at] === '"';
    const closed = isMarked ? readQuoted(text, at + 1, delimiter) : undefined;
    if (isMarked && closed === undefined && troubles.length < MOST_TROUBLES)
      troubles.push({ record: number, ...describe(text, at + 1, delimiter) });
    const from = isMarked ? at + 1 : at;
    const end = closed?.end ?? plainEnd(text, from, delimiter);
    cells.push(closed?.cell ?? text.slice(from, end));
    if (end === text.length) return { cells, next: -1 };
    at = end + 1;
    if (text[end] === '\n') return { cells, next: at };
  }
}

/** The next delimiter or line end. */
function plainEnd(text: string, from: number, delimiter: string): number {
  let at = from;
  while (at < text.length && text[at] !== delimiter && text[at] !== '\n') at += 1;
  return at;
}

/** A cell whose opening mark stands before `from`; undefined where it is not closed before a delimiter or line end. */
function readQuoted(
  text: string,
  from: number,
  delimiter: string,
): { readonly cell: string; readonly end: number } | undefined {
  const closing = closingMark(text, from);
  if (closing === -1) return undefined;
  let end = closing + 1;
  while (text[end] === ' ' && delimiter !== ' ') end += 1;
  if (end < text.length && text[end] !== delimiter && text[end] !== '\n') return undefined;
  const written = text.slice(from, closing);
  return { cell: written.includes('"') ? written.replaceAll('""', '"') : written, end };
}

/** `from` is the place after the opening mark. */
function describe(text: string, from: number, delimiter: string): Omit<QuoteTrouble, 'record'> {
  const line = text.slice(from, from + SNIPPET_LETTERS).split('\n', 1)[0] ?? '';
  const snippet = line.split('"', 1)[0]?.split(delimiter, 1)[0]?.trim() ?? '';
  const closing = closingMark(text, from);
  const closedInRow = closing !== -1 && !text.slice(from, closing).includes('\n');
  return { kind: closedInRow ? 'stray' : 'unclosed', snippet };
}

/** The first mark from `from` on that is not doubled; -1 where none stands within the longest cell. */
function closingMark(text: string, from: number): number {
  for (let at = from; at < text.length && at - from <= LONGEST_QUOTED; at += 1) {
    if (text[at] !== '"') continue;
    if (text[at + 1] !== '"') return at;
    at += 1;
  }
  return -1;
}
