// Command line: --undo. In: the log, what a command writes. Out: rows that take its last writing back.
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { cellText } from '../sheets/check/read-cell/cell-kind.js';
import { tables } from '../sheets/columns/columns.js';
import { takesBack } from '../sheets/columns/log-columns.js';
import { columnKey } from '../sheets/spell-headers.js';
import { UsageError } from './end-run.js';
import type { Ledger } from './open-ledger.js';

type What = 'used' | 'bought' | 'arrived' | 'counted' | 'thrown away';

/** All rows that one command wrote at once; of rows written by hand the last. Throws a UsageError where there is none. */
export function undoRows({ read, file, sheets }: Ledger, what: What): TypedCells[] {
  const rows = (sheets?.log ?? []).filter((row) => row.file === file && (row.what ?? 'used') === what);
  const last = rows.reduce((late, row) => (late === undefined || row.row > late.row ? row : late), rows[0]);
  if (last === undefined) throw new UsageError(`The log has nothing ${what} that could be taken back.`);
  const isOne = (row: typeof last): boolean =>
    last.written === undefined ? row === last : row.written === last.written;
  const table = read.tables.find((one) => one.sheet === 'log' && one.file === file);
  const headers = new Map(
    table?.headers.map((header, at) => [columnKey({ sheet: 'log' }, header), at] as const).toReversed(),
  );
  return rows.filter(isOne).map((row) => {
    const cells = table?.rows.find((one) => one.row === row.row)?.cells ?? [];
    const { date, paint, unit, shop } = row;
    const names: Readonly<Record<string, string | undefined>> = { date, paint, unit, shop };
    const typed = Object.values(tables.log).map(({ header }): [string, string] => {
      const at = headers.get(columnKey({ sheet: 'log' }, header)) ?? -1;
      return [header, names[header] ?? cellText(cells[at] ?? '')];
    });
    const own = typed.filter(([header, text]) => text !== '' && header !== 'written' && header !== 'what');
    return new Map([...own, ['what', `${takesBack}${what}`]]);
  });
}
