// Tests: what the program takes from sheets, cell by cell. In: a path. Out: its tables with the values of their cells as
// text, its problems, and the columns that it says it left alone.
import { registry } from '../../../src/assumptions/registry.js';
import type { Problem } from '../../../src/model/problem.js';
import type { SheetName } from '../../../src/model/words.js';
import { checkSettings } from '../../../src/sheets/check/check-settings.js';
import { checkTables } from '../../../src/sheets/check/check-tables.js';
import { makeFindings } from '../../../src/sheets/check/collect-findings.js';
import { findCurrency } from '../../../src/sheets/check/find-currency.js';
import { foldName } from '../../../src/sheets/check/fold-name.js';
import { priceKind } from '../../../src/sheets/check/read-cell/read-price.js';
import { readRows } from '../../../src/sheets/check/read-rows.js';
import { zoneWords } from '../../../src/sheets/columns/choice-words.js';
import { type Column, kindOf, type Terms } from '../../../src/sheets/columns/column.js';
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
  /** By file and sheet, headers that nothing is read from. */
  readonly leftAlone: readonly {
    readonly file: string;
    readonly sheet: SheetName;
    readonly headers: readonly string[];
  }[];
}

/** Everything that the sheets can say is taken, also where the program goes no further for an error elsewhere. */
export async function readAnswer(path: string, today: string): Promise<Answer> {
  const read = await readTables(path);
  const { problems, read: sheetsRead } = checkTables(read, { assumptions: registry, today });
  const table = read.tables.find(({ sheet }) => sheet === 'settings');
  const unpriced = { price: priceKind({ currency: undefined, locale: 'en' }) };
  const given = { table, terms: unpriced, findings: makeFindings() };
  const { currency, settings } = checkSettings(given, registry, findCurrency(read.tables));
  const terms = { price: priceKind({ currency, locale: settings.locale }) };
  const sheets = read.tables.map((one) => answerOf(one, terms, settings.currency));
  const leftAlone = sheetsRead.map(({ file, sheet, columns }) => {
    const headers = columns.flatMap(({ column, header }) => (column === undefined ? [header] : []));
    return { file, sheet, headers };
  });
  return { sheets, problems, leftAlone };
}

/** A sheet in parts says of which worksheet it is. */
function placeOf({ file: written }: Table): Pick<AnswerSheet, 'file' | 'worksheet'> {
  const [file = written, worksheet] = written.split(', sheet ');
  return worksheet === undefined ? { file } : { file, worksheet };
}

/** Zones are known once all sheets are read: there a word of another language means one that is ready-made. */
function zoneMeant(written: unknown): unknown {
  const meant = Object.entries(zoneWords).find(([, others]) =>
    others.split(', ').some((other) => foldName(other) === foldName(String(written))),
  );
  return meant === undefined ? written : meant[0];
}

function answerOf(table: Table, terms: Terms, currency: string): AnswerSheet {
  const sheet = readRows(table.sheet, { table, terms, findings: makeFindings() });
  const columns: Readonly<Record<string, Column>> = sheet.columns;
  const keys = Object.keys(columns).filter((key) => sheet.indexOf(key) !== -1);
  const called = (key: string): string => columns[key]?.header ?? key;
  const rows = sheet.rows.map((row) => {
    const values = keys.map((key) => {
      const column = columns[key];
      const isPrice = column !== undefined && kindOf(column, terms).money !== undefined;
      const value = (row as object as Readonly<Record<string, unknown>>)[key];
      return [called(key), showValue(key === 'zone' ? zoneMeant(value) : value, isPrice ? currency : '')];
    });
    return [row.row, Object.fromEntries(values.filter(([, value]) => value !== undefined))];
  });
  return {
    is: table.sheet,
    ...placeOf(table),
    columns: Object.fromEntries(keys.map((key) => [columnLetters(sheet.indexOf(key) + 1), called(key)])),
    headers: Object.fromEntries(table.headers.map((header, at) => [columnLetters(at + 1), header])),
    rows: Object.fromEntries(rows),
  };
}
