// Checks: rows of the log. In: nothing. Out: their types: a row with the paint and unit that it names.
import type { Unit } from '../../model/sheets.js';
import type { RowIn, SheetOf } from './read-rows.js';

export type LogSheet = SheetOf<'log'>;

/** A row of the log, and what its names mean; undefined where they mean nothing, which is told elsewhere. */
export interface LogEntry {
  readonly sheet: LogSheet;
  readonly row: RowIn<'log'>;
  readonly paint: string | undefined;
  readonly unit: Unit | undefined;
}
