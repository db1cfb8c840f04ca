// Readers: where the header row of a grid stands. In: its non-blank rows and the sheet that it is.
// Out: the index of the header row, and headers as text.
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant, knownHeaderKeys } from '../spell-headers.js';
import { type Cell, type Headed, textOfObject } from '../table.js';
import { countKnown, HEADER_WITHIN_ROWS } from './find-delimiter.js';
import type { GridRow } from './grid.js';

/** What tells a header row from others. */
interface Shape {
  /** Reckoned when it is asked for. */
  readonly known: () => number;
  /** Cells that hold something. */
  readonly filled: number;
  readonly isTitle: boolean;
}

/**
 * Index in `rows` of the row among the sheet's first twenty that shows most known headers, the upper one of
 * equals; where none shows any, of the first that is no title. A row of data may hold one word that some header is too:
 * a single header counts only where no row above it is more than half as wide. No rows give 0.
 */
export function findHeaderRow(rows: readonly GridRow[], of: Headed): number {
  const shapes = shapesOf(
    rows.slice(0, HEADER_WITHIN_ROWS).filter(({ row }) => row <= HEADER_WITHIN_ROWS),
    of,
  );
  let best = shapes.findIndex(({ isTitle }) => !isTitle);
  let most = 0;
  for (const [at, shape] of shapes.entries()) {
    // A row knows no more headers than it has cells.
    const known = shape.filled > most ? counted(shape, shapes.slice(0, at)) : 0;
    if (known > most) [best, most] = [at, known];
  }
  return Math.max(0, best);
}

/** Known headers, as far as they make a header row. */
function counted({ known, filled, isTitle }: Shape, above: readonly Shape[]): number {
  const count = isTitle ? 0 : known();
  return count === 1 && above.some((row) => row.filled > 1 && row.filled * 2 > filled) ? 0 : count;
}

/** A title stands in one cell above rows of several, unless it is the one header that its sheet needs. */
function shapesOf(rows: readonly GridRow[], { sheet, called = new Map() }: Headed): readonly Shape[] {
  const ofSheet = knownHeaderKeys(sheet);
  const knownHeaders = { has: (key: string) => ofSheet.has(key) || called.has(key) };
  const needed = columns[sheet].filter((column) => column.needed).map(({ header }) => headerKey(header));
  const filled = rows.map(({ cells }) => cells.filter((cell) => cell !== '').length);
  const widest = Math.max(0, ...filled);
  const isWhole = (text: string): boolean => needed.length === 1 && headerKey(text) === needed[0];
  return rows.map(({ cells }, at) => ({
    known: () => countKnown(cells.map(headerText), knownHeaders),
    filled: filled[at] ?? 0,
    isTitle: filled[at] === 1 && widest > 1 && !cells.map(headerText).some(isWhole),
  }));
}

/** A header cell as text; a year or a date may be the painter's own header. */
export function headerText(cell: Cell): string {
  return typeof cell === 'object' ? textOfObject(cell) : String(cell);
}

/** Whether a header means the column of that key; if `isOwn` by its own name, or by what the columns sheet says. */
export function namesColumn(rows: readonly GridRow[], of: Headed, key: string, isOwn = false): boolean {
  const header = rows[findHeaderRow(rows, of)]?.cells.map(headerText) ?? [];
  return header.some((text) => {
    const meant = columnMeant(of, text);
    return meant?.key === key && (meant.isOwn || !isOwn);
  });
}
