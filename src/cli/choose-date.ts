// Command line: the day of the plan. In: the --date flag. Out: a day as YYYY-MM-DD.
import { UsageError } from './end-run.js';

/** The day given, if it is one. Throws a UsageError for anything that no calendar has. */
export function checkDate(text: string): string {
  const [year = 0, month = 0, day = 0] = /^\d{4}-\d\d-\d\d$/.test(text) ? text.split('-').map(Number) : [];
  const date = new Date(Date.UTC(year, month - 1, day));
  date.setUTCFullYear(year);
  if (year === 0 || date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day)
    throw new UsageError(`"${text}" is not a day. Write --date as 2026-03-14.`);
  return text;
}

/** Today where the painter sits, not in Greenwich. */
export function today(now = new Date()): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${String(now.getFullYear()).padStart(4, '0')}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
