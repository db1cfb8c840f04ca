// Readers: an OpenDocument workbook. In: an open zip. Out: its worksheets with their rows, merged ranges and hidden rows.
// Elements and attributes: ISO/IEC 26300-1 (OpenDocument 1.2), 9.1 (tables), 19.385 (value types); 26300-3 4 (encryption).

import { decodeEntities } from '../../unpack/decode-xml-text.js';
import type { OpenZip } from '../../unpack/open-zip.js';
import { readAttributes, scanXml } from '../../unpack/scan-xml.js';
import { isCurrencySign } from '../check/read-cell/read-price.js';
import type { Cell } from '../table.js';
import { isMeasure } from '../units.js';
import { makeRoom, type Room, takeCells, takeLetters, takeRows } from './count-room.js';
import { type GridRow, spreadsheetLimits } from './grid.js';
import { matchSheetName, matchSheetPart } from './match-sheet-name.js';
import { cellAddress } from './name-cell.js';
import type { ReadWorksheet } from './read-worksheet.js';
import { plainText } from './type-cell.js';
import { WorkbookError } from './workbook-error.js';

export interface OdsWorksheet extends ReadWorksheet {
  readonly name: string;
  readonly isHidden: boolean;
}

type Attributes = ReadonlyMap<string, string>;

/** A longer one is told as too long; the rest of it is not needed for that. */
const longestText = spreadsheetLimits.cellCharacters + 1;
const mostMerges = 10_000;
const mostWorksheets = 10_000;

/** Rows only of worksheets that are called as a sheet is, and of an only one. Undefined where the zip is no OpenDocument. */
export async function readOds(zip: OpenZip): Promise<readonly OdsWorksheet[] | undefined> {
  const manifest = zip.inflate('META-INF/manifest.xml');
  if (manifest === undefined) return undefined;
  await scanXml(manifest, {
    open: (name) => {
      if (name === 'encryption-data') throw new WorkbookError('locked-workbook', 'parts are encrypted');
    },
  });
  const worksheets = await scanTables(zip, isSheet);
  return worksheets?.length === 1 && !isSheet(worksheets[0]?.name ?? '')
    ? scanTables(zip, () => true)
    : worksheets;
}

const isSheet = (name: string): boolean => (matchSheetName(name) ?? matchSheetPart(name)) !== undefined;

async function scanTables(
  zip: OpenZip,
  isTaken: (name: string) => boolean,
): Promise<readonly OdsWorksheet[] | undefined> {
  const content = zip.inflate('content.xml');
  if (content === undefined) return undefined;
  const scan = openTables(makeRoom(), isTaken);
  await scanXml(content, scan.visitor);
  return scan.worksheets;
}

interface Draft extends OdsWorksheet {
  readonly hiddenRows: Set<number>;
  readonly merges: string[];
}

/** What is being read of the table at hand. */
interface State {
  table: Draft | undefined;
  row: number;
  rowTimes: number;
  cells: Cell[];
  column: number;
  attributes: Attributes | undefined;
  text: string;
  /** Paragraphs of a note on a cell are none of the cell. */
  notes: number;
  isInText: boolean;
}

function openTables(room: Room, isTaken: (name: string) => boolean) {
  const worksheets: Draft[] = [];
  const state: State = { table: undefined, row: 0, rowTimes: 1, cells: [], column: 0, ...noCell };
  const openers: Readonly<Record<string, (attributes: Attributes) => void>> = {
    table: (attributes) => openTable(state, attributes, { worksheets, isTaken }),
    'table-row': (attributes) => openRow(state, attributes),
    'table-cell': (attributes) => Object.assign(state, noCell, { attributes }),
    'covered-table-cell': (attributes) => Object.assign(state, noCell, { attributes }),
    annotation: () => (state.notes += 1),
    p: () => openText(state),
    s: (attributes) => addText(state, ' '.repeat(Math.min(longestText, timesOf(attributes, 'c')))),
  };
  const closers: Readonly<Record<string, () => void>> = {
    table: () => (state.table = undefined),
    'table-row': () => closeRow(state, room),
    'table-cell': () => closeCell(state, room),
    'covered-table-cell': () => closeCell(state, room),
    annotation: () => (state.notes -= 1),
    p: () => (state.isInText = false),
  };
  const visitor = {
    open: (name: string, attributes: string) => {
      if (name === 'table' || state.table !== undefined) openers[name]?.(readAttributes(attributes));
    },
    text: (piece: string) => addText(state, decodeEntities(piece)),
    close: (name: string) => {
      if (state.table !== undefined) closers[name]?.();
    },
  };
  return { worksheets, visitor };
}

const noCell = { attributes: undefined, text: '', notes: 0, isInText: false } as const;

