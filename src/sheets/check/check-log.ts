// Checks: the log. In: the rows of the sheet and of a log.csv beside a workbook, paints, units, pots. Out: log rows.
import type { PotLife } from '../../model/follow-pots.js';
import type { IsoDate, LogRow, Paint, Pot, Unit } from '../../model/sheets.js';
import { unguardFormula } from '../append/guard-formula.js';
import type { Tables } from '../columns/columns.js';
import { type CheckedArmy, stepsInWords } from './check-army.js';
import { checkLogAmounts } from './check-log-amounts.js';
import { checkLogPots } from './check-log-pots.js';
import { checkLogProgress } from './check-log-progress.js';
import type { PotSheet } from './check-pots.js';
import type { CheckedSchemes } from './check-schemes.js';
import type { CheckedShops } from './check-shops.js';
import { foldName } from './fold-name.js';
import type { Shelf } from './gather-shelf.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { eventOf, type LogEntry, type LogSheet, takeRowsBack, tellLogRepeats } from './log-entries.js';
import type { SwapEntry } from './open-swaps.js';
import { pickContainer } from './pick-container.js';

interface Given {
  /** Undefined where paints cannot be looked up. */
  readonly paints: NameBook | undefined;
  readonly paintOf: ReadonlyMap<string, Paint>;
  readonly army: CheckedArmy;
  readonly schemes: CheckedSchemes;
  /** A paint used instead is one of its step. Undefined where they could not be read. */
  readonly swaps: readonly SwapEntry[] | undefined;
  readonly shops: CheckedShops;
  readonly pots: readonly Pot[];
  readonly potRows: PotSheet;
  readonly gather: (lives: Iterable<PotLife>) => Shelf;
  readonly day: IsoDate;
}

interface Beside extends Given {
  /** By the key of their names. */
  readonly units: ReadonlyMap<string, Unit>;
  readonly nearUnit: (written: string) => string;
  /** What an empty pot of a paint weighs, where the pots sheet says so. */
  readonly emptyGOf: ReadonlyMap<string, number>;
}

/** Log rows that can be taken and hold still, those of the first sheet first. */
export function checkLog(sheets: readonly LogSheet[], given: Given): readonly LogRow[] {
  if (sheets.every(({ rows }) => rows.length === 0)) return [];
  const beside = lookUp(given);
  const all = sheets.flatMap((sheet) => sheet.rows.map((row) => entryOf(sheet, row, beside)));
  const entries = takeRowsBack(all);
  for (const entry of entries) checkNames(entry, beside);
  const rows = new Map<LogRow, LogEntry>();
  for (const entry of entries) {
    const row = logRowOf(entry, beside);
    if (row !== undefined) rows.set(row, entry);
  }
  const shelf = given.gather(checkLogPots(rows, given.pots).flatMap(({ lives }) => lives));
  const uses = entries.filter((entry) => eventOf(entry) === 'used');
  const progress = checkLogProgress(uses, given);
  checkLogAmounts(uses, { shelf, progress });
  tellLogRepeats(entries);
  return [...rows.keys()];
}

function lookUp(given: Given): Beside {
  const book = makeNameBook();
  for (const { unit } of given.army.units) book.add(unit);
  const emptyGOf = new Map(
    given.potRows.rows.flatMap(({ paint = '', emptyG }) =>
      emptyG === undefined ? [] : [[given.paints?.find(paint) ?? paint, emptyG] as const],
    ),
  );
  const units = new Map(given.army.units.map((unit) => [foldName(unit.unit), unit]));
  return { ...given, units, nearUnit: book.nearest, emptyGOf };
}

/** A name that begins like a formula is written with an apostrophe in front, so that no spreadsheet runs it. */
function entryOf(sheet: LogSheet, row: LogEntry['row'], { paints, units }: Beside): LogEntry {
  const unguarded = (name: string | undefined): string =>
    name === undefined ? '' : foldName(unguardFormula(name));
  return {
    sheet,
    row,
    paint: paints?.find(row.paint ?? '') ?? paints?.find(unguarded(row.paint)),
    unit: units.get(foldName(row.unit ?? '')) ?? units.get(unguarded(row.unit)),
  };
}

