// Readers: the painter's folder or workbook to plain tables. In: a path. Out: every table found, every
// problem of files and tables. The one entrance of this stage.
import { stat } from 'node:fs/promises';
import { basename, extname, resolve } from 'node:path';
import { neededSheets } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import type { ReadTables, Table } from '../table.js';
import { type FoundProblem, neededHeaders, type ReadGrids } from './grid.js';
import { makeTable } from './make-table.js';
import { readBytes, unreadable } from './read-bytes.js';

const WORKBOOK_ENDINGS: readonly string[] = ['.xlsx', '.xlsm', '.xls'];
const TEXT_ENDINGS: readonly string[] = ['.csv', '.tsv', '.txt'];

/**
 * Reads a folder of CSV files, or one workbook with the log.csv beside it. What a painter can do wrong is in the
 * problems, never thrown; a path that cannot be read gives no tables and one problem. Nothing is ever written.
 */
export async function readTables(path: string): Promise<ReadTables> {
  const file = basename(resolve(path)) || path;
  const source = await readSource(path, file).catch((error: unknown) => nothing(unreadable(error, { file })));
  const tables: Table[] = [];
  const problems = [...source.problems];
  for (const grid of source.grids) {
    const made = makeTable(grid);
    if (made.table !== undefined) tables.push(made.table);
    problems.push(...made.problems);
  }
  // Where no sheet was seen at all, one problem has said so already.
  const missing = neededSheets.filter((sheet) => source.seen.size > 0 && !source.seen.has(sheet));
  for (const sheet of missing) {
    const place = { file: source.isFolder === true ? `${sheet}.csv` : file, sheet };
    problems.push(problem('missing-sheet', place, { expected: neededHeaders(sheet) }));
  }
  return { tables, problems };
}

interface Source extends ReadGrids {
  readonly isFolder?: boolean;
}

const nothing = (trouble: FoundProblem): Source => ({ grids: [], seen: new Set(), problems: [trouble] });

/** Each reader is loaded when its kind of source is met, since both lean on a library. */
async function readSource(path: string, file: string): Promise<Source> {
  const kind = await kindOf(path);
  const ending = extname(file).toLowerCase();
  if (kind === 'nothing') return nothing(problem('missing-path', { file }));
  if (kind === 'folder') {
    const { readFolder } = await import('./read-folder.js');
    return { ...(await readFolder(path, file)), isFolder: true };
  }
  if (kind === 'other') return nothing(problem('unknown-file-type', { file }, { found: 'no ordinary file' }));
  if (TEXT_ENDINGS.includes(ending)) return nothing(problem('lone-sheet', { file }));
  if (!WORKBOOK_ENDINGS.includes(ending)) {
    return nothing(problem('unknown-file-type', { file }, { found: ending || 'no ending' }));
  }
  const read = await readBytes(path, { file });
  if ('trouble' in read) return nothing(read.trouble);
  const [{ readWorkbook }, { readLogBeside }] = await Promise.all([
    import('./read-workbook.js'),
    import('./read-log-beside.js'),
  ]);
  const book = await readWorkbook(read.bytes, file);
  if (book.grids.length === 0) return book;
  const beside = await readLogBeside(path);
  return {
    grids: [...book.grids, ...beside.grids],
    seen: book.seen,
    problems: [...book.problems, ...beside.problems],
  };
}

async function kindOf(path: string): Promise<'nothing' | 'folder' | 'file' | 'other'> {
  try {
    const found = await stat(path);
    if (found.isDirectory()) return 'folder';
    return found.isFile() ? 'file' : 'other';
  } catch (error) {
    if (error instanceof Error && 'code' in error && ['ENOENT', 'ENOTDIR'].includes(String(error.code)))
      return 'nothing';
    throw error;
  }
}