const timesOf = (attributes: Attributes, name: string): number =>
  Math.max(1, Math.floor(Number(attributes.get(name) ?? 1)) || 1);

function openTable(
  state: State,
  attributes: Attributes,
  { worksheets, isTaken }: { readonly worksheets: Draft[]; readonly isTaken: (name: string) => boolean },
): void {
  const name = attributes.get('name') ?? '';
  const table: Draft = {
    name,
    isHidden: false,
    rows: [],
    hiddenRows: new Set(),
    hiddenColumns: [],
    merges: [],
  };
  if (worksheets.length < mostWorksheets) worksheets.push(table);
  state.table = isTaken(name) ? table : undefined;
  state.row = 0;
}

function openRow(state: State, attributes: Attributes): void {
  state.row += 1;
  state.rowTimes = timesOf(attributes, 'number-rows-repeated');
  state.cells = [];
  state.column = 0;
  if (/^(collapse|filter)$/.test(attributes.get('visibility') ?? '')) state.table?.hiddenRows.add(state.row);
}

function openText(state: State): void {
  if (state.notes > 0) return;
  if (state.text !== '') state.text += '\n';
  state.isInText = true;
}

function addText(state: State, piece: string): void {
  if (state.isInText && state.notes === 0 && state.text.length < longestText)
    state.text += piece.slice(0, longestText);
}

/** The same cell may stand many times over, most often blank to the end of the row. */
function closeCell(state: State, room: Room): void {
  const { attributes, table, row, column, cells } = state;
  if (attributes === undefined || table === undefined) return;
  const times = timesOf(attributes, 'number-columns-repeated');
  const cell = cellOf(attributes, state.text);
  if (cell !== '') {
    if (column + times > spreadsheetLimits.columns)
      throw new WorkbookError('broken-workbook', `no column ${column + times} in a worksheet`);
    takeCells(room, column + times - cells.length);
    if (typeof cell === 'string') takeLetters(room, cell.length * times);
    while (cells.length < column) cells.push('');
    for (let at = 0; at < times; at += 1) cells.push(cell);
  }
  const [wide, high] = [
    timesOf(attributes, 'number-columns-spanned'),
    timesOf(attributes, 'number-rows-spanned'),
  ];
  if (wide * high > 1 && table.merges.length < mostMerges)
    table.merges.push(`${cellAddress(column + 1, row)}:${cellAddress(column + wide, row + high - 1)}`);
  state.column += times;
  Object.assign(state, noCell);
}

function closeRow(state: State, room: Room): void {
  const { table, cells, rowTimes } = state;
  if (table === undefined) return;
  if (cells.length > 0) {
    takeRows(room, rowTimes);
    takeCells(room, cells.length * (rowTimes - 1));
    for (let at = 0; at < rowTimes; at += 1) table.rows.push(rowOf(state.row + at, [...cells]));
  } else table.hiddenRows.delete(state.row);
  state.row += rowTimes - 1;
}

const rowOf = (row: number, cells: Cell[]): GridRow => ({ row, cells });

/** The stored result of a formula counts, and a unit or a currency that the cell shows. */
function cellOf(attributes: Attributes, text: string): Cell {
  const type = attributes.get('value-type');
  const formula = attributes.get('formula');
  if (type === undefined || type === 'string' || type === 'time') {
    if (text !== '' || formula === undefined) return plainText(text);
    return { kind: 'broken', why: 'formula without result', shown: formula.replace(/^\w+:/, '') };
  }
  if (type === 'error') return { kind: 'broken', why: 'error value', shown: text };
  if (type === 'boolean') return attributes.get('boolean-value') === 'true';
  if (type === 'date') return { kind: 'date', iso: (attributes.get('date-value') ?? '').slice(0, 10) };
  return numberOf(
    Number(attributes.get('value') || Number.NaN),
    type,
    attributes.get('currency') ?? unitIn(text),
  );
}

function numberOf(value: number, type: string, unit: string): Cell {
  if (!Number.isFinite(value)) return { kind: 'broken', why: 'error value', shown: '#NUM!' };
  // Some programs store a percent as any other number, and only show it so.
  if (type === 'percentage' || unit === '%') return `${Number((value * 100).toPrecision(12))}%`;
  return unit === '' ? value : { kind: 'measured', value, unit };
}

/** What a shown number has before or behind it, where that is a measure or a currency. */
function unitIn(shown: string): string {
  const text = shown.length > longestShown ? '' : shown.trim();
  const unit =
    /^([^\d.,\s+-]{1,6})\s*[\d.,+-]/.exec(text)?.[1] ?? /\d\s*([^\d.,\s]{1,8})$/.exec(text)?.[1] ?? '';
  return isMeasure(unit) || isCurrencySign(unit.toLowerCase()) ? unit : '';
}

const longestShown = 40;
