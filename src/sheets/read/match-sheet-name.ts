// Readers: which sheet a file or worksheet is, by its name. In: a name without its ending. Out: the sheet, or
// a near one.
import { distance } from 'fastest-levenshtein';
import { type SheetName, sheetNames } from '../../model/words.js';
import { nameKey } from '../match-header.js';

/**
 * The sheet of that name; case, blanks, hyphens and underscores do not count. Undefined for any other name.
 */
export function matchSheetName(name: string): SheetName | undefined {
  const key = nameKey(name);
  return sheetNames.find((sheet) => sheet === key);
}

/** Twice the longest name of a sheet; nothing longer is near one. */
const LONGEST = 16;

/**
 * The sheet whose name is one letter away, or two neighbours swapped, or two letters where the name has six
 * or more; with shorter ones `notes` would pass for `zones`. Undefined for a sheet's own name and where none
 * is near.
 */
export function nearSheetName(name: string): SheetName | undefined {
  const key = nameKey(name);
  if (key.length > LONGEST || matchSheetName(name) !== undefined) return undefined;
  const ranked = sheetNames
    .map((sheet) => ({ sheet, letters: isSwap(key, sheet) ? 1 : distance(key, sheet) }))
    .filter(({ sheet, letters }) => letters <= (sheet.length >= 6 ? 2 : 1))
    .sort((a, b) => a.letters - b.letters);
  return ranked[0]?.sheet;
}

function isSwap(a: string, b: string): boolean {
  if (a.length !== b.length) return false;
  const at = [...a].findIndex((letter, index) => letter !== b[index]);
  return at !== -1 && a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2);
}
