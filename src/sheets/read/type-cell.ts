// Readers: one workbook cell to a table cell. In: what the worksheet holds of it. Out: a Cell.
import type { BrokenCell, Cell } from '../table.js';
import { decodeCellText, decodeEntities } from './decode-xml-text.js';
import type { CellFormat } from './read-format.js';
import { WorkbookError } from './workbook-error.js';

const DAY_MS = 86_400_000;
/** Serial number of 1970-01-01 (ECMA-376 18.17.4.1); the 1904 system counts 1462 days less. */
const SERIAL_OF_1970 = 25_569;
const DAYS_TO_1904 = 1462;
/** 0000 to 9999; `toISOString` writes other years with a sign. */
const LONGEST_ISO = 24;

/** A cell as it is stored (ECMA-376 18.3.1.4); texts are still encoded. */
export interface StoredCell {
  /** `s` shared text, `str` text of a formula, `inlineStr`, `b`, `e`, `d` ISO date; '' and `n` a number. */
  readonly type: string;
  /** What `v` holds; undefined where there is none. */
  readonly value: string | undefined;
  /** An inline text, decoded. */
  readonly inline: string;
  /** '' for a share of a formula that stands elsewhere; undefined for no formula. */
  readonly formula: string | undefined;
  readonly format: CellFormat;
}

export interface CellSurroundings {
  readonly strings: readonly Cell[];
  readonly date1904: boolean;
}

/**
 * Blank gives ''; a number in a percent format its percents as text, `0.6` and `0%` giving `60%`; one in a format that writes
 * a unit or a currency comes with that; a date gives its
 * day in UTC, since a workbook knows no time zone; rich text its text; a formula its stored result. Throws a WorkbookError
 * where a shared text is not there.
 */
export function typeCell(stored: StoredCell, { strings, date1904 }: CellSurroundings): Cell {
  const { type, value, inline, formula, format } = stored;
  if (type === 'inlineStr') return plainText(inline);
  // An empty text may be what a formula gave; an empty number is none.
  if (value === undefined || (value === '' && type !== 'str'))
    return formula === undefined
      ? ''
      : broken('formula without result', `=${decodeEntities(formula) || '...'}`);
  if (type === 's') return sharedText(strings, value);
  if (type === 'str' || type === 'd') return plainText(decodeCellText(value));
  if (type === 'b') return value === '1' || value === 'true';
  if (type === 'e') return broken('error value', decodeEntities(value));
  return typeNumber(Number(value), format, date1904);
}

const broken = (why: BrokenCell['why'], shown: string): BrokenCell => ({ kind: 'broken', why, shown });

function sharedText(strings: readonly Cell[], value: string): Cell {
  const text = strings[Number(value)];
  if (text === undefined) throw new WorkbookError('broken-workbook', `no shared text ${value}`);
  return text;
}

/** Text, or an ISO date and time as strict workbooks store dates. */
export function plainText(text: string): Cell {
  const iso = /^(\d{4}-\d\d-\d\d)T\d\d:\d\d[\d:.]*Z?$/.exec(text)?.[1];
  return iso === undefined ? copyText(text.trim()) : { kind: 'date', iso };
}

/** A text cut out of a longer one would keep all of that in memory for as long as it is used itself. */
const copyText = (text: string): string => ` ${text}`.slice(1);

function typeNumber(value: number, { kind, unit }: CellFormat, date1904: boolean): Cell {
  if (!Number.isFinite(value)) return broken('error value', '#NUM!');
  if (kind === 'percent') return `${Number((value * 100).toPrecision(12))}%`;
  if (kind === 'number') return unit === '' ? value : { kind: 'measured', value, unit };
  const days = value - SERIAL_OF_1970 + (date1904 ? DAYS_TO_1904 : 0);
  const date = new Date(Math.round(days * DAY_MS));
  const iso = Number.isNaN(date.getTime()) ? '' : date.toISOString();
  // A spreadsheet shows such a cell as a row of hash signs.
  return iso.length === LONGEST_ISO
    ? { kind: 'date', iso: iso.slice(0, 10) }
    : broken('error value', '#####');
}
