// Estimate: work that the log tells without an amount. In: log rows, the estimate of the whole army. Out: what each row took,
// likely.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { isWorkRow, linesOfRow } from '../model/lines-of-row.js';
import type { LogRow } from '../model/sheets.js';
import type { PastWork } from '../model/stock.js';
import type { Estimate } from '../model/work.js';

/** Rows that count as progress and name no amount; one that its scheme has no line for takes nothing. */
export function listPastWork(
  log: readonly LogRow[],
  { units }: Pick<Estimate, 'units'>,
  assumptions: Assumptions,
): ReadonlyMap<LogRow, PastWork> {
  const past = new Map<LogRow, PastWork>();
  const painter = likely(assumptions, 'painter');
  // Of units with one name the first is painted first.
  const jobs = new Map(units.toReversed().map(({ unit, job }) => [unit.unit, job]));
  for (const row of log) {
    const job = isUnmeasured(row) && isWorkRow(row) ? jobs.get(row.unit) : undefined;
    const lines = job && isWorkRow(row) ? linesOfRow(row, job, painter) : [];
    if (job === undefined || lines.length === 0) continue;
    past.set(row, {
      ...{ lines, figure: job.figure },
      likelyMl: lines.reduce((sum, { putOutMl }) => sum + putOutMl, 0),
    });
  }
  return past;
}

const isUnmeasured = ({ what, step, usedMl, beforeG, afterG }: LogRow): boolean =>
  what === undefined &&
  step !== undefined &&
  usedMl === undefined &&
  (beforeG === undefined || afterG === undefined);
