// Command line: the bytes of new log rows. In: their cells, what the log holds, a sheet to take after. Out: bytes for its end.
import { placeCells, type TypedCells } from '../sheets/append/check-log-rows.js';
import { encodeRows, Unwritable } from '../sheets/append/encode-row.js';
import { columns } from '../sheets/columns/columns.js';
import { type CsvShape, readCsvShape } from '../sheets/read/read-csv-shape.js';
import { UsageError } from './end-run.js';

interface Lines {
  readonly file: string;
  readonly rows: readonly TypedCells[];
  /** Undefined: there is no log yet. */
  readonly held: Uint8Array | undefined;
  /** The pots sheet beside it, whose delimiter and line ends a new log takes. */
  readonly likeness: Uint8Array | undefined;
}

const plain: CsvShape = { encoding: 'utf-8', delimiter: ',', lineEnd: '\r\n', endsLine: true, headers: [] };

/** Tells spreadsheets that the text is UTF-8. */
const byteOrderMark = Buffer.from('\ufeff');

/** The rows, under a header row where the log holds none. Throws a UsageError for a log that cannot take it. */
export function makeLogLines({ file, rows, held, likeness }: Lines): Uint8Array {
  const place = { file, sheet: 'log' } as const;
  const shape = held === undefined ? shapeLike(likeness) : readCsvShape(held, place);
  if (shape === undefined) throw new UsageError(`${file} is not a text file any more. Nothing was written.`);
  const isNew = shape.headers.length === 0;
  const headers = isNew ? columns.log.map(({ header }) => header) : shape.headers;
  const placed = rows.map((cells) => placeCells({ headers }, cells));
  const bytes = encodeRows(isNew ? [headers, ...placed] : placed, shape);
  if (bytes instanceof Unwritable)
    throw new UsageError(
      `${file} is in ${bytes.encodingName}, which cannot write "${bytes.letters}". Save it as "CSV UTF-8" and try again.`,
    );
  return held === undefined || held.length === 0 ? Buffer.concat([byteOrderMark, bytes]) : bytes;
}

function shapeLike(likeness: Uint8Array | undefined): CsvShape {
  const shape = likeness === undefined ? undefined : readCsvShape(likeness, { file: 'pots', sheet: 'pots' });
  return shape === undefined ? plain : { ...plain, delimiter: shape.delimiter, lineEnd: shape.lineEnd };
}
