// Readers: one workbook to grids. In: its bytes and name. Out: a grid for each worksheet that is a sheet,
// problems.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { type OpenZip, openZip } from '../../unpack/open-zip.js';
import type { Cell } from '../table.js';
import { longCells } from './check-shape.js';
import { makeRoom } from './count-room.js';
import type { FoundProblem, Grid, ReadGrids } from './grid.js';
import { listWorksheets, type WorkbookParts } from './list-worksheets.js';
import { matchSheetName, nearSheetName } from './match-sheet-name.js';
import { readNumberFormats } from './read-number-formats.js';
import { readOds } from './read-ods.js';
import { readSharedStrings } from './read-shared-strings.js';
import { type ReadWorksheet, readWorksheet, type WorksheetSurroundings } from './read-worksheet.js';
import { sniffFile } from './sniff-file.js';
import { WorkbookError, workbookErrorOf } from './workbook-error.js';

/**
 * Reads an .xlsx, .xlsm or .ods; a workbook without any of the sheets gives no grids. Never throws for what it
 * holds. Of a workbook that is damaged or too large nothing is read.
 */
export async function readWorkbook(bytes: Buffer, file: string): Promise<ReadGrids> {
  const kind = sniffFile(bytes);
  if (kind === 'locked workbook') return failed(problem('locked-workbook', { file }));
  if (kind === 'old workbook') return failed(problem('old-workbook', { file }));
  if (kind !== 'zip')
    return failed(problem(bytes.length === 0 ? 'broken-workbook' : 'not-a-workbook', { file }));
  try {
    return await readZip(await openZip(bytes), file);
  } catch (error) {
    const known = workbookErrorOf(error);
    if (known === undefined) throw error;
    return failed(problem(known.fault, { file }, { found: known.message, expected: known.most }));
  }
}

const failed = (trouble: FoundProblem): ReadGrids => ({ grids: [], seen: new Set(), problems: [trouble] });

async function readZip(zip: OpenZip, file: string): Promise<ReadGrids> {
  const ods = await readOds(zip);
  if (ods !== undefined) return readPicked(pickWorksheets(ods, file), file, async (worksheet) => worksheet);
  const parts = await listWorksheets(zip);
  let surroundings: WorksheetSurroundings | undefined;
  return readPicked(pickWorksheets(parts.worksheets, file), file, async ({ part }) => {
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
  for (const [sheet, worksheet] of wanted) {
    const { rows, hiddenRows, hiddenColumns, merges } = await read(worksheet);
    grids.push({ sheet, file, rows, hiddenRows, hiddenColumns, merges });
    for (const one of longCells(rows, { sheet, file })) problems.push(one);
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

interface Listed {
  readonly name: string;
  readonly isHidden: boolean;
}

interface PickedWorksheets<W extends Listed> {
  readonly wanted: ReadonlyMap<SheetName, W>;
  readonly problems: FoundProblem[];
}

function pickWorksheets<W extends Listed>(worksheets: readonly W[], file: string): PickedWorksheets<W> {
  const wanted = new Map<SheetName, W>();
  const problems: FoundProblem[] = [];
  for (const worksheet of worksheets) {
    const { name } = worksheet;
    const sheet = matchSheetName(name);
    if (sheet === undefined) {
      const near = nearSheetName(name);
      if (near !== undefined)
        problems.push(problem('near-worksheet-name', { file }, { found: name, expected: near }));
      continue;
    }
    const other = wanted.get(sheet);
    if (other === undefined) wanted.set(sheet, worksheet);
    else
      problems.push(
        problem('two-of-one-sheet', { file }, { found: `${other.name}, ${name}`, expected: sheet }),
      );
  }
  for (const [sheet, { isHidden }] of wanted)
    if (isHidden) problems.push(problem('hidden-sheet', { file, sheet }));
  return { wanted, problems };
}
