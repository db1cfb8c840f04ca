// Checks: the pots sheet. In: its rows, the paints. Out: pots; readings that cannot be are told.
import type { IsoDate, Paint, Pot, Reading } from '../../model/sheets.js';
import type { NameBook } from './keep-names.js';
import { pickContainer } from './pick-container.js';
import { rightCheckDigit } from './read-cell/read-code.js';
import type { RowIn, SheetOf } from './read-rows.js';

/** Grams a millilitre that no paint exceeds. */
const heaviestPaint = 3;

export type PotSheet = SheetOf<'pots'>;
type Row = RowIn<'pots'>;

interface Beside {
  readonly book: NameBook;
  readonly paints: ReadonlyMap<string, Paint>;
  readonly day: IsoDate;
}

/** A pot, and what its row says beside. */
export interface OwnedPot {
  readonly pot: Pot;
  readonly emptyG: number | undefined;
}

/** Pots of all rows together, which the memory has to hold. */
const mostPots = 100_000;

/** Pots whose row can be taken, one for each of those alike; what a row says against itself is told. */
export function checkPots(sheet: PotSheet, beside: Beside): readonly OwnedPot[] {
  let sum = 0;
  return sheet.rows.flatMap((row) => {
    checkRow(sheet, row, beside.day);
    const { count = 0, emptyG } = row;
    const isFirstOver = sum <= mostPots && sum + count > mostPots;
    sum += count;
    if (isFirstOver) sheet.blame('too-many-in-all', row, 'count', { expected: `${mostPots} pots` });
    const pot = sum > mostPots ? undefined : potOf(row, beside);
    return pot === undefined ? [] : Array.from({ length: count }, () => ({ pot: { ...pot }, emptyG }));
  });
}

function checkRow(sheet: PotSheet, row: Row, day: IsoDate): void {
  const right = row.code === undefined ? undefined : rightCheckDigit(row.code);
  if (right !== undefined) sheet.blame('wrong-check-digit', row, 'code', { expected: String(right) });
  for (const key of ['opened', 'counted'] as const) {
    const date = row[key];
    if (date !== undefined && date > day) sheet.blame('date-ahead', row, key, { expected: day });
  }
  checkReading(sheet, row);
}

function checkReading(sheet: PotSheet, row: Row): void {
  const { left, sizeMl, emptyG } = row;
  const isFull = left === undefined || (left.how === 'by eye' && left.share === 1);
  if (row.ordered === true && !isFull) sheet.blame('left-of-ordered', row, 'left');
  if (left?.how === 'in ml' && sizeMl !== undefined && left.ml > sizeMl) {
    sheet.blame('left-over-size', row, 'left', { expected: `${sizeMl} ml` });
  }
  if (left?.how !== 'in g') return;
  if (emptyG === undefined) {
    if (!row.bad.includes('emptyG')) sheet.blame('empty-missing', row, 'emptyG');
  } else if (left.grams < emptyG) {
    sheet.blame('below-empty', row, 'left', { expected: `${emptyG} g` });
  } else if (sizeMl !== undefined && left.grams > emptyG + sizeMl * heaviestPaint) {
    sheet.blame('heavier-than-full', row, 'left', { expected: `${emptyG + sizeMl * heaviestPaint} g` });
  }
}

function readingOf({ left, emptyG }: Row): Reading | undefined {
  if (left === undefined) return { how: 'by eye', share: 1 };
  if (left.how !== 'in g') return left;
  return emptyG === undefined ? undefined : { how: 'weighed', grams: left.grams, emptyGrams: emptyG };
}

function potOf(row: Row, { book, paints }: Beside): Pot | undefined {
  const { sizeMl, price, opened, counted, ordered, code, place } = row;
  const left = readingOf(row);
  const paint = row.paint === undefined ? undefined : book.find(row.paint);
  if (paint === undefined || sizeMl === undefined || left === undefined || ordered === undefined)
    return undefined;
  return {
    row: row.row,
    paint,
    sizeMl,
    left,
    leftGiven: row.left !== undefined,
    container: row.container ?? pickContainer(sizeMl, paints.get(paint)?.kind),
    ...(price === undefined ? {} : { priceMinor: price }),
    ...(opened === undefined ? {} : { openedOn: opened }),
    ...(counted === undefined ? {} : { countedOn: counted }),
    ordered,
    ...(code === undefined ? {} : { code }),
    ...(place === undefined ? {} : { place }),
  };
}
