// Checks: the columns of the log. In: its table. Out: rows of values, and each with the paint and unit that it names.
import type { Unit } from '../../model/sheets.js';
import type { Table } from '../table.js';
import type { Findings } from './collect-findings.js';
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

export type LogSheet = ReadSheet<typeof logSchema>;
type LogCells = RowOf<typeof logSchema>;

/** A row of the log, and what its names mean; undefined where they mean nothing, which is told elsewhere. */
export interface LogEntry {
  readonly sheet: LogSheet;
  readonly row: LogCells;
  readonly paint: string | undefined;
  readonly unit: Unit | undefined;
}

/** The cells of a log. */
export function openLog(table: Table | undefined, findings: Findings): LogSheet {
  return readRows('log', logSchema, { table, findings });
}
