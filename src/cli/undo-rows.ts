// Command line: --undo. In: the log, what a command writes. Out: rows that take its last writing back.
import { potsThere } from '../plan-army.js';
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { cellText } from '../sheets/check/read-cell/cell-kind.js';
import { tables } from '../sheets/columns/columns.js';
import { takesBack } from '../sheets/columns/log-columns.js';
import { columnKey } from '../sheets/spell-headers.js';
import { UsageError } from './end-run.js';
import type { Ledger } from './open-ledger.js';
import type { Sheets } from './read-or-show.js';

type What = 'used' | 'bought' | 'arrived' | 'counted' | 'thrown away';

/**
 * All rows that one command wrote at once; of rows written by hand the last. Of a shelf's log only what is not about another
 * army. Throws a UsageError where there is none, and for an order that has arrived.
 */
export function undoRows(ledger: Ledger, what: What): TypedCells[] {
  const { found, inTables, sheets } = ledger;
  const files = new Set(
    [found.files[0], found.next].flatMap((file) => (file === undefined ? [] : inTables(file))),
  );
  const rows = (sheets?.log ?? []).filter(
    ({ file = '', what: event = 'used' }) => files.has(file) && event === what,
  );
  const last = rows.findLast((row) => row.unit !== undefined || openText(ledger, row)('unit') === '');
  if (last === undefined) throw new UsageError(`The log has nothing ${what} that could be taken back.`);
  const isOne = (row: Row): boolean =>
    last.written === undefined ? row === last : row.written === last.written;
  const taken = rows.filter(isOne);
  if (what === 'bought' && sheets !== undefined) tellArrived(sheets, taken);
  return taken.map((row) => {
    const text = openText(ledger, row);
    const { date, paint, unit, shop } = row;
    const names: Readonly<Record<string, string | undefined>> = { date, paint, unit, shop };
    const typed = Object.values(tables.log).map(
      ({ header }) => [header, names[header] ?? text(header)] as const,
    );
    const own = typed.filter(([header, cell]) => cell !== '' && header !== 'written' && header !== 'what');
    return new Map([...own, ['what', `${takesBack}${what}`]]);
  });
}

type Row = Sheets['log'][number];

/** Without its order a pot could not have arrived. */
function tellArrived(sheets: Sheets, taken: readonly Row[]): void {
  const countStanding = (log: readonly Row[]): number =>
    potsThere({ ...sheets, log }).filter(({ ordered }) => !ordered).length;
  const without = sheets.log.filter((row) => !taken.includes(row));
  if (countStanding(without) < countStanding(sheets.log))
    throw new UsageError(
      `What was bought on ${taken[0]?.date} has arrived, all of it or some. Take that back first, with halfpot arrived --undo.`,
    );
}

/** What its file says in a column. */
function openText({ home, inTables }: Ledger, { file, row }: Row): (header: string) => string {
  const table = home.tables.find((one) => one.sheet === 'log' && inTables(one.file) === file);
  const cells = table?.rows.find((one) => one.row === row)?.cells ?? [];
  const keyOf = (header: string): string => columnKey({ sheet: 'log' }, header);
  return (header) => {
    const at = table?.headers.findIndex((one) => keyOf(one) === keyOf(header)) ?? -1;
    return cellText(cells[at] ?? '');
  };
}