function checkNames(
  { sheet, row, paint, unit }: LogEntry,
  { paints, army, schemes, shops, day, nearUnit }: Beside,
): void {
  if (row.date !== undefined && row.date > day) sheet.blame('date-ahead', row, 'date', { expected: day });
  if (row.paint !== undefined && paints !== undefined && paint === undefined) {
    sheet.blame('unknown-paint', row, 'paint', { expected: paints.nearest(row.paint) });
  }
  if (row.shop !== undefined && shops.shops.size > 0 && shopOf(row.shop, shops) === undefined)
    sheet.blame('log-unknown-shop', row, 'shop', { expected: shops.book.nearest(row.shop) });
  if (row.unit === undefined || army.rowOf === undefined) return;
  const isThere = [row.unit, unguardFormula(row.unit)].some((name) => army.rowOf?.has(foldName(name)));
  if (!isThere) sheet.blame('unknown-unit', row, 'unit', { expected: nearUnit(row.unit) });
  const steps = schemes.steps.get(unit?.scheme ?? '');
  if (row.step !== undefined && steps !== undefined && !steps.has(row.step)) {
    sheet.blame('unknown-step', row, 'step', { expected: stepsInWords(steps) });
  }
}

const shopOf = (written: string, { book }: CheckedShops): string | undefined =>
  book.find(written) ?? book.find(unguardFormula(written));

/** Undefined for a row that cannot be taken. */
function logRowOf(entry: LogEntry, beside: Beside): LogRow | undefined {
  const { sheet, row, paint } = entry;
  const { date, written } = row;
  const what = eventOf(entry);
  if (date === undefined || paint === undefined || what === undefined) return undefined;
  const kept = { row: row.row, date, paint };
  fill(kept, { file: sheet.table?.file, written });
  if (what === 'used') return fill(kept, useOf(entry));
  const reading = what === 'counted' ? readingOf(entry, beside) : {};
  if (reading === undefined) return undefined;
  fill(kept, { what });
  return fill(fill(kept, potsOf(entry, beside)), reading);
}

type Blank<T> = { readonly [K in keyof T]: T[K] | undefined };

/** Cells that are not blank are added to the row itself: a ledger has many, and spreads take thrice as long. */
function fill(row: LogRow, cells: Blank<Partial<LogRow>>): LogRow {
  const filled: Record<string, unknown> = row as unknown as Record<string, unknown>;
  for (const key of Object.keys(cells) as (keyof LogRow)[])
    if (cells[key] !== undefined) filled[key] = cells[key];
  return row;
}

function useOf({ sheet, row, unit }: LogEntry): Blank<Partial<LogRow>> {
  const { step, figures, beforeG, afterG, usedMl } = row;
  tellIdle(sheet, row, idleOfUse);
  return { unit: unit?.unit, step, figures, beforeG, afterG, usedMl };
}

function potsOf({ sheet, row, paint = '' }: LogEntry, { shops, paintOf }: Beside): Blank<Partial<LogRow>> {
  const { what, sizeMl, pots, price, postage, shop } = row;
  tellIdle(sheet, row, idleOfPots);
  if (what !== 'counted') tellIdle(sheet, row, ['left']);
  if (what !== 'bought') tellIdle(sheet, row, ['price', 'postage']);
  const container = sizeMl === undefined ? undefined : pickContainer(sizeMl, paintOf.get(paint)?.kind);
  const from = shop === undefined ? undefined : (shopOf(shop, shops) ?? shop);
  return { sizeMl, container, pots, priceMinor: price, postageMinor: postage, shop: from };
}

/** Undefined where the count cannot be taken, which is told. */
function readingOf({ sheet, row, paint = '' }: LogEntry, { emptyGOf }: Beside): Partial<LogRow> | undefined {
  const { left, pots } = row;
  if (left === undefined) {
    if (pots === undefined && !['left', 'pots'].some((key) => row.bad.includes(key)))
      sheet.blame('log-nothing-counted', row, 'left');
    return pots === undefined ? undefined : {};
  }
  if (left.how !== 'in g') return { left };
  const emptyGrams = emptyGOf.get(paint);
  if (emptyGrams === undefined) sheet.blame('log-empty-missing', row, 'left');
  else if (left.grams < emptyGrams) sheet.blame('below-empty', row, 'left', { expected: `${emptyGrams} g` });
  else return { left: { how: 'weighed', grams: left.grams, emptyGrams } };
  return undefined;
}

const idleOfUse = ['left', 'sizeMl', 'pots', 'price', 'postage', 'shop'] as const;
const idleOfPots = ['unit', 'step', 'figures', 'beforeG', 'afterG', 'usedMl'] as const;

/** Cells that a row of its kind does not need. */
function tellIdle(sheet: LogSheet, row: LogEntry['row'], keys: readonly (keyof Tables['log'])[]): void {
  for (const key of keys)
    if (row[key] !== undefined) sheet.blame('log-idle-cell', row, key, { expected: row.what ?? 'nothing' });
}
