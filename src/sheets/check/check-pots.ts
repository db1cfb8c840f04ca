// Checks: the pots sheet. In: its rows, the paints. Out: pots; readings that cannot be are told.
import type { IsoDate, Paint, Pot, Reading } from '../../model/sheets.js';
import { containers } from '../../model/words.js';
import type { Table } from '../table.js';
import { paintColumns } from './check-paints.js';
import { type Findings, useDefault } from './collect-findings.js';
import type { NameBook } from './keep-names.js';
import { column, type RowOf } from './open-sheet.js';
import { pickContainer } from './pick-container.js';
import type { CellKind } from './read-cell/cell-kind.js';
import { choiceKind, yesKind } from './read-cell/read-choice.js';
import { codeKind, rightCheckDigit } from './read-cell/read-code.js';
import { dateKind } from './read-cell/read-date.js';
import { leftKind } from './read-cell/read-left.js';
import { nameKind } from './read-cell/read-name.js';
import { emptyWeight, potVolume } from './read-cell/read-number.js';
import { type ReadSheet, readRows } from './read-rows.js';

/** Grams a millilitre that no paint exceeds. */
const heaviestPaint = 3;

const potsSchema = (price: CellKind<number>) => ({
  paint: column('paint', nameKind),
  sizeMl: column('size ml', potVolume),
  left: column('left', leftKind, { meaning: 'full' }),
  emptyG: column('empty g', emptyWeight),
  price: column('price', price, { meaning: 'unpriced' }),
  opened: column('opened', dateKind, { meaning: 'not opened yet' }),
  counted: column('counted', dateKind),
  container: column('container', choiceKind('a container', containers)),
  ordered: column('ordered', yesKind, { blank: false, meaning: 'no: it stands on the shelf' }),
  code: column('code', codeKind),
  place: column('place', nameKind),
  ...paintColumns,
});

export type PotSheet = ReadSheet<ReturnType<typeof potsSchema>>;
type Row = RowOf<ReturnType<typeof potsSchema>>;

/** The cells of the pots sheet. */
export function openPots(table: Table | undefined, price: CellKind<number>, findings: Findings): PotSheet {
  return readRows('pots', potsSchema(price), { table, findings });
}

interface Beside {
  readonly book: NameBook;
  readonly paints: ReadonlyMap<string, Paint>;
  readonly day: IsoDate;
  readonly findings: Findings;
}

/** Pots whose row can be taken; what a row says against itself is told. */
export function checkPots(sheet: PotSheet, beside: Beside): readonly Pot[] {
  const pots = sheet.rows.flatMap((row) => {
    checkRow(sheet, row, beside.day);
    return potOf(row, beside) ?? [];
  });
  const used = (header: string, rows: number, meaning: string): void =>
    useDefault(beside.findings, { sheet: 'pots', column: header, rows, meaning });
  const unsaid = sheet.rows.filter((row) => row.container === undefined && !row.bad.includes('container'));
  used('container', unsaid.length, 'a can for a primer or varnish of 150 ml or more, else a pot');
  return pots;
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
  const { sizeMl, price, opened, counted, code, place } = row;
  const left = readingOf(row);
  const paint = row.paint === undefined ? undefined : book.find(row.paint);
  if (paint === undefined || sizeMl === undefined || left === undefined) return undefined;
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
    ordered: row.ordered ?? false,
    ...(code === undefined ? {} : { code }),
    ...(place === undefined ? {} : { place }),
  };
}
