// Readers: how a CSV file is written. In: its bytes. Out: what a row added to it has to look like.

import { knownHeaderKeys } from '../spell-headers.js';
import { type DecodedText, decodeText } from './decode-text.js';
import { findDelimiter } from './find-delimiter.js';
import { makeTable } from './make-table.js';
import type { CsvPlace } from './read-csv.js';
import { readCsv } from './read-csv.js';

export interface CsvShape {
  readonly encoding: DecodedText['encoding'];
  readonly delimiter: string;
  readonly lineEnd: string;
  /** False where the last line is not ended, so that a new one would run on in it. */
  readonly endsLine: boolean;
  /** As written; none where the file holds nothing yet. */
  readonly headers: readonly string[];
}

/** Undefined where the bytes are no text. A file of one line and no line end counts as CRLF, as RFC 4180 has it. */
export function readCsvShape(bytes: Uint8Array, place: CsvPlace): CsvShape | undefined {
  const { grid } = readCsv(bytes, place);
  const knownHeaders = knownHeaderKeys(place.sheet);
  const decoded = decodeText(bytes, knownHeaders);
  if (grid === undefined || decoded === undefined) return undefined;
  const { text, encoding } = decoded;
  const lines = text.replace(/\r\n?/g, '\n');
  return {
    encoding,
    delimiter: findDelimiter(lines, knownHeaders).delimiter,
    lineEnd: /\r\n|\n|\r/.exec(text)?.[0] ?? '\r\n',
    endsLine: lines === '' || lines.endsWith('\n'),
    headers: makeTable(grid).table?.headers ?? [],
  };
}
