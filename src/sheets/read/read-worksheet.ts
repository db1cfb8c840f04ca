// Readers: one worksheet to rows. In: chunks of its part. Out: non-blank rows, merged ranges, which rows and columns are
// hidden.
import type { Cell } from '../table.js';
import { type Room, takeCells, takeLetters, takeRows } from './count-room.js';
import { type GridRow, type HiddenColumns, spreadsheetLimits } from './grid.js';
import { columnNumber } from './name-cell.js';
import { openStoredCell } from './open-stored-cell.js';
import type { CellFormat } from './read-format.js';
import { readAttributes, scanXml, type XmlVisitor } from './scan-xml.js';
import { type CellSurroundings, typeCell } from './type-cell.js';
import { WorkbookError } from './workbook-error.js';

export interface ReadWorksheet {
  /** Ascending; rows and cells that are only formatted are left out. */
  readonly rows: GridRow[];
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: readonly HiddenColumns[];
  /** `A3:A7` ...; the first ones, where there are more than anybody unmerges one by one. */
  readonly merges: readonly string[];
}

export interface WorksheetSurroundings extends CellSurroundings {
  readonly formats: readonly CellFormat[];
  readonly room: Room;
}

const MOST_MERGES = 10_000;
/** In one stretch each. */
const MOST_HIDDEN = 1000;

/** Throws a WorkbookError for damage, and where there is more than can be read. */
export async function readWorksheet(
  chunks: AsyncIterable<Uint8Array>,
  surroundings: WorksheetSurroundings,
): Promise<ReadWorksheet> {
  const merges: string[] = [];
  const hiddenColumns: HiddenColumns[] = [];
  const { visitor, rows, hiddenRows } = openRows(surroundings);
  let inCells = false;
  await scanXml(chunks, {
    open: (name, attributes) => {
      if (name === 'sheetData') inCells = true;
      if (inCells) visitor.open(name, attributes);
      else if (name === 'mergeCell' && merges.length < MOST_MERGES)
        merges.push(readAttributes(attributes).get('ref') ?? '');
      else if (name === 'col' && hiddenColumns.length < MOST_HIDDEN)
        hiddenColumns.push(...hiddenStretch(readAttributes(attributes)));
    },
    text: (piece) => {
      if (inCells) visitor.text(piece);
    },
    close: (name) => {
      if (inCells) visitor.close(name);
      if (name === 'sheetData') inCells = false;
    },
  });
  return { rows: inOrder(rows), hiddenRows, hiddenColumns, merges };
}

const isSet = (written: string | undefined): boolean => /^(1|true)$/.test(written ?? '');

/** ECMA-376 18.3.1.13. */
function hiddenStretch(attributes: ReadonlyMap<string, string>): HiddenColumns[] {
  const [from, to] = [Number(attributes.get('min')), Number(attributes.get('max'))];
  return isSet(attributes.get('hidden')) && from <= to ? [{ from, to }] : [];
}

/** ECMA-376 18.3.1.4 and 18.3.1.73 leave the address free: the cell or row after the one before is meant. */
function openRows(surroundings: WorksheetSurroundings): {
  readonly visitor: Required<XmlVisitor>;
  readonly rows: GridRow[];
  readonly hiddenRows: Set<number>;
} {
  const rows: GridRow[] = [];
  const hiddenRows = new Set<number>();
  const stored = openStoredCell(surroundings.formats);
  let row = 0;
  let column = 0;
  let cells: Cell[] = [];

  const openRow = (attributes: ReadonlyMap<string, string>): void => {
    row = checkPlace(Number(attributes.get('r') ?? row + 1), spreadsheetLimits.rows);
    column = 0;
    cells = [];
    if (isSet(attributes.get('hidden'))) hiddenRows.add(row);
  };
  const openCell = (attributes: ReadonlyMap<string, string>): void => {
    const letters = attributes.get('r')?.replace(/\d+$/, '');
    column = checkPlace(
      letters === undefined ? column + 1 : columnNumber(letters),
      spreadsheetLimits.columns,
    );
    stored.begin(attributes);
  };
  const closeCell = (): void => {
    const cell = typeCell(stored.take(), surroundings);
    if (cell !== '') addCell(cells, { index: column - 1, cell }, surroundings.room);
  };
  const closeRow = (): void => {
    if (cells.length === 0) {
      hiddenRows.delete(row);
      return;
    }
    takeRows(surroundings.room, 1);
    rows.push({ row, cells });
  };

  const visitor: Required<XmlVisitor> = {
    open: (name, attributes) => {
      if (name === 'row') openRow(readAttributes(attributes));
      else if (name === 'c') openCell(readAttributes(attributes));
      else stored.open(name);
    },
    text: stored.add,
    close: (name) => {
      if (name === 'c') closeCell();
      else if (name === 'row') closeRow();
      else stored.close(name);
    },
  };
  return { visitor, rows, hiddenRows };
}

/** Throws where no spreadsheet has such a row or column. */
function checkPlace(place: number, most: number): number {
  if (Number.isInteger(place) && place >= 1 && place <= most) return place;
  throw new WorkbookError('broken-workbook', `no row or column ${place} in a worksheet`);
}

function addCell(
  cells: Cell[],
  { index, cell }: { readonly index: number; readonly cell: Cell },
  room: Room,
): void {
  takeCells(room, Math.max(0, index + 1 - cells.length));
  if (typeof cell === 'string') takeLetters(room, cell.length);
  while (cells.length < index) cells.push('');
  cells[index] = cell;
}

/** Every program writes rows from the top; for one that does not, they are sorted, and rows of one number become one. */
function inOrder(rows: GridRow[]): GridRow[] {
  if (rows.every(({ row }, index) => row > (rows[index - 1]?.row ?? 0))) return rows;
  const byNumber = new Map<number, GridRow>();
  for (const one of rows) {
    const before = byNumber.get(one.row);
    if (before === undefined) byNumber.set(one.row, one);
    else mergeInto(before.cells, one.cells);
  }
  return [...byNumber.values()].sort((a, b) => a.row - b.row);
}

function mergeInto(cells: Cell[], more: readonly Cell[]): void {
  while (cells.length < more.length) cells.push('');
  for (const [index, cell] of more.entries()) if (cell !== '') cells[index] = cell;
}
