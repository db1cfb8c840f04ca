// Checks: the schemes sheet. In: its rows, books of paints and zones. Out: schemes, their steps in order.

import { groupBy } from '../../model/group-by.js';
import type { Scheme, Step } from '../../model/sheets.js';
import { checkMix, stepOf } from './check-mix.js';
import { leftOut, type SchemeRow, type SchemeSheet } from './differ-scheme.js';
import { expandSchemes, splitZones } from './expand-schemes.js';
import { foldName } from './fold-name.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import type { From } from './open-sheet.js';
import { cellText } from './read-cell/cell-kind.js';
import { readRows } from './read-rows.js';
import { tellOnce } from './tell-once.js';

interface Given extends From {
  /** Undefined where paints cannot be looked up. */
  readonly paints: NameBook | undefined;
  readonly zones: NameBook | undefined;
}

export interface CheckedSchemes {
  /** Its rows as if all were written out. */
  readonly sheet: SchemeSheet;
  /** The first row of each step. */
  readonly rowOf: ReadonlyMap<Step, SchemeRow>;
  readonly schemes: ReadonlyMap<string, Scheme>;
  /** Of a scheme that one unit has for its swaps, which it is like. */
  readonly copyOf: ReadonlyMap<string, string>;
  /** Undefined where the sheet or its column is missing. */
  readonly book: NameBook | undefined;
  /** Step numbers by scheme; a scheme with a step that could not be read has none. */
  readonly steps: ReadonlyMap<string, ReadonlySet<number>>;
}

/** One Scheme for each name, in the order of their first rows. */
export function checkSchemes({ paints, zones, ...from }: Given): CheckedSchemes {
  const written = readRows('schemes', from);
  for (const row of written.rows) checkNames(written, row, { paints, zones });
  const book = makeNameBook();
  const expanded = expandSchemes(written, { book, zones });
  // A row may stand in several schemes and zones.
  const sheet = { ...tellOnce(written), rows: [...expanded.values()].flatMap((rows) => rows ?? []) };
  const schemes = new Map<string, Scheme>();
  const steps = new Map<string, ReadonlySet<number>>();
  const rowOf = new Map<Step, SchemeRow>();
  for (const [scheme, rows = []] of expanded) {
    checkOrder(sheet, rows);
    const made = stepsOf(sheet, rows, { paints, zones });
    for (const [step, row] of made) rowOf.set(step, row);
    schemes.set(scheme, { scheme, steps: made.map(([step]) => step) });
    if (expanded.get(scheme) !== undefined && rows.every(({ step }) => step !== undefined))
      steps.set(scheme, new Set(rows.flatMap(({ step }) => step ?? [])));
  }
  recordDefaults(
    sheet,
    [...schemes.values()].flatMap((scheme) => scheme.steps),
  );
  return { sheet, schemes, rowOf, copyOf: new Map(), book: sheet.has('scheme') ? book : undefined, steps };
}

type Books = Pick<Given, 'paints' | 'zones'>;

function checkNames(sheet: SchemeSheet, row: SchemeRow, { paints, zones }: Books): void {
  const { paint } = row;
  const isLeftOut = row.like !== undefined && foldName(paint ?? '') === leftOut;
  if (paint !== undefined && paints !== undefined && paints.find(paint) === undefined && !isLeftOut) {
    sheet.blame('unknown-paint', row, 'paint', { expected: paints.nearest(paint) });
  }
  if (zones === undefined) return;
  for (const { zone } of splitZones(row, zones)) {
    if (zone === undefined || zones.find(zone) !== undefined) continue;
    sheet.blame('unknown-zone', row, 'zone', { found: cellText(zone), expected: zones.nearest(zone) });
  }
}

/** Painters write steps in order, so a lower number below a higher one is likely a slip; the plan sorts them anyway. */
function checkOrder(sheet: SchemeSheet, rows: readonly SchemeRow[]): void {
  let before: number | undefined;
  for (const row of rows) {
    if (row.step === undefined) continue;
    if (before !== undefined && row.step < before) {
      sheet.blame('step-out-of-order', row, 'step', { expected: String(before) });
    }
    before = row.step;
  }
}

/** Steps by ascending number. Rows alike in step, zone and layer are one mix where any of them has a share. */
function stepsOf(
  sheet: SchemeSheet,
  rows: readonly SchemeRow[],
  books: Books,
): readonly (readonly [Step, SchemeRow])[] {
  const alike = groupBy(rows, ({ step, zone, layer }) =>
    step === undefined || zone === undefined || layer === undefined
      ? undefined
      : `${step}\n${books.zones?.find(zone) ?? zone}\n${layer}`,
  );
  return [...alike.values()]
    .flatMap((group) => stepsOfGroup(sheet, group, books))
    .sort(([a], [b]) => a.step - b.step);
}

function stepsOfGroup(
  sheet: SchemeSheet,
  group: readonly SchemeRow[],
  books: Books,
): readonly (readonly [Step, SchemeRow])[] {
  const rows = withoutRepeats(sheet, group, books);
  const isMix = rows.some((row) => row.share !== undefined || row.bad.includes('share'));
  const parts = isMix ? [rows] : rows.map((row) => [row]);
  return parts.flatMap((of) => {
    const [first] = of;
    const step = stepOf(of, isMix ? checkMix(sheet, of) : [1], books);
    return first === undefined || step === undefined ? [] : [[step, first] as const];
  });
}

/** The same paint twice in one step, zone and layer is told, and counts once. */
function withoutRepeats(
  sheet: SchemeSheet,
  group: readonly SchemeRow[],
  { paints }: Books,
): readonly SchemeRow[] {
  const first = new Map<string, SchemeRow>();
  return group.filter((row) => {
    if (row.paint === undefined) return true;
    const paint = paints?.find(row.paint) ?? row.paint;
    const before = first.get(paint);
    if (before === undefined) first.set(paint, row);
    else sheet.blame('repeated-treatment', row, 'paint', { expected: sheet.rowName(before) });
    return before === undefined;
  });
}

/** A mix counts once: its later rows are blank by rule. */
function recordDefaults(sheet: SchemeSheet, steps: readonly Step[]): void {
  const blanks = (key: keyof Step): number => steps.filter((step) => step[key] === undefined).length;
  for (const key of ['coats', 'method', 'thin'] as const) sheet.useBlank(key, blanks(key));
  sheet.useBlank('area', blanks('areaShare'));
}
