// Checks: offers that price a whole range. In: rows of offers, the sheets that say of which range a paint is. Out: the same
// sheet with a row for each paint of such a range; what says two things or an unknown range is told.
import type { OfferSheet } from './check-offers.js';
import type { Describing } from './check-paints.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import type { RowIn } from './read-rows.js';

type Row = RowIn<'offers'>;

interface Given {
  readonly describing: readonly Describing[];
  readonly book: NameBook;
  /** False where a sheet that could say it could not be read. */
  readonly areRangesKnown: boolean;
}

interface Ranges {
  readonly book: NameBook;
  /** By the name of the range, its paints in the order of their first rows. */
  readonly paints: ReadonlyMap<string, ReadonlySet<string>>;
}

/** Offers that ranges may come to: as many as a sheet may have rows. */
const mostExpanded = 100_000;

/**
 * Each paint of a range is an offer of its own, called as the row says, a comma and the paint; it bears the row that it comes
 * from. A row that cannot be taken stays as it is, and prices nothing.
 */
export function expandRanges(sheet: OfferSheet, { describing, book, areRangesKnown }: Given): OfferSheet {
  if (sheet.rows.every(({ range }) => range === undefined)) return sheet;
  const ranges = listRanges(describing, book);
  let count = 0;
  const rows = sheet.rows.flatMap((row): readonly Row[] => {
    const paints = row.range === undefined ? undefined : paintsOf(sheet, row, { ranges, areRangesKnown });
    if (paints === undefined) return [row];
    const isFirstOver = count <= mostExpanded && count + paints.size > mostExpanded;
    count += paints.size;
    if (isFirstOver) sheet.blame('too-many-in-all', row, 'range', { expected: `${mostExpanded} offers` });
    return count > mostExpanded ? [row] : [...paints].map((paint) => ofPaint(row, paint));
  });
  return { ...sheet, rows };
}

/** Undefined where the row says too much or its range is not known; both are told. */
function paintsOf(
  sheet: OfferSheet,
  row: Row,
  { ranges, areRangesKnown }: Pick<Given, 'areRangesKnown'> & { readonly ranges: Ranges },
): ReadonlySet<string> | undefined {
  const { range = '' } = row;
  // A paint or a bar code is of one paint.
  const one = (['paint', 'code'] as const).find((key) => row[key] !== undefined);
  if (one !== undefined) {
    sheet.blame('range-and-paint', row, one, { expected: range });
    return undefined;
  }
  const paints = ranges.paints.get(ranges.book.find(range) ?? '');
  if (paints === undefined && areRangesKnown)
    sheet.blame('unknown-range', row, 'range', { expected: ranges.book.nearest(range) });
  return paints;
}

const ofPaint = ({ offer, ...row }: Row, paint: string): Row => ({
  ...row,
  paint,
  offer: offer === undefined ? undefined : `${offer}, ${paint}`,
});

/** A paint said to be of two ranges is told where paints are merged, and is of the first. */
function listRanges(describing: readonly Describing[], paintBook: NameBook): Ranges {
  const book = makeNameBook();
  const paints = new Map<string, Set<string>>();
  const seen = new Set<string>();
  for (const { paint, range } of describing.flatMap(({ sheet }) => sheet.rows)) {
    const name = paint === undefined ? undefined : paintBook.find(paint);
    if (range === undefined || name === undefined || seen.has(name)) continue;
    seen.add(name);
    const known = book.add(range);
    const ofRange = paints.get(known) ?? new Set();
    paints.set(known, ofRange.add(name));
  }
  return { book, paints };
}
