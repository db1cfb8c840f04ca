// Checks: the rows of one mix. In: rows alike in scheme, step, zone and layer. Out: each row's share, and the Step they are.
import type { Step } from '../../model/sheets.js';
import type { SchemeRow, SchemeSheet } from './differ-scheme.js';
import type { NameBook } from './keep-names.js';
import { whatIsKnown } from './what-is-known.js';

/** Rounded percentages such as 33 + 33 + 33 are near enough to the whole; binary fractions add a hair to that. */
const percentOff = 1 + 1e-9;

/**
 * The shares of a mix, adding up to 1. Percentages must come to 100 (within 1, for thirds); plain numbers are
 * parts, 2 and 1 give two thirds and one. Anything else is told, and the shares are then of no use.
 */
export function checkMix(sheet: SchemeSheet, rows: readonly SchemeRow[]): readonly number[] {
  const [first, ...later] = rows;
  if (first === undefined) return [];
  for (const row of rows) {
    if (row.share === undefined && !row.bad.includes('share')) sheet.blame('share-missing', row, 'share');
  }
  for (const row of later) checkAgainstFirst(sheet, first, row);
  const told = rows.find(({ share }) => share !== undefined);
  const mixed = rows.filter(({ share }) => share !== undefined && share.how !== told?.share?.how);
  for (const row of mixed) {
    const expected = told === undefined ? '' : `"${sheet.text(told, 'share')}"`;
    sheet.blame('shares-of-two-kinds', row, 'share', { expected });
  }
  const values = rows.map(({ share }) => share?.value ?? 0);
  const sum = values.reduce((total, value) => total + value, 0);
  const isComplete = mixed.length === 0 && rows.every(({ share }) => share !== undefined);
  if (isComplete && told?.share?.how === 'percent' && Math.abs(sum - 100) > percentOff) {
    sheet.blame('shares-not-whole', first, 'share', { found: `${Number(sum.toFixed(2))}%` });
  }
  return values.map((value) => (sum > 0 ? value / sum : 0));
}

const once = ['coats', 'method', 'area', 'thin'] as const;

/** A later row may repeat what the first one says, or leave it blank. */
function checkAgainstFirst(sheet: SchemeSheet, first: SchemeRow, row: SchemeRow): void {
  for (const key of once) {
    if (row[key] === undefined || row[key] === first[key] || first.bad.includes(key)) continue;
    const said = sheet.text(first, key);
    sheet.blame('mix-contradiction', row, key, { expected: said === '' ? '' : `"${said}"` });
  }
}

interface Books {
  readonly paints: NameBook | undefined;
  readonly zones: NameBook | undefined;
}

/** The rows of a mix, or one row, as a Step; undefined where a needed cell could not be read. */
export function stepOf(
  rows: readonly SchemeRow[],
  shares: readonly number[],
  { paints, zones }: Books,
): Step | undefined {
  const [first] = rows;
  if (first?.step === undefined || first.zone === undefined || first.layer === undefined) return undefined;
  const { coats, method, area, thin } = first;
  return {
    row: first.row,
    step: first.step,
    zone: zones?.find(first.zone) ?? first.zone,
    layer: first.layer,
    ...whatIsKnown({ method, coats, areaShare: area, thin }),
    paints: rows.flatMap(({ paint }, index) =>
      paint === undefined ? [] : [{ paint: paints?.find(paint) ?? paint, share: shares[index] ?? 0 }],
    ),
  };
}
