// Checks: rows of the log beside one another. In: the rows of all logs. Out: those that hold; a row that takes nothing back is
// told, and one that stands there twice.
import type { Unit } from '../../model/sheets.js';
import type { LogEvent } from '../../model/words.js';
import { takesBack } from '../columns/log-columns.js';
import type { RowIn, SheetOf } from './read-rows.js';

export type LogSheet = SheetOf<'log'>;

/** A row of the log, and what its names mean; undefined where they mean nothing, which is told elsewhere. */
export interface LogEntry {
  readonly sheet: LogSheet;
  readonly row: RowIn<'log'>;
  readonly paint: string | undefined;
  readonly unit: Unit | undefined;
}

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

/** What a row says in all, but for who wrote it. */
function keyOf({ row, paint, unit }: LogEntry, what: string): string {
  const { date, step, figures, beforeG, afterG, usedMl, left, sizeMl, pots, price, postage, shop } = row;
  const used = [date, paint ?? row.paint, unit?.unit ?? row.unit, step, figures, beforeG, afterG, usedMl];
  return JSON.stringify([what, ...used, left, sizeMl, pots, price, postage, shop]);
}

/**
 * The same two weights of one paint on one day are one weighing, and a row copied from one log to another is one piece of
 * work. Rows of one log that name a volume may be alike: two batches of ten take the same.
 */
export function tellLogRepeats(entries: readonly LogEntry[]): void {
  const first = new Map<string, LogEntry>();
  const isOneLog = entries.every(({ sheet }) => sheet === entries[0]?.sheet);
  for (const entry of entries) {
    const { sheet, row, paint } = entry;
    if (row.date === undefined || paint === undefined || (isOneLog && !isWeighed(row))) continue;
    const key = keyOf(entry, row.what ?? 'used');
    const before = first.get(key);
    if (before === undefined) first.set(key, entry);
    else if (isOneWork(before, entry))
      sheet.blame('log-row-repeated', row, 'date', { expected: placeOf(before, entry) });
  }
}

const isWeighed = ({ beforeG, afterG }: LogEntry['row']): boolean =>
  beforeG !== undefined && afterG !== undefined;

const isOneWork = (before: LogEntry, { sheet, row }: LogEntry): boolean =>
  isWeighed(row) || before.sheet !== sheet;

function placeOf({ sheet, row }: LogEntry, other: LogEntry): string {
  return sheet === other.sheet ? `row ${row.row}` : `row ${row.row} of the log in ${sheet.table?.file ?? ''}`;
}
