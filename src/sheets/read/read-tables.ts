// Readers: the painter's folder or workbook to plain tables. In: a path. Out: every table found, every
// problem of files and tables. The one entrance of this stage.
import { lstatSync, statSync } from 'node:fs';
import { basename, extname, join, resolve } from 'node:path';
import { missingSheets, type SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { settleColumns } from '../check/settle-columns.js';
import type { ReadTables, Table } from '../table.js';
import { type FoundProblem, type Grid, neededHeaders, nothingRead, type ReadGrids } from './grid.js';
import { listsPots } from './lists-pots.js';
import { makeTable } from './make-table.js';
import { matchSheetName } from './match-sheet-name.js';
import { readBook } from './read-book.js';
import { deadLink, MOST_BOOK_MB, readBytes, unreadable } from './read-bytes.js';
import { type Replacement, replaceSheet } from './replace-sheet.js';

const WORKBOOK_ENDINGS: readonly string[] = ['.xlsx', '.xlsm', '.ods', '.xls'];
const TEXT_ENDINGS: readonly string[] = ['.csv', '.tsv', '.txt'];

/**
 * Reads a folder of CSV files, or one workbook with the log.csv and columns.csv beside it; a folder that holds one workbook and no CSV
 * is read as that workbook. What a painter can do wrong is in the
 * problems, never thrown; a path that cannot be read gives no tables and one problem. Nothing is ever written.
 */
export async function readTables(path: string, instead: readonly Replacement[] = []): Promise<ReadTables> {
  const file = basename(resolve(path)) || path;
  let source: Source = await readSource(path, file).catch((error: unknown) =>
    nothingRead(unreadable(error, { file })),
  );
  for (const one of instead) source = replaceSheet(source, one);
  source = withPots(source);
  const tables: Table[] = [];
  const problems = [...source.problems];
  const make = (grid: Grid): Table | undefined => {
    const made = makeTable(grid);
    for (const one of made.problems) problems.push(one);
    return made.table;
  };
  const isOfHeaders = ({ sheet }: Grid): boolean => sheet === 'columns';
  const [ofHeaders] = source.grids.filter(isOfHeaders);
  const settled = settleColumns(ofHeaders && make(ofHeaders));
  for (const grid of source.grids.filter((one) => !isOfHeaders(one))) {
    const table = make({ ...grid, called: settled.called.get(grid.sheet) });
    if (table !== undefined) tables.push(table);
  }
  for (const one of settled.problemsBeside(tables)) problems.push(one);
  // Where no sheet was seen at all, one problem has said so already.
  const blank = new Map(tables.flatMap((table) => (table.rows.length === 0 ? [[table.sheet, table]] : [])));
  const isThere = (sheet: SheetName): boolean => source.seen.has(sheet) && !blank.has(sheet);
  for (const sheet of source.seen.size === 0 ? [] : missingSheets(isThere)) {
    const found = blank.get(sheet);
    const place = { file: source.isFolder === true ? `${sheet}.csv` : (source.file ?? file), sheet };
    problems.push(
      found === undefined
        ? problem('missing-sheet', place, { expected: neededHeaders(sheet) })
        : problem('header-only', { file: found.file, sheet, row: found.headerRow }),
    );
  }
  return { tables, problems };
}

interface Source extends ReadGrids {
  readonly isFolder?: boolean;
  /** The workbook that was read. */
  readonly file?: string;
}

/** Where no sheet is called pots, those called paints with the sizes of their pots are those. */
function withPots(source: Source): Source {
  const { grids, seen } = source;
  const [paints] = grids.filter(({ sheet }) => sheet === 'paints');
  if (seen.has('pots') || paints === undefined || !listsPots(paints)) return source;
  const isPaints = (sheet: SheetName): boolean => sheet === 'paints';
  return {
    ...source,
    grids: grids.map((grid) => (isPaints(grid.sheet) ? { ...grid, sheet: 'pots' } : grid)),
    seen: new Set([...seen].map((sheet) => (isPaints(sheet) ? 'pots' : sheet))),
  };
}

/** Each reader is loaded when its kind of source is met. */
async function readSource(path: string, file: string): Promise<Source> {
  const kind = kindOf(path);
  if (kind === 'nothing') return nothingRead(problem('missing-path', { file }));
  if (kind === 'dead link') return nothingRead(deadLink({ file }));
  if (kind !== 'folder') return readFile(path, { file, kind });
  const { readFolder } = await import('./read-folder.js');
  const read = await readFolder(path, file);
  return typeof read === 'string'
    ? readFile(join(path, read), { file: read, kind: 'file' })
    : { ...read, isFolder: true };
}

/** A workbook, with the log beside it. */
async function readFile(
  path: string,
  { file, kind }: { readonly file: string; readonly kind: 'file' | 'other' },
): Promise<Source> {
  const ending = extname(file).toLowerCase();
  if (kind === 'other')
    return nothingRead(problem('unknown-file-type', { file }, { found: 'no ordinary file' }));
  if (TEXT_ENDINGS.includes(ending)) return nothingRead(await loneText(path, file));
  if (!WORKBOOK_ENDINGS.includes(ending)) {
    return nothingRead(problem('unknown-file-type', { file }, { found: ending || 'no ending' }));
  }
  const read = readBytes(path, { file }, MOST_BOOK_MB);
  if ('trouble' in read) return nothingRead(read.trouble);
  const book = await readBook(read.bytes, file, matchSheetName(nameOf(file)));
  if (book.grids.length === 0) return book;
  const { readBeside } = await import('./read-log-beside.js');
  const beside = readBeside(
    path,
    book.grids.find(({ sheet }) => sheet === 'columns'),
  );
  return {
    file,
    grids: [...book.grids, ...beside.grids],
    seen: book.seen,
    problems: [...book.problems, ...beside.problems],
  };
}

async function loneText(path: string, file: string): Promise<FoundProblem> {
  const { fileListsPots } = await import('./read-folder.js');
  const isPots = matchSheetName(nameOf(file)) === undefined && fileListsPots(path, file);
  const hint = 'If it holds your pots, call it pots.csv and name its folder.';
  return problem('lone-sheet', { file }, isPots ? { hint } : {});
}

const nameOf = (file: string): string => basename(file, extname(file));

function kindOf(path: string): 'nothing' | 'dead link' | 'folder' | 'file' | 'other' {
  try {
    const found = statSync(path);
    if (found.isDirectory()) return 'folder';
    return found.isFile() ? 'file' : 'other';
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && ['ENOENT', 'ENOTDIR'].includes(String(error.code))))
      throw error;
    return isLink(path) ? 'dead link' : 'nothing';
  }
}

function isLink(path: string): boolean {
  try {
    return lstatSync(path).isSymbolicLink();
  } catch {
    return false;
  }
}
