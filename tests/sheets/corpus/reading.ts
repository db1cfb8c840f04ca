// Tests: how a person reads the sheets of the corpus. In: readings/*.json. Out: the readings, typed.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { SheetName } from '../../../src/model/words.js';

/**
 * A cell as a person reads it, as text: `Lock brick`, `17` (in the unit of its column), `3.25 EUR`, `2026-03-14`, `60%`,
 * `7.5 ml`, `31.2 g`; several pots in one row are `100%, 100%, 50%`, or `2 x 17`. `30..37%` is any share between the two, and `~` before
 * a share asks for a wider reading error than a plain one has. `?`: nobody can know, so it has to be asked. `-`: nothing is
 * said. ` or ` parts what is as good. Blank: there is nothing to read.
 */
type CellReading = string;

export interface SheetReading {
  readonly is: SheetName;
  /** Where several files or worksheets are read as one path. */
  readonly file?: string;
  readonly worksheet?: string;
  readonly headerRow: number;
  /** By letter, what each column is called; `?` where it has to be asked. The other columns are left alone. */
  readonly columns: Readonly<Record<string, string>>;
  /** By row, its cells in the order of the columns that are called something; every other row is left alone. */
  readonly rows: Readonly<Record<string, readonly CellReading[]>>;
}

export interface Reading {
  /** What the sheets are, and what is special about them. */
  readonly says: string;
  /** Files or folders below sheets/ that are all read like this. */
  readonly paths: readonly string[];
  /** A person finds every cell clear: nothing should have to be edited. */
  readonly clear?: true;
  /** Nothing can be read: an answer that says so is right. */
  readonly told?: true;
  /** Hard to read: an answer that says so is as right as one that reads it. */
  readonly orTold?: true;
  readonly sheets: readonly SheetReading[];
}

const folder = fileURLToPath(new URL('readings/', import.meta.url));

export const sheetsFolder = fileURLToPath(new URL('sheets/', import.meta.url));

/** In the order of their names. */
export function loadReadings(): readonly Reading[] {
  const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return names.sort().map((name) => JSON.parse(readFileSync(folder + name, 'utf8')) as Reading);
}
