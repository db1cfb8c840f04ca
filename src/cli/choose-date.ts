// Command line: the day of the plan. In: the --date flag. Out: a day as YYYY-MM-DD.
import { Mistake } from '../sheets/check/read-cell/cell-kind.js';
import { dateKind } from '../sheets/check/read-cell/read-date.js';
import { UsageError } from './end-run.js';

/** The day given, in any form that a cell may have (`14.3.2026`). Throws a UsageError for what is no day, or could be two. */
export function checkDate(text: string): string {
  const day = dateKind.read(text.trim());
  if (typeof day === 'string' && !day.startsWith('0000')) return day;
  if (day instanceof Mistake && day.code === 'day-or-month-first')
    throw new UsageError(`"${text}" could be two days. Write --date as ${day.expected}.`);
  throw new UsageError(`"${text}" is not a day. Write --date as 2026-03-14.`);
}

/** Today where the painter sits, not in Greenwich. */
export function today(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
