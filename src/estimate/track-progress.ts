// Estimate: what the log says is done. In: log rows, the army. Out: per unit, how many figures have had which paint of
// which step; units with nothing left to do.
import type { LogRow, Sheets, Unit } from '../model/sheets.js';
import { stepsOfUnit } from './steps-of-unit.js';

/** Figures that have had a paint of a step, by `doneKey`. */
export type DoneByLog = ReadonlyMap<string, number>;

/** One paint of one step, as progress is counted: a step may lay several paints, each logged by itself. */
export const doneKey = (step: number, paint: string): string => `${step}\n${paint}`;

/**
 * The figures that log rows name, by unit, step and paint. Rows without unit, step or figures tell no progress. Of units
 * with one name the first is filled first; more figures than a unit has count as all of it.
 */
export function trackProgress(log: readonly LogRow[], army: readonly Unit[]): ReadonlyMap<Unit, DoneByLog> {
  const logged = new Map<string, Map<string, number>>();
  for (const { unit, step, figures, paint, nowPaint = paint } of log) {
    if (unit === undefined || step === undefined || figures === undefined) continue;
    const done = logged.get(unit) ?? new Map<string, number>();
    const key = doneKey(step, nowPaint);
    logged.set(unit, done.set(key, (done.get(key) ?? 0) + figures));
  }
  const progress = new Map<Unit, DoneByLog>();
  for (const unit of logged.size === 0 ? [] : army) {
    const left = logged.get(unit.unit);
    if (left === undefined || left.size === 0) continue;
    progress.set(unit, takeOff(left, unit.count));
  }
  return progress;
}

/** Units of which the army sheet or the log calls every step done. */
export function findDone(sheets: Sheets): Set<Unit> {
  const { army, log } = sheets;
  const progress = trackProgress(log, army);
  const isDone = (unit: Unit): boolean => {
    const logged = progress.get(unit);
    const isLaid = (step: number, paint: string): boolean =>
      step <= unit.done || (logged?.get(doneKey(step, paint)) ?? 0) >= unit.count;
    return stepsOfUnit(unit, sheets).every(({ step, paints }) =>
      paints.every(({ paint }) => isLaid(step, paint)),
    );
  };
  return new Set(army.filter(isDone));
}

/** Takes at most `count` figures of each entry, and leaves the rest for the next unit of the name. */
function takeOff(left: Map<string, number>, count: number): DoneByLog {
  const taken = new Map<string, number>();
  for (const [key, figures] of left) {
    taken.set(key, Math.min(figures, count));
    if (figures > count) left.set(key, figures - count);
    else left.delete(key);
  }
  return taken;
}
