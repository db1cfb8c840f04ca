// Checks: log rows that stand there twice. In: the rows of all logs. Out: nothing; each repeat is told.
import type { LogEntry } from './open-log.js';

/**
 * The same two weights of one paint on one day are one weighing, and a row copied from one log to another is one piece of
 * work. Rows of one log that name a volume may be alike: two batches of ten take the same.
 */
export function tellLogRepeats(entries: readonly LogEntry[]): void {
  const first = new Map<string, LogEntry>();
  const isOneLog = entries.every(({ sheet }) => sheet === entries[0]?.sheet);
  for (const entry of entries) {
    const { sheet, row, paint, unit } = entry;
    if (row.date === undefined || paint === undefined || (isOneLog && !isWeighed(row))) continue;
    const { date, what, step, figures, beforeG, afterG, usedMl, left, sizeMl, pots, price, postage, shop } =
      row;
    const ofPots = [what, left, sizeMl, pots, price, postage, shop];
    const key = JSON.stringify([date, paint, unit?.unit, step, figures, beforeG, afterG, usedMl, ...ofPots]);
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
