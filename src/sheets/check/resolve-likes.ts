// Checks: schemes that begin like another. In: rows by scheme. Out: the rows of each as if it were written out; circles and
// beginnings that nobody knows are told.
import { differ, type SchemeRow, type SchemeSheet } from './differ-scheme.js';
import type { NameBook } from './keep-names.js';

export interface Books {
  /** The names of schemes. */
  readonly book: NameBook;
  /** Undefined where zones cannot be looked up. */
  readonly zones: NameBook | undefined;
}

/** A scheme as its rows have it. */
export interface Written {
  readonly scheme: string;
  readonly rows: readonly SchemeRow[];
  /** The row that says what it begins like. */
  readonly like: SchemeRow | undefined;
}

type Whole = Map<string, readonly SchemeRow[] | undefined>;

/** Rows that likenesses come to, which the memory has to hold. */
const mostRows = 100_000;

/** In the order of `written`; undefined for a scheme whose beginning is not known. */
export function resolveLikes(
  sheet: SchemeSheet,
  written: ReadonlyMap<string, Written>,
  books: Books,
): ReadonlyMap<string, readonly SchemeRow[] | undefined> {
  const whole: Whole = new Map();
  const known = { ...books, written, whole, room: { rows: mostRows } };
  for (const first of written.values())
    for (const one of wayToWhole(sheet, first, known).reverse())
      whole.set(one.scheme, fillIn(sheet, one, known));
  return new Map([...written.keys()].map((scheme) => [scheme, whole.get(scheme)]));
}

interface Known extends Books {
  readonly written: ReadonlyMap<string, Written>;
  readonly whole: Whole;
  readonly room: { rows: number };
}

/** From `first` by what each begins like to one that is whole, or has no beginning; a circle leads nowhere, and is told. */
function wayToWhole(sheet: SchemeSheet, first: Written, known: Known): Written[] {
  const way = new Map<string, Written>();
  let at: Written | undefined = first;
  while (at !== undefined && !known.whole.has(at.scheme)) {
    if (way.has(at.scheme)) {
      tellCircle(sheet, [...way.values()], at);
      for (const scheme of way.keys()) known.whole.set(scheme, undefined);
      return [];
    }
    way.set(at.scheme, at);
    at = beginningOf(sheet, at, known);
  }
  return [...way.values()];
}

function beginningOf(sheet: SchemeSheet, { like }: Written, { book, written }: Known): Written | undefined {
  if (like?.like === undefined) return undefined;
  const name = book.find(like.like);
  if (name === undefined) sheet.blame('unknown-scheme', like, 'like', { expected: book.nearest(like.like) });
  return written.get(name ?? '');
}

/** Told at the row that closes it. */
function tellCircle(sheet: SchemeSheet, way: readonly Written[], at: Written): void {
  const { like } = way.at(-1) ?? at;
  const circle = [...way.slice(way.indexOf(at)), at].map(({ scheme }) => scheme);
  if (like !== undefined)
    sheet.blame('like-circle', like, 'like', { found: circle.slice(0, mostNamed).join(', ') });
}

/** Schemes of a circle that are named. */
const mostNamed = 12;

/** Its rows, those that it does not write taken from its beginning. */
function fillIn(
  sheet: SchemeSheet,
  { rows, like }: Written,
  { book, whole, zones, room }: Known,
): readonly SchemeRow[] | undefined {
  if (like === undefined) return rows;
  const base = whole.get(book.find(like.like ?? '') ?? '');
  if (base === undefined) return undefined;
  const isNew = room.rows >= 0;
  room.rows -= base.length;
  if (room.rows >= 0) return differ(sheet, { like, base, rows }, zones);
  if (isNew) sheet.blame('too-many-in-all', like, 'like', { expected: `${mostRows} rows` });
  return undefined;
}
