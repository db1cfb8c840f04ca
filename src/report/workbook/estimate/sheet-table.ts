// Report view: one sheet as it is laid out. In: columns by key, rows of cells. Out: addresses, sums over its columns, and
// the finished sheet.

import type { Cell, SheetColumn, SheetView } from './workbook-view.js';
import { call, cellAt, num, type Term } from './write-formula.js';

/** Header, width in characters, and the digits after the point where they are set. */
export type ColumnOf = readonly [header: string, width: number, digits?: number];

type Cells<Key extends string> = Readonly<Partial<Record<Key, Cell>>>;

const firstRow = 2;

/** A table with its headers in row 1. Rows are numbered as a spreadsheet shows them. */
export class SheetTable<Key extends string> {
  readonly #name: string;
  readonly #columns: readonly SheetColumn[];
  readonly #places: ReadonlyMap<string, number>;
  readonly #rows: Cell[][] = [];
  readonly #letters: readonly string[];
  readonly #groups = new Map<Key, Map<number, number[]>>();

  /** `fixed` names columns the plain numbers of which are not to be changed. */
  constructor(name: string, columns: Readonly<Record<Key, ColumnOf>>, fixed: readonly NoInfer<Key>[] = []) {
    const entries = Object.entries<ColumnOf>(columns);
    this.#name = name;
    this.#places = new Map(entries.map(([key], place) => [key, place]));
    this.#letters = entries.map((_, place) => letters(place));
    this.#columns = entries.map(([key, [header, width, digits]]) => ({
      header,
      width,
      ...(digits === undefined ? {} : { digits }),
      ...(fixed.some((one) => one === key) ? { isFixed: true } : {}),
    }));
  }

  /** The row that is added next. */
  get nextRow(): number {
    return this.#rows.length + firstRow;
  }

  /** Adds a row and gives its number. */
  add(cells: Cells<Key>): number {
    this.#rows.push(new Array<Cell>(this.#columns.length).fill(undefined));
    this.put(this.nextRow - 1, cells);
    return this.nextRow - 1;
  }

  /** Sets cells of a row that is there. */
  put(row: number, cells: Cells<Key>): void {
    const into = this.#rows[row - firstRow];
    if (into === undefined) throw new Error(`the sheet ${this.#name} has no row ${row}`);
    for (const [key, cell] of Object.entries<Cell>(cells)) into[this.#place(key)] = cell;
  }

  /** What a cell holds or gives; text and blank count as 0. */
  number(key: Key, row: number): number {
    const cell = this.#rows[row - firstRow]?.[this.#place(key)];
    const value = typeof cell === 'object' ? cell.result : cell;
    return typeof value === 'number' ? value : 0;
  }

  /** What text a cell holds; blank where it holds none. */
  text(key: Key, row: number): string {
    const cell = this.#rows[row - firstRow]?.[this.#place(key)];
    return typeof cell === 'string' ? cell : '';
  }

  /** A cell, for formulas of this sheet. */
  here(key: Key, row: number): Term {
    return cellAt(`${this.#letters[this.#place(key)]}${row}`, this.number(key, row));
  }

  /** A cell, for formulas of any sheet. */
  from(key: Key, row: number): Term {
    return cellAt(`${this.#name}!$${this.#letters[this.#place(key)]}$${row}`, this.number(key, row));
  }

  /** From one column to another over all rows that are there by now, for formulas of any sheet. */
  range(first: Key, last: Key = first, rows?: { readonly from: number; readonly to: number }): string {
    const { from, to } = rows ?? { from: firstRow, to: Math.max(firstRow, this.nextRow - 1) };
    const [left, right] = [this.#letters[this.#place(first)], this.#letters[this.#place(last)]];
    return `${this.#name}!$${left}$${from}:$${right}$${to}`;
  }

  /** A column added up. */
  sum(key: Key): Term {
    let total = 0;
    for (let row = firstRow; row < this.nextRow; row++) total += this.number(key, row);
    return call('SUM', [this.range(key)], total);
  }

  /** Cells of rows that stand one below the other, added up, for formulas of any sheet; of no rows, 0. */
  sumRows(key: Key, rows: readonly number[]): Term {
    const [from, to] = [rows[0], rows.at(-1)];
    if (from === undefined || to === undefined) return num(0);
    const total = rows.reduce((sum, row) => sum + this.number(key, row), 0);
    return from === to ? this.from(key, from) : call('SUM', [this.range(key, key, { from, to })], total);
  }

  /**
   * A column added up over the rows that hold a number in another. Numbers only: in a criterion, the text of a stranger
   * could be a pattern.
   */
  sumIf(by: Key, wanted: Term, key: Key): Term {
    const total = this.#rowsWith(by, wanted.result).reduce((sum, row) => sum + this.number(key, row), 0);
    return call('SUMIF', [this.range(by), wanted.formula, this.range(key)], total);
  }

  /** The same over those of the rows where a third column is below, or above, a number. */
  sumIfs(where: Narrowed<Key>, key: Key): Term {
    const { by, wanted, than, limit, sign } = where;
    const fits = (value: number): boolean => (sign === '<' ? value < limit.result : value > limit.result);
    const total = this.#rowsWith(by, wanted.result)
      .filter((row) => fits(this.number(than, row)))
      .reduce((sum, row) => sum + this.number(key, row), 0);
    const args = [this.range(key), this.range(by), wanted.formula, this.range(than)];
    return call('SUMIFS', [...args, `"${sign}"&${limit.formula}`], total);
  }

  /** The sheet, complete. */
  view(): SheetView {
    return { name: this.#name, columns: this.#columns, rows: this.#rows };
  }

  #place(key: string): number {
    const place = this.#places.get(key);
    if (place === undefined) throw new Error(`the sheet ${this.#name} has no column ${key}`);
    return place;
  }

  /** Rows by the number in a column; asked for once the column is complete. */
  #rowsWith(by: Key, wanted: number): readonly number[] {
    const known = this.#groups.get(by) ?? new Map<number, number[]>();
    if (!this.#groups.has(by)) {
      this.#groups.set(by, known);
      for (let row = firstRow; row < this.nextRow; row++) {
        const value = this.number(by, row);
        const rows = known.get(value);
        if (rows === undefined) known.set(value, [row]);
        else rows.push(row);
      }
    }
    return known.get(wanted) ?? [];
  }
}

/** Rows that hold a number in one column, and one below or above a limit in another. */
export interface Narrowed<Key extends string> {
  readonly by: Key;
  readonly wanted: Term;
  readonly than: Key;
  readonly sign: '<' | '>';
  readonly limit: Term;
}

/** The letters of a column: 0 is A, 26 is AA. */
export function letters(place: number): string {
  const last = String.fromCharCode(65 + (place % 26));
  return place < 26 ? last : letters(Math.floor(place / 26) - 1) + last;
}
