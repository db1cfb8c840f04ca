// Checks: the log. In: the rows of the sheet and of a log.csv beside a workbook, paints, units, pots. Out: log rows.
import type { IsoDate, LogRow, Unit } from '../../model/sheets.js';
import { unguardFormula } from '../append/guard-formula.js';
import { type CheckedArmy, stepsInWords } from './check-army.js';
import { checkLogAmounts } from './check-log-amounts.js';
import { checkLogProgress } from './check-log-progress.js';
import type { CheckedSchemes } from './check-schemes.js';
import { foldName } from './fold-name.js';
import type { Shelf } from './gather-shelf.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import type { LogEntry, LogSheet } from './open-log.js';
import type { SwapEntry } from './open-swaps.js';
import { tellLogRepeats } from './tell-log-repeats.js';

interface Given {
  /** Undefined where paints cannot be looked up. */
  readonly paints: NameBook | undefined;
  readonly army: CheckedArmy;
  readonly schemes: CheckedSchemes;
  /** A paint used instead is one of its step. Undefined where they could not be read. */
  readonly swaps: readonly SwapEntry[] | undefined;
  readonly shelf: Shelf;
  readonly day: IsoDate;
}

interface Beside extends Given {
  /** By the key of their names. */
  readonly units: ReadonlyMap<string, Unit>;
  readonly nearUnit: (written: string) => string;
}

/** Log rows that can be taken, those of the first sheet first. */
export function checkLog(sheets: readonly LogSheet[], given: Given): readonly LogRow[] {
  if (sheets.every(({ rows }) => rows.length === 0)) return [];
  const book = makeNameBook();
  for (const { unit } of given.army.units) book.add(unit);
  const units = new Map(given.army.units.map((unit) => [foldName(unit.unit), unit]));
  const beside = { ...given, units, nearUnit: book.nearest };
  const entries = sheets.flatMap((sheet) => sheet.rows.map((row) => entryOf(sheet, row, beside)));
  for (const entry of entries) checkNames(entry, beside);
  const progress = checkLogProgress(entries, given);
  checkLogAmounts(entries, { ...given, progress });
  tellLogRepeats(entries);
  return entries.flatMap((entry) => logRowOf(entry) ?? []);
}

/** A name that begins like a formula is written with an apostrophe in front, so that no spreadsheet runs it. */
function entryOf(sheet: LogSheet, row: LogEntry['row'], { paints, units }: Beside): LogEntry {
  const unguarded = (name: string | undefined): string =>
    name === undefined ? '' : foldName(unguardFormula(name));
  return {
    sheet,
    row,
    paint: paints?.find(row.paint ?? '') ?? paints?.find(unguarded(row.paint)),
    unit: units.get(foldName(row.unit ?? '')) ?? units.get(unguarded(row.unit)),
  };
}

function checkNames(
  { sheet, row, paint, unit }: LogEntry,
  { paints, army, schemes, day, nearUnit }: Beside,
): void {
  if (row.date !== undefined && row.date > day) sheet.blame('date-ahead', row, 'date', { expected: day });
  if (row.paint !== undefined && paints !== undefined && paint === undefined) {
    sheet.blame('unknown-paint', row, 'paint', { expected: paints.nearest(row.paint) });
  }
  if (row.unit === undefined || army.rowOf === undefined) return;
  const isThere = [row.unit, unguardFormula(row.unit)].some((name) => army.rowOf?.has(foldName(name)));
  if (!isThere) sheet.blame('unknown-unit', row, 'unit', { expected: nearUnit(row.unit) });
  const steps = schemes.steps.get(unit?.scheme ?? '');
  if (row.step !== undefined && steps !== undefined && !steps.has(row.step)) {
    sheet.blame('unknown-step', row, 'step', { expected: stepsInWords(steps) });
  }
}

function logRowOf({ sheet, row, paint, unit }: LogEntry): LogRow | undefined {
  const { date, step, figures, beforeG, afterG, usedMl } = row;
  if (date === undefined || paint === undefined) return undefined;
  return {
    row: row.row,
    ...(sheet.table === undefined ? {} : { file: sheet.table.file }),
    date,
    paint,
    ...(unit === undefined ? {} : { unit: unit.unit }),
    ...(step === undefined ? {} : { step }),
    ...(figures === undefined ? {} : { figures }),
    ...(beforeG === undefined ? {} : { beforeG }),
    ...(afterG === undefined ? {} : { afterG }),
    ...(usedMl === undefined ? {} : { usedMl }),
  };
}
