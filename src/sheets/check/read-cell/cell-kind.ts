// Checks: what every cell reader is. In: one cell that is not blank. Out: its value, or the mistake in it.
// Readers are plain functions and not a schema library: a sheet may have 100,000 rows.
import type { ProblemCode } from '../../../problems/catalogue.js';
import { type Cell, type CellDate, type MeasuredCell, textOfObject } from '../../table.js';

/** A cell once dates and broken cells are dealt with. */
export type Written = string | number | boolean;

/** Why a cell cannot be taken. `found` is set where only a piece of the cell is wrong. */
export class Mistake {
  constructor(
    readonly code: ProblemCode,
    readonly expected = '',
    readonly found?: string,
  ) {}
}

export interface CellKind<T> {
  /** With its article, as it stands in a sentence: `a volume`. */
  readonly noun: string;
  readonly read: (cell: Written) => T | Mistake;
  /** Set only where a date is welcome. */
  readonly readDate?: (date: CellDate) => T | Mistake;
  /** Set where a unit or a currency may stand in the cell; elsewhere the number counts, whatever its format writes. */
  readonly takesUnit?: true;
  /** Of words out of a closed list: the list. */
  readonly choices?: readonly string[];
  /** Of prices: what a currency in the header has to be. */
  readonly money?: Money;
}

/** The currency of the settings sheet. */
export interface Money {
  /** ISO 4217 */
  readonly currency: string;
  /** Whether a sign or code, in small letters, is one of it. */
  readonly isOwn: (sign: string) => boolean;
}

/** Reads any cell but a blank one; errors, unreckoned formulas and unwanted dates are mistakes of their own. */
export function readCell<T>(kind: CellKind<T>, cell: Cell): T | Mistake {
  if (typeof cell !== 'object') return kind.read(typeof cell === 'string' ? cell.trim() : cell);
  if (cell.kind === 'measured') return kind.read(kind.takesUnit ? writeOut(cell) : cell.value);
  if (cell.kind === 'date') return kind.readDate?.(cell) ?? new Mistake('date-not-wanted', kind.noun);
  return new Mistake(cell.why === 'error value' ? 'error-value' : 'formula-without-result', kind.noun);
}

/** As CSV would have it; a fraction of three digits gets a fourth, as it can't be thousands. */
function writeOut({ value, unit }: MeasuredCell): string {
  const text = String(Number(value.toPrecision(15)));
  return `${/\.\d{3}$/.test(text) ? `${text}0` : text} ${unit}`;
}

const longestShown = 60;

/** A cell as a problem quotes it: one line, cut after 60 letters. */
export function cellText(cell: Cell): string {
  const text = typeof cell === 'object' ? textOfObject(cell) : textOfPlain(cell);
  return text.length > longestShown ? `${text.slice(0, longestShown)} ...` : text;
}

function textOfPlain(cell: Written): string {
  if (typeof cell === 'string') return cell.replace(/\s+/g, ' ').trim();
  return typeof cell === 'boolean' ? String(cell).toUpperCase() : String(cell);
}
