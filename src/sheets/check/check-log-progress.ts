// Checks: the progress that the log tells. In: its rows, the schemes. Out: the rows that tell some, or would; those that tell
// none, or too much, are told.
import type { CheckedSchemes } from './check-schemes.js';
import { hasErrors } from './collect-findings.js';
import { joinOr } from './find-nearest.js';
import type { LogEntry } from './log-entries.js';
import { holdsAt, type SwapEntry } from './open-swaps.js';

interface Given {
  readonly schemes: CheckedSchemes;
  /** Undefined where they could not be read: then any paint may be one of its step. */
  readonly swaps: readonly SwapEntry[] | undefined;
}

const together = ['unit', 'step', 'figures'] as const;

/**
 * Unit, step and figures belong together, the step uses the paint, and no unit has more figures painted than it has. Gives
 * the rows that count as progress, and those that would but for an error told elsewhere.
 */
export function checkLogProgress(entries: readonly LogEntry[], given: Given): ReadonlySet<LogEntry> {
  const { schemes } = given;
  const isSpoilt = hasErrors(schemes.sheet.findings, 'schemes');
  const painted = new Map<string, number>();
  const progress = new Set<LogEntry>();
  for (const entry of entries) {
    if (!isTogether(entry)) continue;
    if (!isSpoilt && !usesPaint(entry, given)) continue;
    progress.add(entry);
    countFigures(entry, painted);
  }
  return progress;
}

/** A unit alone is a note of what the paint was for; a step or figures without the rest are half of a story. */
function isTogether({ sheet, row }: LogEntry): boolean {
  if (together.some((key) => row.bad.includes(key))) return true;
  const given = together.filter((key) => row[key] !== undefined);
  const missing = together.filter((key) => row[key] === undefined);
  const [first] = missing;
  if (first === undefined) return true;
  if (given.some((key) => key !== 'unit'))
    sheet.blame('log-no-progress', row, first, {
      found: given.join(' and '),
      expected: missing.join(' and '),
    });
  return false;
}

/** False where the step does not lay the paint, which is told. */
function usesPaint({ sheet, row, paint, unit }: LogEntry, { schemes, swaps }: Given): boolean {
  const at = { scheme: unit?.scheme ?? '', step: row.step ?? 0 };
  const steps = schemes.schemes.get(at.scheme)?.steps.filter(({ step }) => step === row.step) ?? [];
  if (steps.length === 0 || paint === undefined || swaps === undefined) return true;
  const own = steps.flatMap((step) => step.paints.map((one) => one.paint));
  const instead = swaps.filter((swap) => holdsAt(swap, at)).map((swap) => swap.instead);
  if (instead.includes(paint)) return true;
  const paints = [...new Set(own)];
  if (paints.includes(paint)) return true;
  sheet.blame('log-other-paint', row, 'paint', { expected: joinOr(paints) });
  return false;
}

/** Each step, paint and unit is told once, at the row that goes over the unit. */
function countFigures({ sheet, row, paint, unit }: LogEntry, painted: Map<string, number>): void {
  if (paint === undefined || unit === undefined || row.step === undefined) return;
  const key = `${unit.unit}\n${row.step}\n${paint}`;
  const before = painted.get(key) ?? 0;
  const now = before + (row.figures ?? 0);
  painted.set(key, now);
  if (before <= unit.count && now > unit.count)
    sheet.blame('log-over-unit', row, 'figures', { found: String(now), expected: String(unit.count) });
}
