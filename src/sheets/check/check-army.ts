// Checks: the army sheet. In: its rows, figures and schemes. Out: units in row order. Written for 100,000 rows.
import type { Unit } from '../../model/sheets.js';
import type { Tables } from '../columns/columns.js';
import type { CheckedSchemes } from './check-schemes.js';
import { joinOr } from './find-nearest.js';
import { foldName } from './fold-name.js';
import type { NameBook } from './keep-names.js';
import { type From, type OpenSheet, openSheet } from './open-sheet.js';
import { type RowIn, visitRows } from './read-rows.js';
import { findKnown, tellRepeat } from './tell-names.js';

type ArmySheet = OpenSheet<Tables['army']>;
type Row = RowIn<'army'>;

interface Given extends From {
  /** Undefined where figures cannot be looked up. */
  readonly figures: NameBook | undefined;
  readonly schemes: CheckedSchemes;
}

export interface CheckedArmy {
  readonly units: readonly Unit[];
  /** The row of each unit in words by the key of its name, however bad the row; undefined where the sheet or column is missing. */
  readonly rowOf: ReadonlyMap<string, string> | undefined;
}

interface Beside extends Given {
  readonly sheet: ArmySheet;
  readonly onlyScheme: string | undefined;
  readonly rowOf: Map<string, string>;
}

/** Units with everything they refer to. */
export function checkArmy(given: Given): CheckedArmy {
  const sheet = openSheet('army', given);
  const names = given.schemes.book?.all() ?? [];
  const onlyScheme = names.length === 1 ? names[0] : undefined;
  const beside: Beside = { ...given, sheet, onlyScheme, rowOf: new Map() };
  const units: Unit[] = [];
  let withoutScheme = 0;
  visitRows(sheet, (row, place) => {
    const unit = unitOf(row, place, beside);
    if (unit !== undefined) units.push(unit);
    if (row.scheme === undefined) withoutScheme += 1;
  });
  if (onlyScheme !== undefined) {
    sheet.useBlank('scheme', withoutScheme);
  }
  return { units, rowOf: sheet.has('unit') ? beside.rowOf : undefined };
}

/** Figures in one unit: more take a painter years. */
const mostUsual = 5000;

/** Undefined where a cell that it needs could not be read, or where the unit stands in a row above; both are told. */
function unitOf(row: Row, place: number, beside: Beside): Unit | undefined {
  const figure = findKnown(beside.sheet, row, {
    key: 'figure',
    name: row.figure,
    book: beside.figures,
    code: 'unknown-figure',
  });
  const scheme = findScheme(row, beside);
  if (scheme !== undefined) checkDone(row, scheme, beside);
  const { unit, count, batch, done } = row;
  if (count !== undefined && count > mostUsual) beside.sheet.blame('count-high', row, 'count');
  const { sheet, rowOf: first } = beside;
  if (unit === undefined || tellRepeat(sheet, row, { key: 'unit', name: foldName(unit), first }))
    return undefined;
  if (figure === undefined || scheme === undefined) return undefined;
  if (count === undefined || batch === undefined || done === undefined) return undefined;
  return { row: row.row, unit, figure, scheme, count, batch, done, priority: row.priority ?? place + 1 };
}

function findScheme(row: Row, { sheet, schemes: { book }, onlyScheme }: Beside): string | undefined {
  if (book === undefined || row.bad.includes('scheme')) return undefined;
  if (row.scheme === undefined) {
    const names = onlyScheme === undefined ? book.all() : [];
    if (names.length > 0) sheet.blame('scheme-needed', row, 'scheme', { expected: someOf(names) });
    return onlyScheme;
  }
  return findKnown(sheet, row, { key: 'scheme', name: row.scheme, book, code: 'unknown-scheme' });
}

const mostNamed = 4;

/** Some names to choose from, when there are too many to list. */
function someOf(names: readonly string[]): string {
  if (names.length <= mostNamed) return joinOr(names);
  return `one of your ${names.length} schemes, such as ${names[0]}`;
}

function checkDone(row: Row, scheme: string, { sheet, schemes }: Beside): void {
  const steps = schemes.steps.get(scheme);
  if (row.done === undefined || row.done === 0 || steps === undefined || steps.has(row.done)) return;
  sheet.blame('unknown-step', row, 'done', { expected: stepsInWords(steps) });
}

/** `1, 2 or 3`; a long scheme by its first and last. */
export function stepsInWords(steps: ReadonlySet<number>): string {
  const sorted = [...steps].sort((a, b) => a - b);
  if (sorted.length > 2 * mostNamed) return `${sorted[0]} to ${sorted.at(-1)}`;
  return joinOr(sorted.map(String));
}
