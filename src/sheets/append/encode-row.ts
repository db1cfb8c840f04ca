// Append: one row as bytes of its file. In: cells, how the file is written. Out: bytes to put at its end, or what no
// encoding of the file can say.
import Papa from 'papaparse';
import { decodeGuessed, isGuessed, nameOfGuess } from '../read/decode-text.js';
import type { CsvShape } from '../read/read-csv-shape.js';

/** Letters that the file's encoding lacks. */
export class Unwritable {
  constructor(
    readonly letters: string,
    readonly encodingName: string,
  ) {}
}

/** Whole lines for the end of the file; a last line that was never ended is ended first. No rows give no bytes. */
export function encodeRows(
  rows: readonly (readonly string[])[],
  { encoding, delimiter, lineEnd, endsLine }: CsvShape,
): Uint8Array | Unwritable {
  const lines = Papa.unparse(
    rows.map((cells) => [...cells]),
    { delimiter, newline: lineEnd },
  );
  const text = rows.length === 0 ? '' : `${endsLine ? '' : lineEnd}${lines}${lineEnd}`;
  if (encoding === 'utf-16le') return Buffer.from(text, 'utf16le');
  if (encoding === 'utf-16be') return Buffer.from(text, 'utf16le').swap16();
  return isGuessed(encoding) ? encodeGuessed(text, encoding) : Buffer.from(text, 'utf8');
}

type Guessed = Parameters<typeof nameOfGuess>[0];

function encodeGuessed(text: string, encoding: Guessed): Uint8Array | Unwritable {
  const all = decodeGuessed(
    Uint8Array.from({ length: 256 }, (_, byte) => byte),
    encoding,
  );
  const bytes = new Map([...all].map((letter, byte) => [letter, byte]));
  const lacking = new Set([...text].filter((letter) => !bytes.has(letter)));
  if (lacking.size > 0) return new Unwritable([...lacking].join(''), nameOfGuess(encoding));
  return Uint8Array.from([...text], (letter) => bytes.get(letter) ?? 0);
}
