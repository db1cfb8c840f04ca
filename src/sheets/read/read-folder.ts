// Readers: a folder of CSV files, and of workbooks called as a sheet is, to grids. In: its path and name. Out: a grid for each sheet, problems of
// files.
import { readdirSync } from 'node:fs';
import { extname, join } from 'node:path';
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { joinOr } from '../check/find-nearest.js';
import { makeRoom, type Room, takeCells, takeLetters, takeRows } from './count-room.js';
import { type FoundProblem, type Grid, nothingRead, type ReadGrids } from './grid.js';
import { joinParts, type Part } from './join-parts.js';
import { listsPots } from './lists-pots.js';
import {
  isBesideBook,
  isSheetText,
  type PickedFiles,
  pickSheetFiles,
  WORKBOOK_ENDINGS,
} from './pick-sheet-files.js';
import { readBook } from './read-book.js';
import { MOST_BOOK_MB, readBytes } from './read-bytes.js';
import { readCsvFile } from './read-csv.js';
import { WorkbookError } from './workbook-error.js';

/** A workbook that is called as a sheet is, or as a part of one, and what it holds. */
interface Book {
  readonly file: string;
  readonly sheet: SheetName;
  readonly read: ReadGrids;
}

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
  const room = makeRoom();
  const books = await readBooks(path, picked, room);
  if (hasNoSheets(picked, folders.length, books)) {
    const lists = entries.length === 0 ? undefined : listsOfPots(path, namesOf(false));
    return nothingRead(noSheets(folder, picked, lists), ...problems);
  }

  const grids: Grid[] = [];
  const next = picked.nextLog === undefined ? [] : [['log', [picked.nextLog]] as const];
  for (const [sheet, files] of [...picked.sheets, ...next]) {
    if (picked.inParts.has(sheet)) continue;
    const [file = '', ...others] = files;
    if (others.length > 0)
      problems.push(problem('two-of-one-sheet', { file }, { found: files.join(', '), expected: sheet }));
    const read = readCsvFile(join(path, file), { file, sheet }, room);
    for (const one of read.problems) problems.push(one);
    if (read.grid !== undefined) grids.push(read.grid);
  }
  for (const [sheet, files] of picked.inParts) {
    const parts = readParts(path, { files, sheet, books }, room);
    problems.push(...parts.problems);
    grids.push(...parts.grids);
  }
  const seen = new Set([
    ...picked.sheets.keys(),
    ...picked.inParts.keys(),
    ...folders.map(([sheet]) => sheet),
  ]);
  const among = restOfBooks(picked, books, { grids, seen });
  const all = [...grids, ...among.grids];
  return { grids: all, seen: among.seen, problems: [...problems, ...among.problems] };
}

/** Workbooks by themselves are sheets where each holds but the one that it is called. Beside others a log and a columns sheet belong to one of them. */
function hasNoSheets({ sheets, workbooks }: PickedFiles, folders: number, books: readonly Book[]): boolean {
  if (sheets.size + folders + books.length === 0) return true;
  if (workbooks.length === 0 || ![...sheets.keys()].every(isBesideBook)) return false;
  const holdsMore = ({ sheet, read }: Book): boolean => read.grids.some((grid) => grid.sheet !== sheet);
  return books.length === 0 || books.some(holdsMore);
}

/** The parts of one sheet, as text or as workbooks. */
function readParts(
  path: string,
  {
    files,
    sheet,
    books,
  }: { readonly files: readonly string[]; readonly sheet: SheetName; readonly books: readonly Book[] },
  room: Room,
): { readonly grids: readonly Grid[]; readonly problems: readonly FoundProblem[] } {
  const parts: Part[] = [];
  const problems: FoundProblem[] = [];
  for (const file of files) {
    const book = books.find((one) => one.file === file);
    if (book !== undefined) {
      const own = book.read.grids.filter((grid) => grid.sheet === sheet);
      parts.push(...own.map((grid) => ({ name: grid.file, grid })));
      continue;
    }
    const read = readCsvFile(join(path, file), { file, sheet }, room);
    problems.push(...read.problems);
    if (read.grid !== undefined) parts.push({ name: file, grid: read.grid });
  }
  const joined = joinParts(parts);
  return { grids: joined.grids, problems: [...problems, ...joined.problems] };
}

/** What workbooks hold beside the parts that are read: of a sheet that is there already the first counts. */
function restOfBooks(
  { inParts }: PickedFiles,
  books: readonly Book[],
  before: { readonly grids: readonly Grid[]; readonly seen: ReadonlySet<SheetName> },
): ReadGrids {
  const grids: Grid[] = [];
  const seen = new Set(before.seen);
  const problems = books.flatMap(({ read }) => read.problems);
  const isPart = (file: string, sheet: SheetName): boolean => inParts.get(sheet)?.includes(file) === true;
  const rest = books.flatMap(({ file, read }) =>
    read.grids.flatMap((grid) => (isPart(file, grid.sheet) ? [] : [{ file, grid }])),
  );
  for (const { file, grid } of rest) {
    const { sheet } = grid;
    const first = [...before.grids, ...grids].find((one) => one.sheet === sheet)?.file;
    const found = first === undefined ? file : `${first}, ${file}`;
    if (seen.has(sheet)) problems.push(problem('two-of-one-sheet', { file }, { found, expected: sheet }));
    else grids.push(grid);
    seen.add(sheet);
  }
  return { grids, seen, problems };
}

async function readBooks(path: string, { ofOtherType, inParts }: PickedFiles, room: Room): Promise<Book[]> {
  const parts = [...inParts].flatMap(([sheet, files]) => files.map((file) => ({ file, sheet })));
  const called = [...parts, ...ofOtherType].filter(({ file }) => isReadable(extname(file)));
  const books: Book[] = [];
  for (const { file, sheet } of called)
    books.push({ file, sheet, read: await readBookAmong(join(path, file), { file, sheet }, room) });
  return books;
}

const isReadable = (ending: string): boolean => WORKBOOK_ENDINGS.includes(ending.toLowerCase());

/** What it holds is taken from the room of the folder; its only worksheet may be called as it likes. */
async function readBookAmong(
  path: string,
  { file, sheet }: { readonly file: string; readonly sheet: SheetName },
  room: Room,
): Promise<ReadGrids> {
  const read = readBytes(path, { file }, MOST_BOOK_MB);
  if ('trouble' in read) return nothingRead(read.trouble);
  const book = await readBook(read.bytes, file, sheet);
  try {
    for (const { rows } of book.grids) takeAll(room, rows);
    return book;
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    return nothingRead(problem(error.fault, { file }, { found: error.message, expected: error.most }));
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

/** Text files by other names that hold pots; of a folder full of other things the first are looked into. */
const listsOfPots = (path: string, names: readonly string[]): readonly string[] =>
  names
    .filter(isSheetText)
    .slice(0, mostLookedInto)
    .filter((name) => fileListsPots(join(path, name), name));

const mostLookedInto = 10;

/** `lists`: undefined for an empty folder. */
function noSheets(file: string, { workbooks }: PickedFiles, lists?: readonly string[]): FoundProblem {
  if (lists === undefined) return problem('empty-folder', { file });
  if (lists.length > 0)
    return problem('no-sheets', { file }, { hint: `If ${joinOr(lists)} holds your pots, call it pots.csv.` });
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

/** Whether a file of any name holds pots as text. */
export function fileListsPots(path: string, file: string): boolean {
  const { grid } = readCsvFile(path, { file, sheet: 'pots' });
  return grid !== undefined && listsPots(grid);
}
