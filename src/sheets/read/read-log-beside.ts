// Readers: log.csv and columns.csv beside a workbook. In: the workbook's path. Out: their grids where they are the workbook's, problems.
import { join } from 'node:path';
import type { Place } from '../../model/problem.js';
import { problem } from '../../problems/catalogue.js';
import { settleColumns } from '../check/settle-columns.js';
import type { Called } from '../table.js';
import { namesColumn } from './find-header-row.js';
import { type FoundLog, findLog } from './find-log.js';
import type { FoundProblem, Grid } from './grid.js';
import { makeTable } from './make-table.js';
import { readCsvFile } from './read-csv.js';

interface ReadBeside {
  readonly grids: readonly Grid[];
  readonly problems: readonly FoundProblem[];
}

const nothing = (...problems: readonly FoundProblem[]): ReadBeside => ({ grids: [], problems });

/**
 * What `halfpot log` wrote for a workbook. A file of that name which is the log of CSV sheets, or of something that is
 * no paint, is left alone and said. No such file gives nothing.
 */
function readLogBeside(
  { folder, files, next, otherSheets, workbooks }: FoundLog,
  called: Called | undefined,
): ReadBeside {
  const own = [...files.slice(0, 1), ...(next === undefined ? [] : [next])];
  const [file] = own;
  if (file === undefined) return nothing();
  const place = { file, sheet: 'log' } as const;
  if (otherSheets.length > 0)
    return nothing(problem('log-of-csv-sheets', place, { found: otherSheets.join(', ') }));
  const read = own.map((one) => readLogFile(folder, { file: one, sheet: 'log' }, called));
  const grids = read.flatMap((one) => one.grids);
  const questions = grids.length === 0 ? [] : [...twoLogs(files), ...twoWorkbooks(workbooks, place)];
  return { grids, problems: [...questions, ...read.flatMap(({ problems }) => problems)] };
}

function readLogFile(
  folder: string,
  place: { readonly file: string; readonly sheet: 'log' },
  called: Called | undefined,
): ReadBeside {
  const { grid, problems } = readCsvFile(join(folder, place.file), place);
  if (grid === undefined) return nothing(...problems);
  if (grid.rows.length > 0 && !isOurs(grid, called)) return nothing(problem('log-of-something-else', place));
  return { grids: [grid], problems };
}

/** Other programs keep a log.csv too; paint is spoken of in ours alone, and what else it is called only beside a day. */
function isOurs({ rows }: Grid, called: Called | undefined): boolean {
  const of = { sheet: 'log', called } as const;
  return (
    namesColumn(rows, of, 'paint', true) || (namesColumn(rows, of, 'paint') && namesColumn(rows, of, 'date'))
  );
}

/** One that names no headers is of something else. */
function readColumnsBeside({ folder, columns, otherSheets }: FoundLog): ReadBeside {
  const [file] = columns;
  if (file === undefined || otherSheets.length > 0) return nothing();
  const place = { file, sheet: 'columns' } as const;
  const { grid, problems } = readCsvFile(join(folder, file), place);
  if (grid === undefined) return nothing(...problems);
  return namesColumn(grid.rows, grid, 'called', true) ? { grids: [grid], problems } : nothing();
}

/** The log.csv and the columns.csv that belong to a workbook, whose own columns sheet comes first. */
export function readBeside(path: string, ofBook: Grid | undefined): ReadBeside {
  const found = findLog(path);
  const columns = readColumnsBeside(found);
  const settling = ofBook ?? columns.grids[0];
  const { called } = settleColumns(settling && makeTable(settling).table);
  const log = readLogBeside(found, called.get('log'));
  return { grids: [...log.grids, ...columns.grids], problems: [...log.problems, ...columns.problems] };
}

function twoLogs(files: readonly string[]): FoundProblem[] {
  if (files.length < 2) return [];
  const details = { found: files.join(', '), expected: 'log' };
  return [problem('two-of-one-sheet', { file: files[0] ?? '' }, details)];
}

function twoWorkbooks(workbooks: readonly string[], place: Place): FoundProblem[] {
  if (workbooks.length < 2) return [];
  return [problem('log-of-two-workbooks', place, { found: workbooks.join(', ') })];
}
