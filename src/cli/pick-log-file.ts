// Command line: which file new rows of the log go to. In: the ledger, the rows. Out: its name in its folder.
import { lackingColumns, type TypedCells } from '../sheets/append/check-log-rows.js';
import type { FoundLog } from '../sheets/read/find-log.js';
import { nextLog } from '../sheets/read/pick-sheet-files.js';
import type { Table } from '../sheets/table.js';

interface Place {
  readonly found: FoundLog;
  /** The sheets beside the log. */
  readonly home: { readonly tables: readonly Table[] };
}

/** The log; a file of the program's own where that lacks a column of the rows, or stands in a workbook among CSV sheets. */
export function pickLogFile({ home, found }: Place, rows: readonly TypedCells[]): string {
  const { next, workbooks } = found;
  if (next !== undefined) return next;
  const [file] = found.files;
  const logs = home.tables.filter(({ sheet }) => sheet === 'log');
  if (file === undefined) return logs.length > 0 && workbooks.length === 0 ? nextLog : 'log.csv';
  const old = logs.find((log) => log.file === file);
  return old !== undefined && lackingColumns(old, rows).length > 0 ? nextLog : file;
}
