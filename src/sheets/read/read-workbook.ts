// Readers: one workbook to grids. In: its bytes and name. Out: a grid for each worksheet that is a sheet,
// problems.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { type OpenZip, openZip } from '../../unpack/open-zip.js';
import type { Cell } from '../table.js';
import { longCells } from './check-shape.js';
import { makeRoom } from './count-room.js';
import type { FoundProblem, Grid, ReadGrids } from './grid.js';
import { joinParts, type Part } from './join-parts.js';
import { listWorksheets, type WorkbookParts } from './list-worksheets.js';
import { isPart, type Listed, type PickedWorksheets, pickWorksheets } from './pick-worksheets.js';
import { readNumberFormats } from './read-number-formats.js';
import { readOds } from './read-ods.js';
import { readSharedStrings } from './read-shared-strings.js';
import { type ReadWorksheet, readWorksheet, type WorksheetSurroundings } from './read-worksheet.js';
import { sniffFile } from './sniff-file.js';
import { WorkbookError, workbookErrorOf } from './workbook-error.js';

/**
 * Reads an .xlsx, .xlsm or .ods; a workbook without any of the sheets gives no grids. Never throws for what it
 * holds. Of a workbook that is damaged or too large nothing is read. `called`: the sheet that its only worksheet is, where that
 * has the name of none.
 */
export async function readWorkbook(bytes: Buffer, file: string, called?: SheetName): Promise<ReadGrids> {
  const kind = sniffFile(bytes);
  if (kind === 'locked workbook') return failed(problem('locked-workbook', { file }));
  if (kind === 'old workbook') return failed(problem('old-workbook', { file }));
  if (kind !== 'zip')
    return failed(problem(bytes.length === 0 ? 'broken-workbook' : 'not-a-workbook', { file }));
  try {
    return await readZip(await openZip(bytes), file, called);
  } catch (error) {
    const known = workbookErrorOf(error);
    if (known === undefined) throw error;
    return failed(problem(known.fault, { file }, { found: known.message, expected: known.most }));
  }
}

const failed = (trouble: FoundProblem): ReadGrids => ({ grids: [], seen: new Set(), problems: [trouble] });

async function readZip(zip: OpenZip, file: string, called?: SheetName): Promise<ReadGrids> {
  const ods = await readOds(zip, called !== undefined);
  if (ods !== undefined)
    return readPicked(pickWorksheets(ods, file, called), file, async (worksheet) => worksheet);
  const parts = await listWorksheets(zip);
  let surroundings: WorksheetSurroundings | undefined;
  return readPicked(pickWorksheets(parts.worksheets, file, called), file, async ({ part }) => {
    surroundings ??= await readSurroundings(zip, parts);
    return readWorksheet(inflate(zip, part), surroundings);
  });
}

/** Each worksheet that is a sheet, as `read` gives it. */
async function readPicked<W extends Listed>(
  { wanted, problems }: PickedWorksheets<W>,
  file: string,
  read: (worksheet: W) => Promise<ReadWorksheet>,
): Promise<ReadGrids> {
  if (wanted.size === 0)
    return { grids: [], seen: new Set(), problems: [problem('no-sheets', { file }), ...problems] };
  const grids: Grid[] = [];
  for (const [sheet, worksheets] of wanted) {
    const parts: Part[] = [];
    for (const worksheet of worksheets) {
      const { name } = worksheet;
      const at = { sheet, file: isPart(worksheet) ? `${file}, sheet ${name}` : file };
      const { rows, hiddenRows, hiddenColumns, merges } = await read(worksheet);
      parts.push({ name, grid: { ...at, rows, hiddenRows, hiddenColumns, merges } });
      for (const one of longCells(rows, at)) problems.push(one);
    }
    const isWhole = !worksheets.some(isPart);
    const joined = isWhole ? { grids: parts.map(({ grid }) => grid), problems: [] } : joinParts(parts);
    grids.push(...joined.grids);
    problems.push(...joined.problems);
  }
  return { grids, seen: new Set(wanted.keys()), problems };
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
