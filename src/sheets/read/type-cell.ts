// Readers: one workbook cell to a table cell. In: the value and number format as exceljs gives them. Out: a
// Cell.
import type { CellValue } from 'exceljs';
import type { BrokenCell, Cell } from '../table.js';

const DAY_MS = 86_400_000;
/** Serial number of 1970-01-01 (ECMA-376 18.17.4.1); the 1904 system counts 1462 days less. */
const SERIAL_OF_1970 = 25_569;
const DAYS_TO_1904 = 1462;
/** 0000 to 9999; `toISOString` writes other years with a sign. */
const LONGEST_ISO = 24;

export interface CellFormat {
  /** As stored, e.g. `0%` or `dd/mm/yyyy`; undefined for General. */
  readonly numberFormat: string | undefined;
  readonly date1904: boolean;
}

/**
 * Blank gives ''; a number in a percent format its percents as text, `0.6` and `0%` giving `60%`; a date its
 * day in UTC, since a workbook knows no time zone; rich text and links their text; a formula its stored
 * result.
 */
export function typeCell(value: CellValue, format: CellFormat): Cell {
  if (value === null || value === undefined) return '';
  if (typeof value === 'string') return plainText(value);
  if (typeof value === 'boolean') return value;
  if (typeof value === 'number') return typeNumber(value, format);
  if (value instanceof Date) return typeNumber(serialOf(value, format.date1904), format);
  if ('error' in value) return broken('error value', value.error);
  if ('richText' in value) return plainText(value.richText.map(({ text }) => text).join(''));
  if ('hyperlink' in value) return plainText(textOfLink(value.text));
  if (value.result === undefined) return broken('formula without result', `=${formulaOf(value)}`);
  return typeCell(value.result, format);
}

const broken = (why: BrokenCell['why'], shown: string): BrokenCell => ({ kind: 'broken', why, shown });

/** Text, or an ISO date and time as strict workbooks store dates. */
function plainText(text: string): Cell {
  const iso = /^(\d{4}-\d\d-\d\d)T\d\d:\d\d[\d:.]*Z?$/.exec(text)?.[1];
  return iso === undefined ? text.trim() : { kind: 'date', iso };
}

/** A link's text may be rich text itself, whatever the types say. */
function textOfLink(text: unknown): string {
  if (typeof text === 'string') return text;
  const runs = (text as { readonly richText?: readonly { readonly text: string }[] }).richText ?? [];
  return runs.map((run) => run.text).join('');
}

function formulaOf(value: object): string {
  if ('formula' in value && typeof value.formula === 'string') return value.formula;
  return 'sharedFormula' in value && typeof value.sharedFormula === 'string' ? value.sharedFormula : '...';
}

function typeNumber(value: number, { numberFormat, date1904 }: CellFormat): Cell {
  if (!Number.isFinite(value)) return broken('error value', '#NUM!');
  const kind = kindOfFormat(numberFormat);
  if (kind === 'percent') return `${Number((value * 100).toPrecision(12))}%`;
  if (kind === 'number') return value;
  const days = value - SERIAL_OF_1970 + (date1904 ? DAYS_TO_1904 : 0);
  const date = new Date(Math.round(days * DAY_MS));
  const iso = Number.isNaN(date.getTime()) ? '' : date.toISOString();
  // A spreadsheet shows such a cell as a row of hash signs.
  return iso.length === LONGEST_ISO
    ? { kind: 'date', iso: iso.slice(0, 10) }
    : broken('error value', '#####');
}

/** exceljs takes some numbers for dates, such as those in the format `0.0\ \m\l`: back to the number. */
function serialOf(date: Date, date1904: boolean): number {
  const serial = date.getTime() / DAY_MS + SERIAL_OF_1970 - (date1904 ? DAYS_TO_1904 : 0);
  // exceljs rounds to milliseconds, some 1e-8 of a day.
  return Math.round(serial * 1e7) / 1e7;
}

/**
 * What a number format (ECMA-376 18.8.31) makes of a number, by its first section without quoted, escaped,
 * padding and bracketed letters. No format is General.
 */
export function kindOfFormat(numberFormat: string | undefined): 'date' | 'percent' | 'number' {
  if (numberFormat === undefined || /^(general|standard)/i.test(numberFormat)) return 'number';
  const bare = numberFormat.replace(/"[^"]*"|\\.|[_*]./g, '').replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '');
  const first = bare.split(';', 1)[0] ?? '';
  if (/[ymdhs]/i.test(first)) return 'date';
  return first.includes('%') ? 'percent' : 'number';
}
