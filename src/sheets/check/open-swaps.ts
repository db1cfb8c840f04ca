// Checks: the columns of the swaps sheet. In: its table. Out: rows of values, and each with what its names mean.
import type { Table } from '../table.js';
import type { Findings } from './collect-findings.js';
import { column, type RowOf } from './open-sheet.js';
import { questionSwapColumns } from './question-swap-columns.js';
import { stepNumber } from './read-cell/read-count.js';
import { nameKind } from './read-cell/read-name.js';
import { type ReadSheet, readRows } from './read-rows.js';

const swapsSchema = {
  scheme: column('scheme', nameKind),
  step: column('step', stepNumber),
  paint: column('paint', nameKind),
  instead: column('instead', nameKind),
};

export type SwapSheet = ReadSheet<typeof swapsSchema>;
export type SwapRow = RowOf<typeof swapsSchema>;

/** A row whose names are all known: the swap as the model has it, and where it stands. */
export interface SwapEntry {
  readonly row: SwapRow;
  readonly scheme: string | undefined;
  readonly step: number | undefined;
  readonly paint: string | undefined;
  readonly instead: string;
}

/** The cells of the swaps sheet. */
export function openSwaps(table: Table | undefined, findings: Findings): SwapSheet {
  if (table !== undefined) questionSwapColumns(table, findings);
  return readRows('swaps', swapsSchema, { table, findings });
}

/** What a swap may hold for: a step of a scheme. */
interface Place {
  readonly scheme: string;
  readonly step: number;
}

/** Whether the row holds for a step of a scheme, whatever the paint. */
export function holdsAt({ scheme, step }: SwapEntry, at: Place): boolean {
  return (scheme === undefined || scheme === at.scheme) && (step === undefined || step === at.step);
}
