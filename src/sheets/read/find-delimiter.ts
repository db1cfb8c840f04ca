// Readers: which character parts the columns of a CSV text. In: the text, line ends normalised, and the keys
// of the headers that its sheet knows. Out: the delimiter and where the table begins.
import Papa from 'papaparse';
import { headerKey } from '../match-header.js';
import type { KnownHeaders } from '../spell-headers.js';

const DELIMITERS = [',', ';', '\t', '|'] as const;
const SAMPLE_CHARACTERS = 65_536;
/** With a mark more for each column of a sheet. */
const LONGEST_SEP_LINE = 200;
/** The header row is among the first so many rows. */
export const HEADER_WITHIN_ROWS = 20;

export interface FoundDelimiter {
  readonly delimiter: string;
  /** Where the text goes on after a `sep=;` line; 0 without one. */
  readonly start: number;
}

/**
 * A first line such as `sep=;` is obeyed. Else the delimiter under which one of the first twenty rows shows most
 * known headers wins, then the one that gives most rows the same number of cells; decimal commas cannot
 * outvote a header. A text without any of them counts as one column, parted by commas.
 */
export function findDelimiter(text: string, knownHeaders: KnownHeaders): FoundDelimiter {
  const start = text.slice(0, LONGEST_SEP_LINE).split('\n', 1)[0] ?? '';
  const isWhole = start.length === text.length || text[start.length] === '\n';
  const said = isWhole ? /^"?sep=([^"\n])"?\1*[ \t]*$/i.exec(start)?.[1] : undefined;
  if (said !== undefined) return { delimiter: said, start: Math.min(start.length + 1, text.length) };
  const sample = text.slice(0, SAMPLE_CHARACTERS);
  const there = delimitersIn(sample);
  if (there.length === 1) return { delimiter: there[0] ?? ',', start: 0 };
  const votes = there.map((delimiter) => vote(sample, delimiter, knownHeaders));
  const [first] = votes.sort((a, b) => b.headers - a.headers || b.alike - a.alike || b.width - a.width);
  return { delimiter: first?.delimiter ?? ',', start: 0 };
}

/** Those that stand in it; a comma, where none does. */
function delimitersIn(sample: string): readonly string[] {
  const there = DELIMITERS.filter((delimiter) => sample.includes(delimiter));
  return there.length === 0 ? [','] : there;
}

/** Most headers that one of the first rows of a text shows, whatever parts them. */
export function countHeaders(text: string, knownHeaders: KnownHeaders): number {
  const sample = text.slice(0, SAMPLE_CHARACTERS).replace(/\r\n?/g, '\n');
  return Math.max(...delimitersIn(sample).map((one) => vote(sample, one, knownHeaders).headers));
}

interface Vote {
  readonly delimiter: string;
  /** Known headers in the best of the first rows. */
  readonly headers: number;
  /** Rows that have the commonest number of cells, if that is two or more. */
  readonly alike: number;
  readonly width: number;
}

function vote(sample: string, delimiter: string, knownHeaders: KnownHeaders): Vote {
  const parsed = Papa.parse<string[]>(sample, { delimiter, newline: '\n', preview: HEADER_WITHIN_ROWS });
  const rows = parsed.data.filter((row) => row.some((cell) => cell.trim() !== ''));
  const headers = rows.map((row) => countKnown(row, knownHeaders));
  const widths = new Map<number, number>();
  for (const row of rows) if (row.length > 1) widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
  const [commonest] = [...widths].sort((a, b) => b[1] - a[1] || b[0] - a[0]);
  return {
    delimiter,
    headers: Math.max(0, ...headers),
    alike: commonest?.[1] ?? 0,
    width: commonest?.[0] ?? 1,
  };
}

/** How many different headers of a row the sheet knows. */
export function countKnown(cells: readonly string[], knownHeaders: KnownHeaders): number {
  const keys = new Set(cells.map(headerKey));
  let known = 0;
  for (const key of keys) if (knownHeaders.has(key)) known += 1;
  return known;
}
