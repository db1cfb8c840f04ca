// Checks: the settings sheet, read first, since its currency decides how prices are read. In: its table, the registry.
// Out: settings, with a default for each that is not there.
import type { Assumption, Assumptions } from '../../model/assumption.js';
import type { Override, Settings } from '../../model/sheets.js';
import { settingNames, settingRows } from '../columns/setting-rows.js';
import { headerKey } from '../match-header.js';
import type { CellDate } from '../table.js';
import { type Findings, useDefault } from './collect-findings.js';
import { findNearest } from './find-nearest.js';
import type { From } from './open-sheet.js';
import { Mistake, readCell, type Written } from './read-cell/cell-kind.js';
import { readOverride } from './read-cell/read-override.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';

type Key = keyof typeof settingRows;
type Row = RowIn<'settings'>;

const rows = Object.entries(settingRows).map(([key, of]) => [key as Key, of] as const);
/** By the key of its name. */
const keys: ReadonlyMap<string, Key> = new Map(rows.map(([key, { name }]) => [headerKey(name), key]));

export interface CheckedSettings {
  readonly settings: Settings;
  /** Undefined where the setting is there but wrong: then no price can be blamed for its digits or sign. */
  readonly currency: string | undefined;
}

/** Every setting; a row by an assumption's name becomes an override. `borne` is the currency that all prices bear. */
export function checkSettings(from: From, assumptions: Assumptions, borne?: string): CheckedSettings {
  const sheet = readRows('settings', from);
  const byKey = new Map([...assumptions.values()].map((one) => [headerKey(one.name), one]));
  const given = new Map<string, Row>();
  const values: Partial<Record<Key, unknown>> = {};
  const overrides: Override[] = [];
  const take = (row: Row, value: unknown, keep: (value: unknown) => void): void => {
    if (value instanceof Mistake) sheet.blame(value.code, row, 'value', { expected: value.expected });
    else keep(value);
  };
  const sums: (() => void)[] = [];
  for (const row of sheet.rows) {
    const { value } = row;
    const place = takeRow(row, { sheet, byKey, given });
    if (place === undefined || value === undefined) continue;
    if (typeof place !== 'string') {
      take(row, readOwn(value, place), (own) => overrides.push(own as Override));
      continue;
    }
    const { kind } = settingRows[place];
    const read = (): void => {
      const known =
        typeof kind === 'function'
          ? kind({ ...settingsOf(values, []), currency: currencyOf(values, given) })
          : kind;
      take(row, readCell<unknown>(known, value), (set) => {
        values[place] = set;
      });
    };
    if (typeof kind === 'function') sums.push(read);
    else read();
  }
  const meant = borne === usDollar && isOfOtherDollar(values.locale) ? undefined : borne;
  if (meant !== undefined && !given.has('currency')) values.currency = meant;
  for (const read of sums) read();
  askWhich(given, sheet);
  recordDefaults(given, from.findings, meant);
  return { settings: settingsOf(values, overrides), currency: currencyOf(values, given) };
}

/** A promise is one way to buy, and `buy` says another. */
function askWhich(given: ReadonlyMap<string, Row>, sheet: SheetOf<'settings'>): void {
  const [buy, sure] = [given.get('buy'), given.get('sure%')];
  if (buy !== undefined && sure !== undefined)
    sheet.blame('buy-and-sure', buy, 'name', { expected: `row ${sure.row}` });
}

const usDollar = 'USD';

/** `$` is some other dollar where a locale names another country than the United States. */
function isOfOtherDollar(locale: unknown): boolean {
  const region = typeof locale === 'string' ? new Intl.Locale(locale).region : undefined;
  return region !== undefined && region !== 'US';
}

/** What a row sets; undefined (and told) where it is unknown or stands twice. */
function takeRow(
  row: Row,
  {
    sheet,
    byKey,
    given,
  }: {
    readonly sheet: SheetOf<'settings'>;
    readonly byKey: ReadonlyMap<string, Assumption>;
    readonly given: Map<string, Row>;
  },
): Key | Assumption | undefined {
  if (row.name === undefined) return undefined;
  const key = headerKey(row.name);
  const place = keys.get(key) ?? byKey.get(key);
  if (place === undefined) {
    const known = [...settingNames, ...[...byKey.values()].map(({ name }) => name)];
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
  const blank = rows.flatMap(([key, { blank }]) => ('value' in blank ? [[key, blank.value]] : []));
  return { ...Object.fromEntries(blank), ...values, overrides } as Settings;
}

function currencyOf(
  values: Partial<Record<Key, unknown>>,
  given: ReadonlyMap<string, Row>,
): string | undefined {
  const { currency } = values;
  if (typeof currency === 'string') return currency;
  return given.has('currency') ? undefined : settingRows.currency.blank.value;
}

function recordDefaults(
  given: ReadonlyMap<string, Row>,
  findings: Findings,
  borne: string | undefined,
): void {
  for (const [key, { name, blank }] of rows) {
    if (name === settingRows.shelf.name) continue;
    // A promise is a way to buy: then `buy` is not left to its default.
    if (given.has(headerKey(name)) || (name === 'buy' && given.has('sure%'))) continue;
    const isBorne = key === 'currency' && borne !== undefined;
    const meaning = isBorne ? `${borne}, which all prices bear` : blank.means;
    useDefault(findings, { sheet: 'settings', column: name, rows: 1, meaning });
  }
}
