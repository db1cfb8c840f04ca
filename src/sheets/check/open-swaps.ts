// Checks: the columns of the swaps sheet. In: its table. Out: rows of values, and each with what its names mean.
import { type From, tablesOf } from './open-sheet.js';
import { questionSwapColumns } from './question-own-columns.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';

export type SwapSheet = SheetOf<'swaps'>;
export type SwapRow = RowIn<'swaps'>;

/** A row whose names are all known: the swap as the model has it, and where it stands. */
export interface SwapEntry {
  readonly row: SwapRow;
  readonly scheme: string | undefined;
  readonly step: number | undefined;
  readonly paint: string | undefined;
  readonly instead: string;
}

/** The cells of the swaps sheet. */
export function openSwaps(from: From): SwapSheet {
  for (const table of tablesOf(from)) questionSwapColumns(table, from.findings);
  return readRows('swaps', from);
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
