// Checks: every paint that any sheet names. In: rows of pots, paints and offers. Out: a book of names, and one Paint each.
import type { Paint } from '../../model/sheets.js';
import type { PaintKind } from '../../model/words.js';
import { foldName } from './fold-name.js';
import type { NameBook } from './keep-names.js';
import type { RowIn, SheetOf } from './read-rows.js';
import { tellRepeat } from './tell-names.js';
import { whatIsKnown } from './what-is-known.js';

export type PaintSheet = SheetOf<'paints'>;
type PaintRow = RowIn<'paints'>;

/** A sheet that describes paints, as it is called in a problem. */
export interface Describing {
  readonly title: string;
  readonly sheet: PaintSheet;
}

/** A paint has one row in the paints sheet, however it is spelled. */
export function tellRepeatedPaints(sheet: PaintSheet, book: NameBook): void {
  const first = new Map<string, string>();
  for (const row of sheet.rows) {
    const name = row.paint === undefined ? undefined : book.find(row.paint);
    if (name !== undefined) tellRepeat(sheet, row, { key: 'paint', name, first });
  }
}

type Field = 'kind' | 'hex' | 'opacity' | 'density' | 'thin' | 'keepMl' | 'range';
const fields: readonly Field[] = ['kind', 'hex', 'opacity', 'density', 'thin', 'keepMl', 'range'];

interface Draft {
  readonly name: string;
  readonly given: Map<Field, { readonly value: unknown; readonly said: string }>;
  readonly alsoCalled: Map<string, string>;
}

/**
 * One Paint for each name in the book, as pots and paints describe it together. The first value counts; another one
 * is told as a contradiction. A kind given nowhere is a colour. Defaults are counted by paint, as those of the paints sheet.
 */
export function mergePaints(
  book: NameBook,
  describing: readonly Describing[],
  sheet: PaintSheet,
): ReadonlyMap<string, Paint> {
  const drafts = new Map<string, Draft>();
  for (const name of book.all()) drafts.set(name, { name, given: new Map(), alsoCalled: new Map() });
  for (const from of describing) {
    for (const row of from.sheet.rows) {
      const draft = row.paint === undefined ? undefined : drafts.get(book.find(row.paint) ?? '');
      if (draft !== undefined) mergeRow(draft, row, from);
    }
  }
  const paints = [...drafts.values()].map(paintOf);
  const blank = (field: Field): number =>
    [...drafts.values()].filter(({ given }) => !given.has(field)).length;
  for (const field of ['kind', 'density', 'thin', 'keepMl'] as const) sheet.useBlank(field, blank(field));
  return new Map(paints.map((paint) => [paint.paint, paint]));
}

function mergeRow(draft: Draft, row: PaintRow, { title, sheet }: Describing): void {
  for (const field of fields) {
    const value = row[field];
    if (value === undefined) continue;
    const before = draft.given.get(field);
    if (before === undefined) {
      draft.given.set(field, { value, said: `"${sheet.text(row, field)}" in ${placeOf(sheet, row, title)}` });
    } else if (comparable(before.value) !== comparable(value)) {
      sheet.blame('paint-contradiction', row, field, { expected: before.said });
    }
  }
  for (const name of row.alsoCalled ?? []) {
    if (foldName(name) !== foldName(draft.name)) draft.alsoCalled.set(foldName(name), name);
  }
}

/** `row 5 of the pots sheet`; of several tables that which holds it. */
const placeOf = (sheet: PaintSheet, row: PaintRow, title: string): string =>
  sheet.parts.length === 1 ? `${sheet.rowName(row)} of ${title}` : sheet.rowName(row);

const comparable = (value: unknown): unknown => (typeof value === 'string' ? foldName(value) : value);

function paintOf({ name, given, alsoCalled }: Draft): Paint {
  const value = <T>(field: Field): T | undefined => given.get(field)?.value as T | undefined;
  return {
    paint: name,
    kind: value<PaintKind>('kind') ?? 'colour',
    ...whatIsKnown({
      hex: value<string>('hex'),
      opacity: value<Paint['opacity'] & string>('opacity'),
      densityGPerMl: value<number>('density'),
      thin: value<number>('thin'),
      keepMl: value<number>('keepMl'),
    }),
    alsoCalled: [...alsoCalled.values()],
  };
}
