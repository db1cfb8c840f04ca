// Checks: headers that may be meant for a column that is not there. In: headers, columns. Out: which is near which.
import type { Column } from '../columns/column.js';
import { headerKey } from '../match-header.js';
import { bareHeader } from '../spell-headers.js';
import { isSlip } from './find-nearest.js';

/** For an absent column, the index of a header that may be meant for it; a slip of the pen comes before a part of the name. */
export function nearHeaders(
  headers: readonly string[],
  strange: readonly number[],
  absent: readonly Column[],
): Map<Column, number> {
  const nearby = new Map<Column, number>();
  const taken = new Set<number>();
  for (const isNear of [isSlipOf, isPartOf]) {
    for (const index of strange) {
      const header = headers[index] ?? '';
      if (taken.has(index) || isNote(header)) continue;
      const column = absent.find((one) => !nearby.has(one) && isNear(header, one.header));
      if (column === undefined) continue;
      nearby.set(column, index);
      taken.add(index);
    }
  }
  return nearby;
}

/** One or two letters apart, by length; or the known header without its unit: `size` for `size ml`. */
function isSlipOf(written: string, known: string): boolean {
  const key = headerKey(written);
  return key !== '' && (key === headerKey(bareHeader(known)) || isSlip(key, headerKey(known)));
}

/** Of fewer letters, too many names begin. */
const leastLetters = 4;

/** The known header and more, in words of their own (`done step`); or its first letters, four at least (`prio`). */
function isPartOf(written: string, known: string): boolean {
  const key = headerKey(written);
  if (key.length >= leastLetters && headerKey(known).startsWith(key)) return true;
  const [words, wanted] = [wordsOf(written), wordsOf(bareHeader(known))];
  return wanted.every((word, at) => words[at] === word);
}

/** More is a text and no header. */
const longest = 100;

/** `doneStep`, `Done_step` and `done (step)` are two words each. */
export const wordsOf = (header: string): readonly string[] =>
  header
    .slice(0, longest)
    .normalize('NFKC')
    .replace(/(?<=\p{Ll})(?=\p{Lu})/gu, ' ')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

const notes: ReadonlySet<string> = new Set(['note', 'notes', 'comment', 'comments']);

/** Whether a header says that its column is for the painter's eyes: `notes`, `my notes`. */
export function isNote(header: string): boolean {
  return notes.has(wordsOf(header).at(-1) ?? '');
}
