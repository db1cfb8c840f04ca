// Checks: the settings sheet, read first, since its currency decides how prices are read. In: its table, the registry.
// Out: settings, with a default for each that is not there.
import type { Assumption, Assumptions } from '../../model/assumption.js';
import type { Override, Settings } from '../../model/sheets.js';
import { headerKey } from '../match-header.js';
import type { CellDate, Table } from '../table.js';
import { type Findings, useDefault } from './collect-findings.js';
import { findNearest } from './find-nearest.js';
import { column, type RowOf } from './open-sheet.js';
import { type CellKind, Mistake, readCell, type Written } from './read-cell/cell-kind.js';
import { choiceKind } from './read-cell/read-choice.js';
import { dateKind } from './read-cell/read-date.js';
import { nameKind } from './read-cell/read-name.js';
import { readOverride } from './read-cell/read-override.js';
import { priceKind } from './read-cell/read-price.js';
import { currencyKind, localeKind, surePercentKind } from './read-cell/read-setting.js';
import { type ReadSheet, readRows } from './read-rows.js';

const anything: CellKind<Written | CellDate> = {
  noun: 'a value',
  read: (cell) => cell,
  readDate: (date) => date,
};

const settingsSchema = {
  name: column('name', nameKind),
  value: column('value', anything),
};

/** What each setting is when no row names it. */
const defaults = { currency: 'EUR', locale: 'en', restock: 'army' } as const;

const kinds = {
  currency: currencyKind,
  date: dateKind,
  locale: localeKind,
  surePercent: surePercentKind,
  buy: choiceKind('likely or goes', ['likely', 'goes']),
  restock: choiceKind('army or shelf', ['army', 'shelf']),
} as const;

/** A sum, which can be read once the currency is known. */
const sum = 'againMinor';

type Key = keyof typeof kinds | typeof sum;

const keys: ReadonlyMap<string, Key> = new Map<string, Key>([
  ['currency', 'currency'],
  ['date', 'date'],
  ['locale', 'locale'],
  ['sure%', 'surePercent'],
  ['buy', 'buy'],
  ['again', sum],
  ['restock', 'restock'],
]);

const names: Readonly<Record<Key, string>> = {
  currency: 'currency',
  date: 'date',
  locale: 'locale',
  surePercent: 'sure %',
  buy: 'buy',
  againMinor: 'again',
  restock: 'restock',
};

const meanings: Readonly<Record<Key, string>> = {
  currency: 'EUR, which is assumed',
  date: 'the day on which the plan is made',
  locale: 'en, which is assumed',
  surePercent: 'no promise: as buy says',
  buy: 'goes: what is likely enough to be needed to be worth its price',
  againMinor: 'one postage more',
  restock: 'army: only what the plan needs',
};

type Row = RowOf<typeof settingsSchema>;

export interface CheckedSettings {
  readonly settings: Settings;
  /** Undefined where the setting is there but wrong: then no price can be blamed for its digits or sign. */
  readonly currency: string | undefined;
}

/** Every setting; a row by an assumption's name becomes an override. */
export function checkSettings(
  table: Table | undefined,
  assumptions: Assumptions,
  findings: Findings,
): CheckedSettings {
  const sheet = readRows('settings', settingsSchema, { table, findings });
  const byKey = new Map([...assumptions.values()].map((one) => [headerKey(one.name), one]));
  const given = new Map<string, Row>();
  const values: Partial<Record<Key, unknown>> = {};
  const overrides: Override[] = [];
  const set = (row: Row, value: unknown, take: (value: unknown) => void): void => {
    if (value instanceof Mistake) sheet.blame(value.code, row, 'value', { expected: value.expected });
    else take(value);
  };
  for (const row of sheet.rows) {
    const place = takeRow(row, { sheet, byKey, given });
    if (place === undefined || place === sum || row.value === undefined) continue;
    if (typeof place === 'string')
      set(row, readCell<unknown>(kinds[place], row.value), (value) => {
        values[place] = value;
      });
    else set(row, readOwn(row.value, place), (value) => overrides.push(value as Override));
  }
  const currency = currencyOf(values, given);
  const again = given.get('again');
  const { locale } = { ...defaults, ...values } as Settings;
  if (again?.value !== undefined)
    set(again, readCell(priceKind({ currency, locale }), again.value), (value) => {
      values[sum] = value;
    });
  askWhich(given, sheet);
  recordDefaults(given, findings);
  return { settings: settingsOf(values, overrides), currency };
}

/** A promise is one way to buy, and `buy` says another. */
function askWhich(given: ReadonlyMap<string, Row>, sheet: ReadSheet<typeof settingsSchema>): void {
  const [buy, sure] = [given.get('buy'), given.get('sure%')];
  if (buy !== undefined && sure !== undefined)
    sheet.blame('buy-and-sure', buy, 'name', { expected: `row ${sure.row}` });
}

/** What a row sets; undefined (and told) where it is unknown or stands twice. */
function takeRow(
  row: Row,
  {
    sheet,
    byKey,
    given,
  }: {
    readonly sheet: ReadSheet<typeof settingsSchema>;
    readonly byKey: ReadonlyMap<string, Assumption>;
    readonly given: Map<string, Row>;
  },
): Key | Assumption | undefined {
  if (row.name === undefined) return undefined;
  const key = headerKey(row.name);
  const place = keys.get(key) ?? byKey.get(key);
  if (place === undefined) {
    const known = [...Object.values(names), ...[...byKey.values()].map(({ name }) => name)];
    sheet.blame('unknown-setting', row, 'name', { expected: findNearest(row.name, known) });
    return undefined;
  }
  const before = given.get(key);
  if (before === undefined) given.set(key, row);
  else sheet.blame('repeated-name', row, 'name', { expected: `row ${before.row}` });
  return before === undefined ? place : undefined;
}

function readOwn(value: Written | CellDate, assumption: Assumption): Override | Mistake {
  if (typeof value === 'object') return new Mistake('date-not-wanted', 'a number');
  return readOverride(value, assumption);
}

function settingsOf(values: Partial<Record<Key, unknown>>, overrides: readonly Override[]): Settings {
  return { ...defaults, ...values, overrides } as Settings;
}

function currencyOf(
  values: Partial<Record<Key, unknown>>,
  given: ReadonlyMap<string, Row>,
): string | undefined {
  const { currency } = values;
  if (typeof currency === 'string') return currency;
  return given.has('currency') ? undefined : defaults.currency;
}

function recordDefaults(given: ReadonlyMap<string, Row>, findings: Findings): void {
  for (const [key, setting] of keys) {
    if (given.has(key)) continue;
    useDefault(findings, { sheet: 'settings', column: names[setting], rows: 1, meaning: meanings[setting] });
  }
}
