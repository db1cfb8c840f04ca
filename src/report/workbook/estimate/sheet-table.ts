// Report view: one sheet as it is laid out. In: its words, cells row by row. Out: cells and sums for formulas, and the
// finished sheet.
import { at } from '../../../model/at.js';
import type { Cell, SheetView } from './workbook-view.js';
import { call, cellAt, num, type Term } from './write-formula.js';

/** Header, width in characters, and the digits after the point where they are set. */
export type ColumnWords = readonly [header: string, width: number, digits?: number | undefined];

export interface SheetWords<Key extends string> {
  /** Stands in formulas too. */
  readonly name: string;
  readonly says: string;
  readonly columns: Readonly<Record<Key, ColumnWords>>;
  /** Columns the plain numbers of which are there to be read, not to be changed. */
  readonly fixed?: readonly NoInfer<Key>[];
}

/** Cells by column; one given as a function is worked out after those before it. */
type Cells<Key extends string> = Readonly<Partial<Record<Key, Cell | (() => Cell)>>>;

export interface Row<Key extends string> {
  /** As a spreadsheet counts. */
  readonly number: number;
  /** Sets cells. */
  readonly put: (cells: Cells<Key>) => void;
  /** What a cell holds or gives; text and blank count as 0. */
  readonly value: (key: Key) => number;
  /** A cell, for formulas of this sheet. */
  readonly here: (key: Key) => Term;
  /** A cell, for formulas of any sheet. */
  readonly from: (key: Key) => Term;
}

/** Rows where one column holds a number, and another is below, or above, a limit. */
interface Narrowed<Key extends string> {
  readonly by: Key;
  readonly wanted: Term;
  readonly than: Key;
  readonly sign: '<' | '>';
  readonly limit: Term;
}

const firstRow = 2;

/** A table with its headers in row 1. */
export class SheetTable<Key extends string> {
  readonly rows: Row<Key>[] = [];
  readonly #words: SheetWords<Key>;
  readonly #places: ReadonlyMap<string, number>;
  readonly #cells: Cell[][] = [];
  readonly #groups = new Map<Key, Map<number, Row<Key>[]>>();

  constructor(words: SheetWords<Key>) {
    this.#words = words;
    this.#places = new Map(Object.keys(words.columns).map((key, place) => [key, place]));
  }

  add(cells: Cells<Key>): Row<Key> {
    const held = new Array<Cell>(this.#places.size).fill(undefined);
    const number = this.rows.length + firstRow;
    const value = (key: Key): number => numberIn(held[this.#placeOf(key)]);
    const row: Row<Key> = {
      number,
      put: (more) => {
        for (const [key, cell] of Object.entries<Cell | (() => Cell)>(more))
          held[this.#placeOf(key)] = typeof cell === 'function' ? cell() : cell;
      },
      value,
      here: (key) => cellAt(`${this.#letters(key)}${number}`, value(key)),
      from: (key) => cellAt(`${this.#words.name}!$${this.#letters(key)}$${number}`, value(key)),
    };
    this.#cells.push(held);
    this.rows.push(row);
    row.put(cells);
    return row;
  }

  /** From one column to another over rows that stand one below the other, else all that are there by now. */
  range(first: Key, last: Key = first, rows: readonly Row<Key>[] = this.rows): string {
    const [from, to] = [rows[0]?.number ?? firstRow, rows.at(-1)?.number ?? firstRow];
    return `${this.#words.name}!$${this.#letters(first)}$${from}:$${this.#letters(last)}$${to}`;
  }

  /** A column added up. */
  sum(key: Key): Term {
    return call('SUM', [this.range(key)], total(this.rows, key));
  }

  /** Cells of rows that stand one below the other, added up, for formulas of any sheet; of no rows, 0. */
  sumRows(key: Key, rows: readonly Row<Key>[]): Term {
    if (rows.length === 0) return num(0);
    if (rows.length === 1) return at(rows, 0).from(key);
    return call('SUM', [this.range(key, key, rows)], total(rows, key));
  }

  /**
   * A column added up over the rows that hold a number in another. Numbers only: in a criterion, the text of a stranger
   * could be a pattern.
   */
  sumIf(by: Key, wanted: Term, key: Key): Term {
    const args = [this.range(by), wanted.formula, this.range(key)];
    return call('SUMIF', args, total(this.#rowsWith(by, wanted.result), key));
  }

  sumIfs({ by, wanted, than, limit, sign }: Narrowed<Key>, key: Key): Term {
    const rows = this.#rowsWith(by, wanted.result).filter((row) =>
      sign === '<' ? row.value(than) < limit.result : row.value(than) > limit.result,
    );
    const args = [this.range(key), this.range(by), wanted.formula, this.range(than)];
    return call('SUMIFS', [...args, `"${sign}"&${limit.formula}`], total(rows, key));
  }

  /** The sheet, complete. */
  view(): SheetView {
    const { name, columns, fixed = [] } = this.#words;
    const entries = Object.entries<ColumnWords>(columns);
    return {
      name,
      columns: entries.map(([key, [header, width, digits]]) => ({
        ...{ header, width, digits },
        isFixed: fixed.some((one) => one === key),
      })),
      rows: this.#cells,
    };
  }

  #placeOf(key: string): number {
    const place = this.#places.get(key);
    if (place === undefined) throw new Error(`the sheet ${this.#words.name} has no column ${key}`);
    return place;
  }

  #letters(key: Key): string {
    return letters(this.#placeOf(key));
  }

  /** Rows by the number in a column; asked for once the column is complete. */
  #rowsWith(by: Key, wanted: number): readonly Row<Key>[] {
    const groups = this.#groups.get(by) ?? groupRows(this.rows, by);
    this.#groups.set(by, groups);
    return groups.get(wanted) ?? [];
  }
}

function numberIn(cell: Cell): number {
  const value = typeof cell === 'object' ? cell.result : cell;
  return typeof value === 'number' ? value : 0;
}

const total = <Key extends string>(rows: readonly Row<Key>[], key: Key): number =>
  rows.reduce((sum, row) => sum + row.value(key), 0);

function groupRows<Key extends string>(rows: readonly Row<Key>[], by: Key): Map<number, Row<Key>[]> {
  const groups = new Map<number, Row<Key>[]>();
  for (const row of rows) {
    const group = groups.get(row.value(by));
    if (group === undefined) groups.set(row.value(by), [row]);
    else group.push(row);
  }
  return groups;
}

/** The letters of a column: 0 is A, 26 is AA. */
export function letters(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : letters(Math.floor(place / 26) - 1) + last;
}
