// Checks: what the columns sheet says of the headers of others. In: its table. Out: what each header means, by sheet; what is
// wrong with its rows.
import type { Problem } from '../../model/problem.js';
import type { SheetName } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import { unguardFormula } from '../append/guard-formula.js';
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant } from '../spell-headers.js';
import type { Called, Table } from '../table.js';
import { makeFindings } from './collect-findings.js';
import { findNearest } from './find-nearest.js';
import { anyPrice } from './read-cell/read-price.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';
import { tellRepeat } from './tell-names.js';

export interface Settled {
  readonly called: ReadonlyMap<SheetName, Called>;
  /** Everything that is wrong with its rows, once the other tables are made. */
  readonly problemsBeside: (tables: readonly Table[]) => readonly Problem<ProblemCode>[];
}

/** Its rows, one by one; without a table nothing is said of any header. */
export function settleColumns(table: Table | undefined): Settled {
  const findings = makeFindings();
  const sheet = readRows('columns', { table, terms: { price: anyPrice }, findings });
  const called = new Map<SheetName, Map<string, string>>();
  const first = { column: new Map<string, string>(), called: new Map<string, string>() };
  const taken = sheet.rows.filter((row) => {
    const key = keyOf(row, sheet);
    if (row.sheet === undefined || row.called === undefined || key === undefined) return false;
    const [column, header] = [`${row.sheet} ${key}`, `${row.sheet} ${calledKey(row.called)}`];
    if (key !== '' && tellRepeat(sheet, row, { key: 'column', name: column, first: first.column }))
      return false;
    if (tellRepeat(sheet, row, { key: 'called', name: header, first: first.called })) return false;
    const ofSheet = called.get(row.sheet) ?? new Map<string, string>();
    called.set(row.sheet, ofSheet.set(calledKey(row.called), key));
    return true;
  });
  const problemsBeside: Settled['problemsBeside'] = (tables) => {
    for (const row of taken) tellMissing(row, sheet, tables);
    return findings.problems;
  };
  return { called, problemsBeside };
}

const calledKey = (called: string): string => headerKey(unguardFormula(called));

/** '' for a column of the painter's own; undefined where it is not settled yet, or is no column, which is told. */
function keyOf(row: RowIn<'columns'>, { blame }: SheetOf<'columns'>): string | undefined {
  if (row.sheet === undefined || row.bad.includes('column') || row.column?.endsWith('?')) return undefined;
  if (row.column === undefined) return '';
  const key = columnMeant({ sheet: row.sheet }, row.column)?.key;
  const known = columns[row.sheet].map(({ header }) => header);
  if (key === undefined) blame('unknown-column', row, 'column', { expected: findNearest(row.column, known) });
  return key;
}

function tellMissing(row: RowIn<'columns'>, { blame }: SheetOf<'columns'>, tables: readonly Table[]): void {
  const headers = tables.filter(({ sheet }) => sheet === row.sheet).flatMap((table) => table.headers);
  const written = unguardFormula(row.called ?? '');
  if (headers.length === 0 || headers.some((header) => headerKey(header) === headerKey(written))) return;
  blame('unknown-header', row, 'called', {
    expected: findNearest(
      written,
      headers.filter((one) => one !== ''),
    ),
  });
}
