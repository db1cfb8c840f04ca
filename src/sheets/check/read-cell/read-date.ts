// Checks: dates. In: `2026-03-14`, or a workbook's date. Out: an ISO date, or a mistake.
import type { IsoDate } from '../../../model/sheets.js';
import { headerKey } from '../../match-header.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';

const yearFirst = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/;
const dotted = /^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/;
const yearLast = /^(\d{1,2})[-/](\d{1,2})[-/](\d{4})$/;
const named = /^(\d{1,2})[-. /]{1,2}(\p{L}{3,10})\.?[-. /]{1,2}(\d{4})$/u;
const longest = 20;

/** By three letters or more: English, German, French, Spanish, Italian, Dutch, Polish; none is the beginning of another month's. */
const months = [
  'january januar janvier enero gennaio januari styczeń stycznia gen ene sty',
  'february februar février febrero febbraio februari luty lutego fév lut',
  'march märz mars marzo maart mrt marzec marca mrz',
  'april avril abril aprile kwiecień kwietnia avr abr kwi',
  'may mai mayo maggio mei maj maja mag',
  'june juni juin junio giugno czerwiec czerwca jun giu cze',
  'july juli juillet julio luglio lipiec lipca jul lug lip',
  'august août agosto augustus sierpień sierpnia aug sie',
  'september septembre septiembre settembre wrzesień września sept sep set wrz',
  'october oktober octobre octubre ottobre październik października okt oct ott paź',
  'november novembre noviembre listopad listopada nov lis',
  'december dezember décembre diciembre dicembre grudzień grudnia dec dez dic gru',
].map((words) => words.split(' ').map(headerKey));

/**
 * Year first (`2026-03-14`, `2026/3/14`), or with points day first (`14.3.2026`, the only order in which points
 * are used). With slashes or hyphens and the year last, what can be one day only is read (`17/5/2026`, `5/17/2026`);
 * `14-mrt-2026` names its month;
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
  const [, day, month, year] = named.exec(text) ?? [];
  if (month !== undefined) {
    const number = monthOf(month);
    return number === undefined
      ? new Mistake('not-a-date')
      : (isoDay(year, number, day) ?? new Mistake('no-such-day'));
  }
  if (/^\d{4,6}$/.test(text)) return new Mistake('number-for-date');
  return readYearLast(text);
}

/** Its number, in full or by the first letters; undefined for what is no month or may be two. */
function monthOf(written: string): string | undefined {
  const key = headerKey(written);
  const whole = months.flatMap((words, at) => (words.includes(key) ? [at + 1] : []));
  const begun = months.flatMap((words, at) => (words.some((word) => word.startsWith(key)) ? [at + 1] : []));
  const [month, ...others] = whole.length > 0 ? whole : begun;
  return month === undefined || others.length > 0 ? undefined : String(month);
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
