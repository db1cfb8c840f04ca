// Checks: the pots sheet. In: its rows, the paints. Out: pots; readings that cannot be are told.

import type { IsoDate, Paint, Pot, Reading } from '../../model/sheets.js';
import { mostRows } from '../most-rows.js';
import { expandPots, type RowOfPots } from './expand-pots.js';
import type { NameBook } from './keep-names.js';
import { pickContainer } from './pick-container.js';
import { rightCheckDigit } from './read-cell/read-code.js';
import type { OneReading } from './read-cell/read-left.js';
import { heaviestPaint } from './read-cell/read-number.js';
import type { RowIn, SheetOf } from './read-rows.js';
import { whatIsKnown } from './what-is-known.js';

export type PotSheet = SheetOf<'pots'>;
type Row = RowIn<'pots'>;

/** A row and the pots that it says. */
interface Said extends RowOfPots {
  readonly row: Row;
}

interface Beside {
  readonly book: NameBook;
  readonly paints: ReadonlyMap<string, Paint>;
  readonly day: IsoDate;
}

/** A pot, and its row. */
export interface OwnedPot {
  readonly pot: Pot;
  readonly row: Row;
}

/** Pots whose row can be taken, one for each of those alike; what a row says against itself is told. */
export function checkPots(sheet: PotSheet, beside: Beside): readonly OwnedPot[] {
  let sum = 0;
  const owned = sheet.rows.flatMap((row) => {
    const said = expandPots(sheet, row);
    checkRow(sheet, { row, ...said }, beside.day);
    const isFirstOver = sum <= mostRows && sum + said.lefts.length > mostRows;
    sum += said.lefts.length;
    if (isFirstOver) sheet.blame('too-many-in-all', row, 'count', { expected: `${mostRows} pots` });
    return sum > mostRows ? [] : potsOf({ row, ...said }, beside);
  });
  sheet.useBlank('price', sheet.rows.filter(({ price }) => price === 'gift').length);
  return owned;
}

function checkRow(sheet: PotSheet, said: Said, day: IsoDate): void {
  const { row } = said;
  const right = row.code === undefined ? undefined : rightCheckDigit(row.code);
  if (right !== undefined) sheet.blame('wrong-check-digit', row, 'code', { expected: String(right) });
  for (const key of ['opened', 'counted'] as const) {
    const date = row[key];
    if (date !== undefined && date > day) sheet.blame('date-ahead', row, key, { expected: day });
  }
  if (row.ordered === true && !said.lefts.every(isFull)) sheet.blame('left-of-ordered', row, 'left');
  checkReading(sheet, said);
}

const isFull = (left: OneReading | undefined): boolean =>
  left === undefined || (left.how === 'by eye' && left.share === 1);

/** Of several pots none is weighed. */
function checkReading(sheet: PotSheet, { row, sizeMl, lefts }: Said): void {
  const [left] = lefts;
  const isOver = (one: OneReading | undefined): boolean =>
    one?.how === 'in ml' && sizeMl !== undefined && one.ml > sizeMl;
  if (lefts.some(isOver)) sheet.blame('left-over-size', row, 'left', { expected: `${sizeMl} ml` });
  if (left?.how !== 'in g') return;
  const { emptyG } = row;
  if (emptyG === undefined) {
    if (!row.bad.includes('emptyG')) sheet.blame('empty-missing', row, 'emptyG');
  } else if (left.grams < emptyG) {
    sheet.blame('below-empty', row, 'left', { expected: `${emptyG} g` });
  } else if (sizeMl !== undefined && left.grams > emptyG + sizeMl * heaviestPaint) {
    sheet.blame('heavier-than-full', row, 'left', { expected: `${emptyG + sizeMl * heaviestPaint} g` });
  }
}

function readingOf(left: OneReading | undefined, { emptyG }: Row): Reading | undefined {
  if (left === undefined) return { how: 'by eye', share: 1 };
  if (left.how !== 'in g') return left;
  return emptyG === undefined ? undefined : { how: 'weighed', grams: left.grams, emptyGrams: emptyG };
}

function potsOf({ row, sizeMl, lefts }: Said, { book, paints }: Beside): readonly OwnedPot[] {
  const paint = row.paint === undefined ? undefined : book.find(row.paint);
  const { ordered } = row;
  if (paint === undefined || sizeMl === undefined || ordered === undefined) return [];
  const container = row.container ?? pickContainer(sizeMl, paints.get(paint)?.kind);
  return lefts.flatMap((written) => {
    const left = readingOf(written, row);
    const leftGiven = written !== undefined;
    return left === undefined
      ? []
      : [
          {
            pot: { row: row.row, paint, sizeMl, container, left, leftGiven, ordered, ...saidBeside(row) },
            row,
          },
        ];
  });
}

function saidBeside({ price, opened: openedOn, counted: countedOn, code, place }: Row): Partial<Pot> {
  const priceMinor = price === 'gift' ? undefined : price;
  return whatIsKnown({ priceMinor, openedOn, countedOn, code, place });
}
