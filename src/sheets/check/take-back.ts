// Checks: log rows that take others back. In: the rows of all logs. Out: those that hold; a row that takes nothing back is told.
import type { LogEvent } from '../../model/words.js';
import { takesBack } from '../columns/log-columns.js';
import type { LogEntry } from './open-log.js';

/** What happened by a row. Undefined for a row that takes another back, and for a bad cell. */
export function eventOf({ row }: LogEntry): LogEvent | undefined {
  const { what = 'used' } = row;
  return row.bad.includes('what') || what.startsWith(takesBack) ? undefined : (what as LogEvent);
}

/** Each row with `not` in front takes the last one before it away that is like it in all but that and who wrote it. */
export function takeRowsBack(entries: readonly LogEntry[]): readonly LogEntry[] {
  const days = new Set(entries.flatMap(({ row }) => (row.what?.startsWith(takesBack) ? [row.date] : [])));
  if (days.size === 0) return entries;
  const standing = new Map<string, LogEntry[]>();
  const gone = new Set<LogEntry>();
  for (const entry of entries) {
    if (!days.has(entry.row.date)) continue;
    const { what = 'used' } = entry.row;
    const key = keyOf(entry, what.replace(takesBack, ''));
    const alike = standing.get(key) ?? [];
    standing.set(key, alike);
    if (!what.startsWith(takesBack)) {
      alike.push(entry);
      continue;
    }
    const taken = alike.pop();
    if (taken === undefined) entry.sheet.blame('log-takes-back-nothing', entry.row, 'what');
    for (const one of [entry, taken]) if (one !== undefined) gone.add(one);
  }
  return entries.filter((entry) => !gone.has(entry));
}

function keyOf({ row, paint, unit }: LogEntry, what: string): string {
  const { date, step, figures, beforeG, afterG, usedMl, left, sizeMl, pots, price, postage, shop } = row;
  const used = [date, paint ?? row.paint, unit?.unit ?? row.unit, step, figures, beforeG, afterG, usedMl];
  return JSON.stringify([what, ...used, left, sizeMl, pots, price, postage, shop]);
}
