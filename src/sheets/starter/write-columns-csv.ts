// Starter: what the painter's own headers were taken for, as a columns sheet. In: how sheets were read. Out: a file to be mended.
import type { SheetRead } from '../../model/sheets.js';
import { guardFormula } from '../append/guard-formula.js';
import { columns } from '../columns/columns.js';
import { csvOf, type StarterFile } from './write-starter-csv.js';

/**
 * A row for each header that is not the own name of its column. One that was asked about bears a question mark, which is
 * taken away by hand; one of the painter's own has no column. Undefined where there is none.
 */
export function writeColumnsCsv(read: readonly SheetRead[]): StarterFile | undefined {
  const rows = read.flatMap(({ sheet, columns: of }) =>
    of
      .filter(({ isOwn }) => !isOwn)
      .map(({ header, column, maybe }) => {
        const meant = column ?? (maybe === undefined ? '' : `${maybe}?`);
        return [sheet, meant, guardFormula(header.replace(/\s+/g, ' ').trim())];
      }),
  );
  if (rows.length === 0) return undefined;
  return { name: 'columns.csv', content: csvOf({ columns: columns.columns, rows }) };
}
