// Columns: what the table of columns says of one. In: a header, how its cells are read, words. Out: a Column.
import type { SheetName } from '../../model/words.js';
import type { CellKind } from '../check/read-cell/cell-kind.js';
import type { Unit } from '../units.js';

/** What the cells of one run are read by beside themselves. */
export interface Terms {
  /** Prices, in the currency of the settings. */
  readonly price: CellKind<number>;
}

export interface Blank<T> {
  /** In words, as how-to and the list of defaults used have it: `full`. */
  readonly means: string;
  /** What a blank cell is read as; without it there is no value. */
  readonly value?: T;
  /** Each row with a blank is counted among the defaults used; else the checks count it, or it is not worth a word. */
  readonly isCounted?: true;
}

export interface Column<T = unknown> {
  readonly header: string;
  /** Its sheet is of no use without it. */
  readonly needed: boolean;
  /** A needed column whose cells may be blank, since the rows of a group share one. */
  readonly isShared?: true;
  /** Header of the column that may stand in place of a needed one, be it in all rows or in some. */
  readonly unless?: string;
  readonly kind: CellKind<T> | ((terms: Terms) => CellKind<T>);
  /**
   * Painters write it once above the rows that share it: a blank is as the row above has it; or, by the header of another
   * column, only on rows that fill that.
   */
  readonly fillsDown?: 'always' | { readonly where: string };
  /** What its cells are in where its own header does not end in it: a unit, or money of the settings' currency. */
  readonly isIn?: Unit | 'money';
  /** What else painters call it, parted by commas: English, German, French, Spanish, Italian, Dutch, Polish. */
  readonly called?: string;
  /** For a newcomer: what goes in. */
  readonly says: string;
  /** Of a column that is not needed. */
  readonly blank?: Blank<T>;
  /** The sheet in which such names are listed. */
  readonly from?: SheetName;
  /** Its digits are a name: zeros in front count. */
  readonly isDigits?: true;
  readonly example: string;
}

/** The columns of one sheet by the keys of its rows, in the order in which starter sheets have them. */
export type Columns = Readonly<Record<string, Column>>;

type Words<T> = Omit<Column<T>, 'header' | 'needed' | 'kind'>;

/** A column that its sheet needs. */
export function needed<T>(
  header: string,
  kind: Column<T>['kind'],
  words: Omit<Words<NoInfer<T>>, 'blank'>,
): Column<T> {
  return { header, needed: true, kind, ...words };
}

/** A column that may be left out. */
export function free<T>(header: string, kind: Column<T>['kind'], words: Words<NoInfer<T>>): Column<T> {
  return { header, needed: false, kind, ...words };
}

/** The kind of every price. */
export const money = ({ price }: Terms): CellKind<number> => price;

/** The words that its cells are chosen from; none where they are free. */
export const choicesOf = ({ kind }: Column): readonly string[] =>
  (typeof kind === 'function' ? undefined : kind.choices) ?? [];

/** How the cells of a column are read in one run. */
export const kindOf = <T>({ kind }: Column<T>, terms: Terms): CellKind<T> =>
  typeof kind === 'function' ? kind(terms) : kind;
