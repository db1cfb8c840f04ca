// Readers: one workbook to grids. In: its bytes and name. Out: a grid for each worksheet that is a sheet,
// problems.
import type { Workbook, Worksheet } from 'exceljs';
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import type { Cell } from '../table.js';
import type { FoundProblem, GridRow, ReadGrids } from './grid.js';
import { listWorksheets, type WorksheetPart } from './list-worksheets.js';
import { matchSheetName, nearSheetName } from './match-sheet-name.js';
import { MOST_INFLATED_MB, type OpenZip, openZip, WorkbookError } from './open-zip.js';
import { slimWorkbook } from './slim-workbook.js';
import { sniffFile } from './sniff-file.js';
import { typeCell } from './type-cell.js';

/** Nodes of a worksheet that are no cells; whole-column dropdowns alone cost seconds and 200 MB. */
const IGNORED_NODES = [
  'dataValidations',
  'mergeCells',
  'conditionalFormatting',
  'extLst',
  'drawing',
  'picture',
  'hyperlinks',
  'tableParts',
];

/**
 * Reads an .xlsx or .xlsm; a workbook without any of the sheets gives no grids. Never throws for what it
 * holds.
 */
export async function readWorkbook(bytes: Buffer, file: string): Promise<ReadGrids> {
  const kind = sniffFile(bytes);
  if (kind === 'locked workbook') return failed(problem('locked-workbook', { file }));
  if (kind === 'old workbook') return failed(problem('old-workbook', { file }));
  if (kind !== 'zip')
    return failed(problem(bytes.length === 0 ? 'broken-workbook' : 'not-a-workbook', { file }));
  const { default: exceljs } = await import('exceljs');
  try {
    return await readZip(openZip(bytes), file, new exceljs.Workbook());
  } catch (error) {
    // exceljs throws plain errors for XML that it cannot make sense of: the workbook is damaged.
    const fault = error instanceof WorkbookError ? error.fault : 'broken-workbook';
    const reason = error instanceof Error ? error.message : String(error);
    return failed(problem(fault, { file }, { found: reason, expected: `${MOST_INFLATED_MB} MB` }));
  }
}

const failed = (trouble: FoundProblem): ReadGrids => ({ grids: [], seen: new Set(), problems: [trouble] });

async function readZip(zip: OpenZip, file: string, workbook: Workbook): Promise<ReadGrids> {
  const parts = listWorksheets(zip);
  const { wanted, problems } = pickWorksheets(parts.worksheets, file);
  if (wanted.size === 0)
    return { grids: [], seen: new Set(), problems: [problem('no-sheets', { file }), ...problems] };
  const { bytes, merges } = slimWorkbook(zip, parts, wanted);
  // exceljs declares a Buffer of its own, which Node's newer types do not fit.
  await workbook.xlsx.load(bytes as unknown as Parameters<typeof workbook.xlsx.load>[0], {
    ignoreNodes: IGNORED_NODES,
  });
  const grids = [...wanted.keys()].map((sheet) => {
    const worksheet = workbook.getWorksheet(sheet);
    if (worksheet === undefined) throw new WorkbookError('broken-workbook', `worksheet ${sheet} is lost`);
    return { sheet, file, ...readRows(worksheet, parts.date1904), merges: merges.get(sheet) ?? [] };
  });
  return { grids, seen: new Set(wanted.keys()), problems };
}

interface PickedWorksheets {
  readonly wanted: ReadonlyMap<SheetName, WorksheetPart>;
  readonly problems: readonly FoundProblem[];
}

function pickWorksheets(worksheets: readonly WorksheetPart[], file: string): PickedWorksheets {
  const wanted = new Map<SheetName, WorksheetPart>();
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

/** Non-blank rows; `rowCount` counts rows that were only ever formatted. */
function readRows(
  worksheet: Worksheet,
  date1904: boolean,
): { rows: GridRow[]; hiddenRows: ReadonlySet<number> } {
  const rows: GridRow[] = [];
  const hiddenRows = new Set<number>();
  worksheet.eachRow((excelRow, row) => {
    const cells: Cell[] = [];
    let blank = true;
    excelRow.eachCell((excelCell, column) => {
      const cell = typeCell(excelCell.value, { numberFormat: excelCell.numFmt, date1904 });
      if (cell === '') return;
      blank = false;
      while (cells.length < column - 1) cells.push('');
      cells.push(cell);
    });
    if (blank) return;
    rows.push({ row, cells });
    if (excelRow.hidden) hiddenRows.add(row);
  });
  return { rows, hiddenRows };
}
