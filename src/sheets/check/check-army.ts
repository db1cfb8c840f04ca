// Checks: the army sheet. In: its rows, figures and schemes. Out: units in row order. Written for 100,000 rows.
import type { Unit } from '../../model/sheets.js';
import type { Table } from '../table.js';
import type { CheckedSchemes } from './check-schemes.js';
import { type Findings, useDefault } from './collect-findings.js';
import { joinOr } from './find-nearest.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { batchSize, doneStep, figureCount } from './read-cell/read-count.js';
import { nameKind } from './read-cell/read-name.js';
import { rank } from './read-cell/read-number.js';
import { column, type OpenSheet, type RowOf, readRows } from './read-rows.js';
import { tellRepeat } from './tell-repeat.js';

export const armySchema = {
  unit: column('unit', nameKind),
  figure: column('figure', nameKind),
  scheme: column('scheme', nameKind),
  count: column('count', figureCount),
  batch: column('batch', batchSize, { blank: 10, meaning: '10' }),
  done: column('done', doneStep, { blank: 0, meaning: 'nothing is done yet' }),
  priority: column('priority', rank, { meaning: 'the order of the rows' }),
};

type ArmySheet = OpenSheet<typeof armySchema>;
type Row = RowOf<typeof armySchema>;

interface Given {
  readonly table: Table | undefined;
  /** Undefined where figures cannot be looked up. */
  readonly figures: NameBook | undefined;
  readonly schemes: CheckedSchemes;
  readonly findings: Findings;
}

export interface CheckedArmy {
  readonly units: readonly Unit[];
  /** Undefined where the sheet or its column is missing. */
  readonly book: NameBook | undefined;
  /** Scheme of each unit whose scheme is known. */
  readonly schemeOf: ReadonlyMap<string, string>;
}

interface Beside extends Given {
  readonly onlyScheme: string | undefined;
}

/** Units with everything they refer to. */
export function checkArmy(given: Given): CheckedArmy {
  const { table, schemes, findings } = given;
  const sheet = readRows('army', armySchema, { table, findings });
  const book = makeNameBook();
  const first = new Map<string, number>();
  const schemeOf = new Map<string, string>();
  const units: Unit[] = [];
  const names = schemes.book?.all() ?? [];
  const beside: Beside = { ...given, onlyScheme: names.length === 1 ? names[0] : undefined };
  for (const [index, row] of sheet.rows.entries()) {
    const figure = findFigure(sheet, row, beside);
    const scheme = findScheme(sheet, row, beside);
    if (scheme !== undefined) checkDone(sheet, row, schemes.steps.get(scheme));
    if (row.unit === undefined) continue;
    const unit = book.add(row.unit);
    if (tellRepeat(sheet, row, { key: 'unit', name: unit, first })) continue;
    if (scheme !== undefined) schemeOf.set(unit, scheme);
    const whole = unitOf(row, { unit, figure, scheme, place: index + 1 });
    if (whole !== undefined) units.push(whole);
  }
  recordScheme(sheet.rows, beside);
  return { units, book: sheet.has('unit') ? book : undefined, schemeOf };
}

interface UnitNames {
  readonly unit: string;
  readonly figure: string | undefined;
  readonly scheme: string | undefined;
  /** Of the row among the rows of the sheet, from 1. */
  readonly place: number;
}

/** Undefined where a cell that it needs could not be read; that is told already. */
function unitOf(row: Row, { unit, figure, scheme, place }: UnitNames): Unit | undefined {
  const { count, batch, done } = row;
  if (figure === undefined || scheme === undefined || count === undefined) return undefined;
  if (batch === undefined || done === undefined) return undefined;
  return { row: row.row, unit, figure, scheme, count, batch, done, priority: row.priority ?? place };
}

function findFigure(sheet: ArmySheet, row: Row, { figures }: Beside): string | undefined {
  if (row.figure === undefined || figures === undefined) return undefined;
  const figure = figures.find(row.figure);
  if (figure === undefined)
    sheet.blame('unknown-figure', row, 'figure', { expected: figures.nearest(row.figure) });
  return figure;
}

function findScheme(
  sheet: ArmySheet,
  row: Row,
  { schemes: { book }, onlyScheme }: Beside,
): string | undefined {
  if (book === undefined || row.bad.includes('scheme')) return undefined;
  if (row.scheme === undefined) {
    const names = book.all();
    if (onlyScheme === undefined && names.length > 0) {
      sheet.blame('scheme-needed', row, 'scheme', { expected: someOf(names) });
    }
    return onlyScheme;
  }
  const scheme = book.find(row.scheme);
  if (scheme === undefined)
    sheet.blame('unknown-scheme', row, 'scheme', { expected: book.nearest(row.scheme) });
  return scheme;
}

const mostNamed = 4;

/** Some names to choose from, when there are too many to list. */
function someOf(names: readonly string[]): string {
  if (names.length <= mostNamed) return joinOr(names);
  return `one of your ${names.length} schemes, such as ${names[0]}`;
}

function checkDone(sheet: ArmySheet, row: Row, steps: ReadonlySet<number> | undefined): void {
  if (row.done === undefined || row.done === 0 || steps === undefined || steps.has(row.done)) return;
  sheet.blame('unknown-step', row, 'done', { expected: stepsInWords(steps) });
}

/** `1, 2 or 3`; a long scheme by its first and last. */
export function stepsInWords(steps: ReadonlySet<number>): string {
  const sorted = [...steps].sort((a, b) => a - b);
  if (sorted.length > 2 * mostNamed) return `${sorted[0]} to ${sorted.at(-1)}`;
  return joinOr(sorted.map(String));
}

function recordScheme(rows: readonly Row[], { onlyScheme, findings }: Beside): void {
  if (onlyScheme === undefined) return;
  const blank = rows.filter((row) => row.scheme === undefined && !row.bad.includes('scheme')).length;
  useDefault(findings, {
    sheet: 'army',
    column: 'scheme',
    rows: blank,
    meaning: `the only one, ${onlyScheme}`,
  });
}
