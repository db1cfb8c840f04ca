// Readers: a CSV text to records of cells. In: the text with line ends as \n, its delimiter. Out: records,
// and every quotation mark that does not pair up.
import Papa, { type ParseError } from 'papaparse';

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
/** A broken mark may run to the end of the text: so many letters are looked at again for all of them. */
const MOST_LETTERS_AGAIN = 2 ** 25;
const SNIPPET_LETTERS = 20;

/**
 * Splits by RFC 4180; a blank line, and what follows the last line end, is a record of one blank cell. A
 * quotation mark that opens a cell and has no proper partner is reported and read as if it were not there, so
 * that it does not swallow the rows below it; after the last that is told, no mark counts. An empty text gives no records.
 */
export function splitRecords(text: string, delimiter: string): SplitRecords {
  if (text === '') return { records: [], troubles: [] };
  const { data, errors } = Papa.parse<string[]>(text, { delimiter, newline: '\n' });
  return errors.some(isOfQuotes) ? splitBroken(text, delimiter) : { records: data, troubles: [] };
}

const isOfQuotes = ({ type }: ParseError): boolean => type === 'Quotes';

function splitBroken(text: string, delimiter: string): SplitRecords {
  const records: string[][] = [];
  const troubles: QuoteTrouble[] = [];
  let again = 0;
  for (let rest = text; ; ) {
    const { next, broken } = splitUntilBroken(rest, delimiter, records);
    if (broken === undefined) return { records, troubles };
    const mark = rest.indexOf('"', broken - 1);
    troubles.push({ record: records.length, ...describe(rest, mark + 1, delimiter) });
    again += rest.length;
    const isLast = troubles.length === MOST_TROUBLES || again > MOST_LETTERS_AGAIN;
    const after = rest.slice(mark + 1);
    rest = rest.slice(next, mark) + (isLast ? after.replaceAll('"', '') : after);
  }
}

/** Adds the records before the first broken mark; `next` is where the record with it begins. */
function splitUntilBroken(
  text: string,
  delimiter: string,
  records: string[][],
): { readonly next: number; readonly broken: number | undefined } {
  let next = 0;
  let broken: number | undefined;
  Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    step: ({ data, errors, meta }, parser) => {
      broken = errors.find(isOfQuotes)?.index;
      if (broken !== undefined) return parser.abort();
      records.push(data);
      next = meta.cursor;
    },
  });
  return { next, broken };
}

/** `from` is the place after the opening mark. */
function describe(text: string, from: number, delimiter: string): Omit<QuoteTrouble, 'record'> {
  const end = text.indexOf('\n', from);
  const line = text.slice(from, end === -1 ? text.length : end);
  const snippet = line.slice(0, SNIPPET_LETTERS).split('"', 1)[0]?.split(delimiter, 1)[0]?.trim() ?? '';
  return { kind: line.replaceAll('""', '').includes('"') ? 'stray' : 'unclosed', snippet };
}
