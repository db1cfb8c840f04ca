// Checks: paints that may be another one misspelt. In: every row that names a paint. Out: a warning at the first row of
// each paint that one sheet alone names, that no scheme uses, and that is a slip away from one that a scheme uses.
import type { OfferSheet } from './check-offers.js';
import type { PaintSheet } from './check-paints.js';
import type { PotSheet } from './check-pots.js';
import { isSlip, joinOr } from './find-nearest.js';
import { foldName } from './fold-name.js';
import type { NameBook } from './keep-names.js';
import type { RowBase } from './open-sheet.js';
import type { SwapEntry } from './open-swaps.js';
import type { SheetOf } from './read-rows.js';

/** Comparisons in one run; a shelf that asks for more has too many names for one slip to stand out. */
const mostComparisons = 3_000_000;

type NamingSheet = PotSheet | PaintSheet | OfferSheet;

interface Given {
  readonly book: NameBook;
  readonly schemes: SheetOf<'schemes'>;
  readonly swaps: readonly SwapEntry[];
  readonly pots: PotSheet;
  readonly paints: PaintSheet;
  readonly offers: OfferSheet;
}

/**
 * A paint of its own that is alike by chance is told by a second sheet that names it. The sheets of paints and offers
 * may list what a maker sells, so there a paint is questioned only if the one that may be meant is not there itself.
 */
export function questionPaints({ book, schemes, swaps, pots, paints, offers }: Given): void {
  const used = new Set([...paintsOf(schemes, book), ...swaps.map(({ instead }) => instead)]);
  const named = [pots, paints, offers].map((sheet) => ({ sheet, rows: firstRows(sheet, book) }));
  let comparisons = 0;
  for (const { sheet, rows } of named) {
    const likely = [...used].filter((paint) => sheet === pots || !rows.has(paint)).map(comparable);
    for (const [paint, row] of rows) {
      const isElsewhere = named.some((other) => other.sheet !== sheet && other.rows.has(paint));
      if (used.has(paint) || isElsewhere) continue;
      comparisons += likely.length;
      if (comparisons > mostComparisons) return;
      tellSlip({ sheet, row, paint }, likely);
    }
  }
}

function tellSlip(
  { sheet, row, paint }: { readonly sheet: NamingSheet; readonly row: RowBase; readonly paint: string },
  likely: readonly Comparable[],
): void {
  const own = comparable(paint);
  const meant = likely.filter(({ key, digits }) => digits === own.digits && isSlip(own.key, key));
  if (meant.length === 0) return;
  const expected = joinOr(meant.slice(0, 3).map(({ paint: name }) => name));
  blamePaint(sheet, row, { found: paint, expected });
}

interface Comparable {
  readonly paint: string;
  readonly key: string;
  /** Paints of a numbered series are no slips of each other. */
  readonly digits: string;
}

const comparable = (paint: string): Comparable => ({
  paint,
  key: foldName(paint),
  digits: paint.replace(/\D+/g, ' ').trim(),
});

function paintsOf({ rows }: SheetOf<'schemes'>, book: NameBook): ReadonlySet<string> {
  return new Set(rows.flatMap(({ paint }) => (paint === undefined ? [] : (book.find(paint) ?? []))));
}

function firstRows({ rows }: NamingSheet, book: NameBook): ReadonlyMap<string, RowBase> {
  const first = new Map<string, RowBase>();
  for (const row of rows) {
    const paint = row.paint === undefined ? undefined : book.find(row.paint);
    if (paint !== undefined && !first.has(paint)) first.set(paint, row);
  }
  return first;
}

const blamePaint = (
  sheet: NamingSheet,
  row: RowBase,
  details: { readonly found: string; readonly expected: string },
): void => sheet.blame('paint-maybe-misspelt', row, 'paint', details);
