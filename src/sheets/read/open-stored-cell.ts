// Readers: one cell of a worksheet as its tags go by. In: names of tags, texts. Out: what is stored in it.
import { decodeCellText } from './decode-xml-text.js';
import { spreadsheetLimits } from './grid.js';
import { type CellFormat, plainFormat } from './read-format.js';
import type { StoredCell } from './type-cell.js';

/** One letter more than a cell may hold, so that a text that is too long is still seen to be. */
const MOST_LETTERS = spreadsheetLimits.cellCharacters + 1;
/** An encoded letter takes up to eight. */
const MOST_KEPT = 8 * MOST_LETTERS;

export interface CellText {
  readonly open: (name: string) => void;
  readonly close: (name: string) => void;
  readonly add: (piece: string) => void;
  /** What came since the last time, decoded. */
  readonly take: () => string;
}

/** Collects what stands in `t`, outside of `rPh`. Of a text that no spreadsheet can hold, the beginning. */
export function openCellText(): CellText {
  let kept = '';
  let inText = false;
  let inAid = false;
  return {
    open: (name) => {
      if (name === 't') inText = true;
      if (name === 'rPh') inAid = true;
    },
    close: (name) => {
      if (name === 't') inText = false;
      if (name === 'rPh') inAid = false;
    },
    add: (piece) => {
      if (inText && !inAid && kept.length < MOST_KEPT) kept += piece.slice(0, MOST_KEPT);
    },
    take: () => {
      if (kept === '') return '';
      const text = decodeCellText(kept);
      kept = '';
      return text.slice(0, MOST_LETTERS);
    },
  };
}

export interface OpenStoredCell {
  /** Forgets the cell before. */
  readonly begin: (attributes: ReadonlyMap<string, string>) => void;
  readonly open: (name: string) => void;
  readonly close: (name: string) => void;
  readonly add: (piece: string) => void;
  /** Good until the next cell begins. */
  readonly take: () => StoredCell;
}

/** `formats` by the number that a cell gives as its style. */
export function openStoredCell(formats: readonly CellFormat[]): OpenStoredCell {
  const inline = openCellText();
  const cell: { -readonly [K in keyof StoredCell]: StoredCell[K] } = {
    type: '',
    format: plainFormat,
    value: undefined,
    formula: undefined,
    inline: '',
  };
  let inside: 'value' | 'formula' | undefined;
  return {
    begin: (attributes) => {
      cell.type = attributes.get('t') ?? '';
      cell.format = formats[Number(attributes.get('s') ?? 0)] ?? plainFormat;
      cell.value = undefined;
      cell.formula = undefined;
    },
    open: (name) => {
      inside = name === 'v' ? 'value' : name === 'f' ? 'formula' : undefined;
      if (inside === undefined) inline.open(name);
      else cell[inside] = '';
    },
    add: (piece) => {
      if (inside === undefined) inline.add(piece);
      else if ((cell[inside]?.length ?? 0) < MOST_KEPT)
        cell[inside] = (cell[inside] ?? '') + piece.slice(0, MOST_KEPT);
    },
    close: (name) => {
      if (inside === undefined) inline.close(name);
      inside = undefined;
    },
    take: () => {
      cell.inline = inline.take();
      return cell;
    },
  };
}
