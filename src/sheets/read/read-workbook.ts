// Readers: one workbook to grids. In: its bytes and name. Out: a grid for each worksheet that is a sheet,
// problems.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { type OpenZip, openZip } from '../../unpack/open-zip.js';
import type { Cell } from '../table.js';
import { longCells } from './check-shape.js';
import { makeRoom } from './count-room.js';
import { type Grid, nothingRead, type ReadGrids } from './grid.js';
import { joinParts, type Part } from './join-parts.js';
import { listWorksheets, type WorkbookParts } from './list-worksheets.js';
import { listsPots } from './lists-pots.js';
import { isPart, type Listed, mayListPots, pickWorksheets } from './pick-worksheets.js';
import { readNumberFormats } from './read-number-formats.js';
import { readOds } from './read-ods.js';
import { readSharedStrings } from './read-shared-strings.js';
import { type ReadWorksheet, readWorksheet, type WorksheetSurroundings } from './read-worksheet.js';
import { sniffFile } from './sniff-file.js';
import { WorkbookError, workbookErrorOf } from './workbook-error.js';

/**
 * Reads an .xlsx, .xlsm or .ods; a workbook without any of the sheets gives no grids. Never throws for what it
 * holds. Of a workbook that is damaged or too large nothing is read. `called`: the sheet that its only worksheet is, where that
 * has the name of none; it may list pots too.
 */
export async function readWorkbook(bytes: Buffer, file: string, called?: SheetName): Promise<ReadGrids> {
  const kind = sniffFile(bytes);
  if (kind === 'locked workbook') return nothingRead(problem('locked-workbook', { file }));
  if (kind === 'old workbook') return nothingRead(problem('old-workbook', { file }));
  if (kind !== 'zip')
    return nothingRead(problem(bytes.length === 0 ? 'broken-workbook' : 'not-a-workbook', { file }));
  try {
    return await readZip(await openZip(bytes), file, called);
  } catch (error) {
    const known = workbookErrorOf(error);
    if (known === undefined) throw error;
    return nothingRead(problem(known.fault, { file }, { found: known.message, expected: known.most }));
  }
}

async function readZip(zip: OpenZip, file: string, called?: SheetName): Promise<ReadGrids> {
  const ods = await readOds(zip);
  if (ods !== undefined) return readPicked(ods, { file, called }, async (worksheet) => worksheet);
  const parts = await listWorksheets(zip);
  let surroundings: WorksheetSurroundings | undefined;
  return readPicked(parts.worksheets, { file, called }, async ({ part }) => {
    surroundings ??= await readSurroundings(zip, parts);
    return readWorksheet(inflate(zip, part), surroundings);
  });
}

/** Each worksheet that is a sheet, as `read` gives it. */
async function readPicked<W extends Listed>(
  listed: readonly W[],
  { file, called }: { readonly file: string; readonly called?: SheetName | undefined },
  read: (worksheet: W) => Promise<ReadWorksheet>,
): Promise<ReadGrids> {
  const { wanted, problems } = pickWorksheets(listed, file, called);
  const none = nothingRead(problem('no-sheets', { file }), ...problems);
  if (wanted.size === 0) return none;
  const grids: Grid[] = [];
  for (const [sheet, worksheets] of wanted) {
    const parts: Part[] = [];
    for (const worksheet of worksheets) parts.push(await readPart(worksheet, { sheet, file }, read));
    const [first] = parts;
    if (called === undefined && worksheets.some(mayListPots) && !(first && listsPots(first.grid)))
      return none;
    for (const { grid } of parts) problems.push(...longCells(grid.rows, grid));
    const isInParts = worksheets.some(isPart);
    const joined = isInParts ? joinParts(parts) : { grids: parts.map(({ grid }) => grid), problems: [] };
    grids.push(...joined.grids);
    problems.push(...joined.problems);
  }
  return { grids, seen: new Set(wanted.keys()), problems };
}

async function readPart<W extends Listed>(
  worksheet: W,
  { sheet, file }: { readonly sheet: SheetName; readonly file: string },
  read: (worksheet: W) => Promise<ReadWorksheet>,
): Promise<Part> {
  const { name } = worksheet;
  const { rows, hiddenRows, hiddenColumns, merges } = await read(worksheet);
  const at = isPart(worksheet) ? `${file}, sheet ${name}` : file;
  return { name, grid: { sheet, file: at, rows, hiddenRows, hiddenColumns, merges } };
}

async function readSurroundings(zip: OpenZip, parts: WorkbookParts): Promise<WorksheetSurroundings> {
  const { date1904, stylesPart, stringsPart } = parts;
  const formats = stylesPart === undefined ? [] : await readNumberFormats(inflate(zip, stylesPart));
  const room = makeRoom();
  const strings: Cell[] =
    stringsPart === undefined ? [] : await readSharedStrings(inflate(zip, stringsPart), room);
  return { formats, strings, date1904, room };
}

function inflate(zip: OpenZip, part: string): AsyncIterable<Uint8Array> {
  const chunks = zip.inflate(part);
  if (chunks === undefined) throw new WorkbookError('broken-workbook', `${part} missing`);
  return chunks;
}
