// Checks: the swaps sheet. In: its rows, books of paints and schemes. Out: the painter's swaps; slips are told.
import type { Paint, Swap } from '../../model/sheets.js';
import { stepsInWords } from './check-army.js';
import type { CheckedSchemes } from './check-schemes.js';
import { checkSwapsTogether } from './check-swaps-together.js';
import type { NameBook } from './keep-names.js';
import type { SwapEntry, SwapRow, SwapSheet } from './open-swaps.js';
import { findKnown } from './tell-names.js';
import { whatIsKnown } from './what-is-known.js';

interface Given {
  /** Undefined where paints cannot be looked up. */
  readonly paints: NameBook | undefined;
  readonly paintOf: ReadonlyMap<string, Paint>;
  readonly schemes: CheckedSchemes;
}

export interface CheckedSwaps {
  readonly sheet: SwapSheet;
  readonly entries: readonly SwapEntry[];
  readonly swaps: readonly Swap[];
}

/** Rows of the sheet: each is held against all others and against every step. */
const mostSwaps = 1000;

/** Swaps whose row can be taken, in row order. Undefined where there are too many rows, of which the first too many is told. */
export function checkSwaps(sheet: SwapSheet, given: Given): CheckedSwaps | undefined {
  const tooMany = sheet.rows[mostSwaps];
  if (tooMany !== undefined) {
    sheet.blame('too-many-swaps', tooMany, 'instead', {
      found: String(mostSwaps + 1),
      expected: String(mostSwaps),
    });
    return undefined;
  }
  const entries = sheet.rows.flatMap((row) => entryOf(sheet, row, given) ?? []);
  checkSwapsTogether(sheet, entries, given);
  return { sheet, entries, swaps: entries.map(swapOf) };
}

/** Undefined where a cell that it needs is not known or the row swaps nothing; both are told. */
function entryOf(sheet: SwapSheet, row: SwapRow, { paints, schemes }: Given): SwapEntry | undefined {
  const paint = findPaint(sheet, row, 'paint', paints);
  const instead = findPaint(sheet, row, 'instead', paints);
  const scheme = findScheme(sheet, row, schemes);
  if (row.paint === undefined && row.step === undefined) {
    if (!row.bad.includes('paint') && !row.bad.includes('step')) sheet.blame('swap-of-nothing', row, 'paint');
    return undefined;
  }
  const isKnown = (written: string | undefined, name: string | undefined) =>
    (written === undefined) === (name === undefined);
  if (instead === undefined || !isKnown(row.paint, paint) || !isKnown(row.scheme, scheme)) return undefined;
  if (paint === instead) {
    sheet.blame('swap-for-itself', row, 'instead');
    return undefined;
  }
  return { row, scheme, step: row.step, paint, instead };
}

function findPaint(
  sheet: SwapSheet,
  row: SwapRow,
  key: 'paint' | 'instead',
  paints: NameBook | undefined,
): string | undefined {
  return findKnown(sheet, row, { key, name: row[key], book: paints, code: 'unknown-paint' });
}

function findScheme(sheet: SwapSheet, row: SwapRow, { book, steps }: CheckedSchemes): string | undefined {
  const scheme = findKnown(sheet, row, { key: 'scheme', name: row.scheme, book, code: 'unknown-scheme' });
  const numbers = scheme === undefined ? undefined : steps.get(scheme);
  if (row.step !== undefined && numbers !== undefined && !numbers.has(row.step))
    sheet.blame('unknown-step', row, 'step', { expected: stepsInWords(numbers) });
  return scheme;
}

const swapOf = ({ row, scheme, step, paint, instead }: SwapEntry): Swap => ({
  row: row.row,
  ...whatIsKnown({ scheme, step, paint }),
  instead,
});
