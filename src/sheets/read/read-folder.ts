// Readers: a folder of CSV files, and of workbooks called as a sheet is, to grids. In: its path and name. Out: a grid for each sheet, problems of
// files.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { joinOr } from '../check/find-nearest.js';
import { makeRoom, type Room, takeCells, takeLetters, takeRows } from './count-room.js';
import type { FoundProblem, Grid, ReadGrids } from './grid.js';
import { joinParts, type Part } from './join-parts.js';
import { isBesideBook, type PickedFiles, pickSheetFiles, WORKBOOK_ENDINGS } from './pick-sheet-files.js';
import { readBook } from './read-book.js';
import { MOST_BOOK_MB, MOST_TEXT_MB, readBytes } from './read-bytes.js';
import { readCsv } from './read-csv.js';
import { WorkbookError } from './workbook-error.js';

/**
 * Reads the files that are named as a sheet; other files are left alone. A folder without any gives one
 * problem; one that holds nothing but a workbook gives its name, for the caller to read. Throws what the file system says
 * where the folder itself cannot be listed.
 */
export async function readFolder(path: string, folder: string): Promise<ReadGrids | string> {
  const entries = readdirSync(path, { withFileTypes: true });
  const namesOf = (isFolder: boolean): string[] =>
    entries.filter((entry) => entry.isDirectory() === isFolder).map(({ name }) => name);
  const picked = pickSheetFiles(namesOf(false));
  if (picked.loneWorkbook !== undefined) return picked.loneWorkbook;
  const folders = [...pickSheetFiles(namesOf(true)).sheets].filter(([sheet]) => !picked.sheets.has(sheet));
  const problems = [...folders.map(folderForSheet), ...questions(picked)];
  // Beside workbooks a log and a columns sheet belong to one of them.
  const isBare = picked.workbooks.length > 0 && [...picked.sheets.keys()].every(isBesideBook);
  if (picked.sheets.size + folders.length === 0 || isBare)
    return { grids: [], seen: new Set(), problems: [noSheets(folder, picked, entries.length), ...problems] };

  const grids: Grid[] = [];
  const room = makeRoom();
  for (const [sheet, files] of picked.sheets) {
    if (picked.inParts.has(sheet)) {
      const parts = readParts(path, { files, sheet }, room);
      problems.push(...parts.problems);
      grids.push(...parts.grids);
      continue;
    }
    const [file = '', ...others] = files;
    if (others.length > 0)
      problems.push(problem('two-of-one-sheet', { file }, { found: files.join(', '), expected: sheet }));
    const read = readFileOfSheet(join(path, file), { file, sheet }, room);
    for (const one of read.problems) problems.push(one);
    if (read.grid !== undefined) grids.push(read.grid);
  }
  const seen = new Set([...picked.sheets, ...folders].map(([sheet]) => sheet));
  const among = await readBooksAmong(path, picked, { seen, room });
  const all = [...grids, ...among.grids];
  return { grids: all, seen: among.seen, problems: [...problems, ...among.problems] };
}

function readParts(
  path: string,
  { files, sheet }: { readonly files: readonly string[]; readonly sheet: SheetName },
  room: Room,
): { readonly grids: readonly Grid[]; readonly problems: readonly FoundProblem[] } {
  const parts: Part[] = [];
  const problems: FoundProblem[] = [];
  for (const file of files) {
    const read = readFileOfSheet(join(path, file), { file, sheet }, room);
    problems.push(...read.problems);
    if (read.grid !== undefined) parts.push({ name: file, grid: read.grid });
  }
  const joined = joinParts(parts);
  return { grids: joined.grids, problems: [...problems, ...joined.problems] };
}

/** Workbooks that are called as a sheet is, which is not there as text; of a sheet that two of them hold the first counts. */
async function readBooksAmong(
  path: string,
  { ofOtherType }: PickedFiles,
  { seen: before, room }: { readonly seen: ReadonlySet<SheetName>; readonly room: Room },
): Promise<ReadGrids> {
  const grids: Grid[] = [];
  const problems: FoundProblem[] = [];
  const seen = new Set(before);
  for (const { file } of ofOtherType.filter(({ ending }) => isReadable(ending))) {
    const book = await readBookAmong(join(path, file), file, room);
    for (const one of book.problems) problems.push(one);
    for (const grid of book.grids) {
      const { sheet } = grid;
      if (seen.has(sheet))
        problems.push(problem('two-of-one-sheet', { file }, { found: file, expected: sheet }));
      else grids.push(grid);
      seen.add(sheet);
    }
  }
  return { grids, seen, problems };
}

const isReadable = (ending: string): boolean => WORKBOOK_ENDINGS.includes(ending.toLowerCase());

/** A workbook that is called as a sheet is; what it holds is taken from the room of the folder. */
async function readBookAmong(path: string, file: string, room: Room): Promise<ReadGrids> {
  const none = (trouble: FoundProblem): ReadGrids => ({ grids: [], seen: new Set(), problems: [trouble] });
  const read = readBytes(path, { file }, MOST_BOOK_MB);
  if ('trouble' in read) return none(read.trouble);
  const book = await readBook(read.bytes, file);
  try {
    for (const { rows } of book.grids) takeAll(room, rows);
    return book;
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    return none(problem(error.fault, { file }, { found: error.message, expected: error.most }));
  }
}

function takeAll(room: Room, rows: Grid['rows']): void {
  takeRows(room, rows.length);
  for (const { cells } of rows) {
    takeCells(room, cells.length);
    for (const cell of cells) if (typeof cell === 'string') takeLetters(room, cell.length);
  }
}

const folderForSheet = ([sheet, [file = '']]: readonly [SheetName, readonly string[]]): FoundProblem =>
  problem('folder-for-sheet', { file, sheet }, { expected: sheet });

function readFileOfSheet(
  path: string,
  place: { readonly file: string; readonly sheet: SheetName },
  room: Room,
): { grid: Grid | undefined; problems: readonly FoundProblem[] } {
  const read = readBytes(path, place, MOST_TEXT_MB);
  return 'trouble' in read ? { grid: undefined, problems: [read.trouble] } : readCsv(read.bytes, place, room);
}

function noSheets(file: string, { workbooks }: PickedFiles, entries: number): FoundProblem {
  if (entries === 0) return problem('empty-folder', { file });
  if (workbooks.length === 0) return problem('no-sheets', { file });
  const hint = `If they are in ${joinOr(workbooks)}, name that workbook instead of the folder.`;
  return problem('no-sheets', { file }, { hint });
}

function questions({ near, ofOtherType, besides }: PickedFiles): FoundProblem[] {
  return [
    ...besides.map(({ file, sheet }) => problem('part-beside-sheet', { file }, { expected: sheet })),
    ...near.map(({ file, sheet, ending }) =>
      problem('near-file-name', { file }, { found: `${sheet}${ending}`, expected: sheet }),
    ),
    ...ofOtherType
      .filter(({ ending }) => !isReadable(ending))
      .map(({ file, sheet }) => problem('sheet-of-other-type', { file }, { expected: sheet })),
  ];
}
