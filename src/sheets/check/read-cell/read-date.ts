// Checks: dates. In: `2026-03-14`, or a workbook's date. Out: an ISO date, or a mistake.
import type { IsoDate } from '../../../model/sheets.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';

const yearFirst = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/;
const dotted = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/;
const yearLast = /^(\d{1,2})[-/](\d{1,2})[-/](\d{4})$/;
const longest = 20;

/**
 * Year first (`2026-03-14`, `2026/3/14`), or with points day first (`14.3.2026`, the only order in which points
 * are used). With slashes or hyphens and the year last, what can be one day only is read (`17/5/2026`, `5/17/2026`);
 * `3/4/2026` is the third of April or the fourth of March, and is questioned.
 */
function readDate(cell: Written): IsoDate | Mistake {
  if (typeof cell === 'number') return new Mistake('number-for-date');
  const text = String(cell);
  if (text.length > longest) return new Mistake('not-a-date');
  const first = yearFirst.exec(text);
  if (first !== null) return isoDay(first[1], first[3], first[4]) ?? new Mistake('no-such-day');
  const points = dotted.exec(text);
  if (points !== null) return isoDay(points[3], points[2], points[1]) ?? new Mistake('no-such-day');
  if (/^\d{4,6}$/.test(text)) return new Mistake('number-for-date');
  return readYearLast(text);
}

function readYearLast(text: string): IsoDate | Mistake {
  const [, one, other, year] = yearLast.exec(text) ?? [];
  if (year === undefined) return new Mistake('not-a-date');
  const days = [isoDay(year, one, other), isoDay(year, other, one)].filter((day) => day !== undefined);
  const [first, second] = [...new Set(days)].sort();
  if (first === undefined) return new Mistake('no-such-day');
  return second === undefined ? first : new Mistake('day-or-month-first', `${first} or ${second}`);
}

/** Undefined for a day that the calendar lacks. */
function isoDay(year = '', month = '', day = ''): IsoDate | undefined {
  const [y, m, d] = [Number(year), Number(month), Number(day)];
  if (m < 1 || m > 12 || d < 1 || d > daysIn(y, m)) return undefined;
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

function daysIn(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}

export const dateKind: CellKind<IsoDate> = { noun: 'a date', read: readDate, readDate: ({ iso }) => iso };
