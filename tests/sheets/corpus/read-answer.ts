// Tests: what the program takes from sheets, cell by cell. In: a path. Out: its tables with the values of their cells as
// text, its problems, and the columns that it says it left alone.
import { registry } from '../../../src/assumptions/registry.js';
import type { Problem } from '../../../src/model/problem.js';
import type { SheetName } from '../../../src/model/words.js';
import { armySchema } from '../../../src/sheets/check/check-army.js';
import { extrasSchema } from '../../../src/sheets/check/check-extras.js';
import { figuresSchema } from '../../../src/sheets/check/check-figures.js';
import { openOffers } from '../../../src/sheets/check/check-offers.js';
import { openPots } from '../../../src/sheets/check/check-pots.js';
import { checkSettings } from '../../../src/sheets/check/check-settings.js';
import { shopsSchema } from '../../../src/sheets/check/check-shops.js';
import { checkTables } from '../../../src/sheets/check/check-tables.js';
import { type LeftAlone, makeFindings } from '../../../src/sheets/check/collect-findings.js';
import { openLog } from '../../../src/sheets/check/open-log.js';
import { openSchemes } from '../../../src/sheets/check/open-schemes.js';
import type { Schema } from '../../../src/sheets/check/open-sheet.js';
import type { CellKind } from '../../../src/sheets/check/read-cell/cell-kind.js';
import { priceKind } from '../../../src/sheets/check/read-cell/read-price.js';
import { type ReadSheet, readRows } from '../../../src/sheets/check/read-rows.js';
import { columnLetters } from '../../../src/sheets/read/name-cell.js';
import { readTables } from '../../../src/sheets/read/read-tables.js';
import type { Table } from '../../../src/sheets/table.js';
import { showValue } from './show-value.js';

/** One table as the program takes it. */
export interface AnswerSheet {
  readonly is: SheetName;
  readonly file: string;
  /** Undefined where the program does not say from which worksheet it comes. */
  readonly worksheet?: string;
  /** By letter, what each column that is read is called. */
  readonly columns: Readonly<Record<string, string>>;
  /** By letter, each header as written. */
  readonly headers: Readonly<Record<string, string>>;
  /** By row and by what its column is called, the value of each cell that has one. */
  readonly rows: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export interface Answer {
  readonly sheets: readonly AnswerSheet[];
  readonly problems: readonly Problem[];
  readonly leftAlone: readonly LeftAlone[];
}

/** Everything that the sheets can say is taken, also where the program goes no further for an error elsewhere. */
export async function readAnswer(path: string, today: string): Promise<Answer> {
  const read = await readTables(path);
  const { problems, leftAlone } = checkTables(read, { assumptions: registry, today });
  const ofSettings = read.tables.find(({ sheet }) => sheet === 'settings');
  const { currency, settings } = checkSettings(ofSettings, registry, makeFindings());
  const price = priceKind({ currency, locale: settings.locale });
  const sheets = read.tables.flatMap((table) => {
    const open = openTable(table, price);
    return open === undefined ? [] : [answerOf(table, open, settings.currency)];
  });
  return { sheets, problems, leftAlone };
}

/** Undefined for kinds of sheets that the corpus has none of. */
function openTable(table: Table, price: CellKind<number>): ReadSheet<Schema> | undefined {
  const findings = makeFindings();
  const openers: Partial<Record<SheetName, () => unknown>> = {
    pots: () => openPots(table, price, findings),
    offers: () => openOffers(table, price, findings),
    shops: () => readRows('shops', shopsSchema(price), { table, findings }),
    figures: () => readRows('figures', figuresSchema(price), { table, findings }),
    schemes: () => openSchemes(table, findings),
    army: () => readRows('army', armySchema, { table, findings }),
    extras: () => readRows('extras', extrasSchema(price), { table, findings }),
    log: () => openLog(table, findings),
  };
  return openers[table.sheet]?.() as ReadSheet<Schema> | undefined;
}

function answerOf(table: Table, sheet: ReadSheet<Schema>, currency: string): AnswerSheet {
  const keys = Object.keys(sheet.schema).filter((key) => sheet.indexOf(key) !== -1);
  const called = (key: string): string => sheet.schema[key]?.header ?? key;
  const rows = sheet.rows.map((row) => {
    const values = keys.map((key) => {
      const value = (row as Readonly<Record<string, unknown>>)[key];
      return [called(key), showValue(value, sheet.schema[key]?.kind.money === undefined ? '' : currency)];
    });
    return [row.row, Object.fromEntries(values.filter(([, value]) => value !== undefined))];
  });
  return {
    is: table.sheet,
    file: table.file,
    columns: Object.fromEntries(keys.map((key) => [columnLetters(sheet.indexOf(key) + 1), called(key)])),
    headers: Object.fromEntries(table.headers.map((header, at) => [columnLetters(at + 1), header])),
    rows: Object.fromEntries(rows),
  };
}
