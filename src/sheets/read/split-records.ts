// Readers: a CSV text to records of cells. In: the text with line ends as \n, its delimiter. Out: records,
// and every quotation mark that does not pair up.
import Papa from 'papaparse';

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

/** A text with more broken quotes than this is read as it stands after the last of them. */
const MOST_TROUBLES = 20;
const SNIPPET_LETTERS = 20;

/**
 * Splits by RFC 4180; a blank line, and what follows the last line end, is a record of one blank cell. A
 * quotation mark that opens a cell and has no proper partner is reported and read as if it were not there, so
 * that it does not swallow the rows below it. An empty text gives no records.
 */
export function splitRecords(text: string, delimiter: string): SplitRecords {
  const troubles: QuoteTrouble[] = [];
  let rest = text;
  for (;;) {
    const { data, errors } = Papa.parse<string[]>(rest, { delimiter, newline: '\n' });
    const broken = errors.find((error) => error.type === 'Quotes');
    if (broken?.index === undefined || troubles.length === MOST_TROUBLES) return { records: data, troubles };
    troubles.push(describe(rest, broken.index, broken.row ?? 0, delimiter));
    rest = rest.slice(0, broken.index - 1) + rest.slice(broken.index);
  }
}

/** `index` is the place after the opening mark. */
function describe(text: string, index: number, record: number, delimiter: string): QuoteTrouble {
  const line = text.slice(index, index + SNIPPET_LETTERS).split('\n', 1)[0] ?? '';
  const snippet = line.split('"', 1)[0]?.split(delimiter, 1)[0]?.trim() ?? '';
  const closing = closingMark(text, index);
  const closedInRow = closing !== -1 && !text.slice(index, closing).includes('\n');
  return { record, kind: closedInRow ? 'stray' : 'unclosed', snippet };
}

/** The first mark from `index` on that is not doubled; -1 where there is none. */
function closingMark(text: string, index: number): number {
  let at = text.indexOf('"', index);
  while (at !== -1 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at;
}
