// Checks: names and lists of names. In: a cell. Out: the name with single blanks, or the pieces of a list.
import { tidyName } from '../fold-name.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';

/** Any text; a workbook's number is a name too (unit 1). */
function readName(cell: Written): string {
  return typeof cell === 'string' ? tidyName(cell) : String(cell);
}

export const nameKind: CellKind<string> = { noun: 'a name', read: readName };

/** A comma between two digits belongs to a share such as `12,5%`. */
const marks = /\n|,(?!(?<=\d,)\d+\s*%)/;
/** Beside semicolons it belongs to any number. */
const marksWithSemicolons = /[;\n]|,(?!(?<=\d,)\d)/;

/** Each piece is compared with all known words, and may be a problem of its own. */
const mostPieces = 200;

/** The pieces of a list, without blank ones; commas, semicolons and line breaks part it. */
function splitList(text: string): readonly string[] | Mistake {
  const pieces = text.split(text.includes(';') ? marksWithSemicolons : marks);
  const words = pieces.map(tidyName).filter((piece) => piece !== '');
  return words.length > mostPieces
    ? new Mistake('too-much', `the longest list, ${mostPieces} pieces`)
    : words;
}

export const listKind: CellKind<readonly string[]> = {
  noun: 'a list',
  read: (cell) => splitList(String(cell)),
};

export interface WrittenPart {
  readonly name: string;
  readonly share: number | Mistake;
}

/** Looking for a share at the end of a longer piece takes its length squared, and it names no part anyway. */
const longestPart = 100;
const withShare = /^(.*?)\s*([+-]?[\d.,]+\s*%?)$/;

/** `upper arms 50%` as name and share (0 to 1); without a share the whole part. */
export function readPart(piece: string, readShare: (text: string) => number | Mistake): WrittenPart {
  const [, name, share] = (piece.length <= longestPart && withShare.exec(piece)) || [];
  return share === undefined || name === undefined
    ? { name: piece, share: 1 }
    : { name, share: readShare(share) };
}
