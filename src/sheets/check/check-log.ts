// Checks: the log sheet. In: its rows, paints and units. Out: log rows, validated; nothing is reckoned with them here.
import type { IsoDate, LogRow, Unit } from '../../model/sheets.js';
import { problem } from '../../problems/catalogue.js';
import type { Table } from '../table.js';
import { type CheckedArmy, stepsInWords } from './check-army.js';
import type { CheckedSchemes } from './check-schemes.js';
import type { Findings } from './collect-findings.js';
import { foldName } from './fold-name.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { column, type RowOf } from './open-sheet.js';
import { figureCount, stepNumber } from './read-cell/read-count.js';
import { dateKind } from './read-cell/read-date.js';
import { nameKind } from './read-cell/read-name.js';
import { scaleWeight, usedVolume } from './read-cell/read-number.js';
import { type ReadSheet, readRows } from './read-rows.js';

const logSchema = {
  date: column('date', dateKind),
  paint: column('paint', nameKind),
  unit: column('unit', nameKind),
  step: column('step', stepNumber),
  figures: column('figures', figureCount),
  beforeG: column('before g', scaleWeight),
  afterG: column('after g', scaleWeight),
  usedMl: column('used ml', usedVolume),
};

type LogSheet = ReadSheet<typeof logSchema>;
type Row = RowOf<typeof logSchema>;

/** The cells of the log sheet. */
export function openLog(table: Table | undefined, findings: Findings): LogSheet {
  return readRows('log', logSchema, { table, findings });
}

interface Given {
  /** Undefined where paints cannot be looked up. */
  readonly paints: NameBook | undefined;
  readonly army: CheckedArmy;
  readonly schemes: CheckedSchemes;
  readonly day: IsoDate;
}

interface Beside extends Given {
  /** By the key of their names. */
  readonly units: ReadonlyMap<string, Unit>;
  readonly nearUnit: (written: string) => string;
}

/** Log rows that can be taken. */
export function checkLog(sheet: LogSheet, given: Given): readonly LogRow[] {
  if (sheet.rows.length === 0) return [];
  tellNotReckoned(sheet);
  const book = makeNameBook();
  for (const { unit } of given.army.units) book.add(unit);
  const units = new Map(given.army.units.map((unit) => [foldName(unit.unit), unit]));
  const beside = { ...given, units, nearUnit: book.nearest };
  return sheet.rows.flatMap((row) => {
    checkNames(sheet, row, beside);
    checkAmounts(sheet, row);
    return logRowOf(row, beside) ?? [];
  });
}

/** Nobody should think that the log keeps the shelf up to date. */
function tellNotReckoned({ table, findings, rows }: LogSheet): void {
  if (table === undefined) return;
  const found = rows.length === 1 ? '1 row lowers' : `${rows.length} rows lower`;
  findings.problems.push(problem('log-not-reckoned', { file: table.file, sheet: table.sheet }, { found }));
}

function checkNames(
  sheet: LogSheet,
  row: Row,
  { paints, army, schemes, day, units, nearUnit }: Beside,
): void {
  if (row.date !== undefined && row.date > day) sheet.blame('date-ahead', row, 'date', { expected: day });
  if (row.paint !== undefined && paints !== undefined && paints.find(row.paint) === undefined) {
    sheet.blame('unknown-paint', row, 'paint', { expected: paints.nearest(row.paint) });
  }
  if (row.unit === undefined || army.rowOf === undefined) return;
  const key = foldName(row.unit);
  if (!army.rowOf.has(key)) sheet.blame('unknown-unit', row, 'unit', { expected: nearUnit(row.unit) });
  const steps = schemes.steps.get(units.get(key)?.scheme ?? '');
  if (row.step !== undefined && steps !== undefined && !steps.has(row.step)) {
    sheet.blame('unknown-step', row, 'step', { expected: stepsInWords(steps) });
  }
}

/** A weight may not rise, and a row should say how much it is about. */
function checkAmounts(sheet: LogSheet, row: Row): void {
  const { beforeG, afterG, usedMl } = row;
  if (beforeG !== undefined && afterG !== undefined) {
    if (afterG > beforeG) sheet.blame('log-gains', row, 'afterG', { expected: `${beforeG} g` });
    return;
  }
  if (usedMl !== undefined || ['beforeG', 'afterG', 'usedMl'].some((key) => row.bad.includes(key))) return;
  if (beforeG !== undefined) sheet.blame('log-half-weighed', row, 'afterG');
  else if (afterG !== undefined) sheet.blame('log-half-weighed', row, 'beforeG');
  else sheet.blame('log-without-amount', row, 'usedMl');
}

function logRowOf(row: Row, { paints, units }: Beside): LogRow | undefined {
  const { date, step, figures, beforeG, afterG, usedMl } = row;
  const paint = row.paint === undefined ? undefined : paints?.find(row.paint);
  const unit = row.unit === undefined ? undefined : units.get(foldName(row.unit))?.unit;
  if (date === undefined || paint === undefined) return undefined;
  return {
    row: row.row,
    date,
    paint,
    ...(unit === undefined ? {} : { unit }),
    ...(step === undefined ? {} : { step }),
    ...(figures === undefined ? {} : { figures }),
    ...(beforeG === undefined ? {} : { beforeG }),
    ...(afterG === undefined ? {} : { afterG }),
    ...(usedMl === undefined ? {} : { usedMl }),
  };
}
