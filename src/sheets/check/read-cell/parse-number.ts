// Checks: numbers as painters write them. In: text or a workbook's number. Out: a plain decimal text, or why not.
import { partNumber, timesUnit, type Unit } from '../../units.js';
import { Mistake, type Written } from './cell-kind.js';

const longest = 40;
/** By far the most numbers in a sheet: read at once. */
const fewDigits = /^\d{1,9}$/;
const plain = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;
const ambiguous = /^([+-]?[1-9]\d{0,2})[.,](\d{3})$/;
const grouped = /^[+-]?[1-9]\d{0,2}([.,'’ \u00a0\u2009\u202f])\d{3}(?:\1\d{3})*(?:([.,])\d+)?$/;
const groupMarks = /['’\s]/g;

/**
 * A number as plain decimal text (`12,5` gives `12.5`), so that prices stay exact; undefined for what is no number:
 * words, `1e3`, `0x10`, `Infinity`, a trailing point.
 *
 * One point or comma followed by exactly three digits, after one to three digits that do not start with 0, could
 * be a fraction or thousands (`1,234`, `1.234`, `12.500`): that is a mistake and is never guessed. `0.125`,
 * `1234.567` and `1.2340` can be read in one way only, and so can groups beside another mark: `1.234,5`,
 * `1,234,567`, `1 234,5`, `1'234.50`; blanks of any width between groups of three are groups.
 */
function decimalText(written: string): string | Mistake | undefined {
  const text = written.length > longest ? '' : written.trim().replace('\u2212', '-');
  if (!plain.test(text)) return ungrouped(text);
  const doubtful = ambiguous.exec(text);
  if (doubtful === null) return text.replace(',', '.');
  const [, head = '', tail = ''] = doubtful;
  return new Mistake('ambiguous-number', `${head}${tail} or ${head}.${tail}0`);
}

function ungrouped(text: string): string | undefined {
  const [, mark, point] = grouped.exec(text) ?? [];
  if (mark === undefined || mark === point) return undefined;
  const bare = mark === '.' || mark === ',' ? text.replaceAll(mark, '') : text.replace(groupMarks, '');
  return bare.replace(',', '.');
}

/** As `decimalText`; a workbook's own number is taken with the 15 digits that spreadsheets keep. */
export function decimalOf(cell: Written): string | Mistake | undefined {
  if (typeof cell === 'string') return decimalText(cell);
  if (typeof cell !== 'number' || !Number.isFinite(cell)) return undefined;
  return String(Number.isInteger(cell) ? cell : Number(cell.toPrecision(15)));
}

/** The number in a cell, a mistake where it is ambiguous, undefined where there is none. */
export function parseNumber(cell: Written): number | Mistake | undefined {
  if (typeof cell === 'number') return Number.isFinite(cell) ? Number(cell.toPrecision(15)) : undefined;
  if (typeof cell === 'string' && cell.length <= longest && fewDigits.test(cell)) return Number(cell);
  const text = decimalOf(cell);
  return typeof text === 'string' ? Number(text) : text;
}

/** As `parseNumber`, with or without a unit behind it: `17`, `17 ml` and `1.7 cl` are all 17 of ml. */
export function parseMeasure(cell: Written, unit: Unit): number | Mistake | undefined {
  const bare = parseNumber(cell);
  const parted = bare === undefined && typeof cell === 'string' ? partNumber(cell) : undefined;
  const times = parted === undefined ? undefined : timesUnit(unit, parted.suffix);
  if (parted === undefined || times === undefined) return bare;
  const value = parseNumber(parted.number);
  if (value instanceof Mistake) return withUnits(value, parted.suffix);
  return value === undefined ? undefined : Number((value * times).toPrecision(15));
}

/** Both readings of an ambiguous number with their unit: `1234 ml or 1.2340 ml`. */
export function withUnits({ code, expected }: Mistake, unit: string): Mistake {
  return new Mistake(code, `${expected.replaceAll(' or ', ` ${unit} or `)} ${unit}`);
}
