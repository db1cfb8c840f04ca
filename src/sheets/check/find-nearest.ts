// Checks: the known name that was likely meant. In: a name, the known ones. Out: the nearest in words, '' for none.
import { distance } from 'fastest-levenshtein';

const most = 3;
/** Comparing takes the lengths of both multiplied; nobody misspells a longer name by a letter. */
const longest = 100;

/** Letters that may differ: one in three, at least one. */
const allowed = (letters: number): number => Math.max(1, Math.floor(letters / 3));

/** Up to three names near `written`, joined with "or"; '' where none is near. */
export const findNearest = (written: string, names: Iterable<string>): string =>
  joinOr(listNearest(written, names));

/** Up to three names near `written`, the nearest first. */
export function listNearest(written: string, names: Iterable<string>): string[] {
  const wanted = written.toLowerCase();
  const near: { readonly name: string; readonly letters: number }[] = [];
  for (const name of names) {
    const letters = lettersApart(wanted, name.toLowerCase());
    if (letters !== undefined) near.push({ name, letters });
  }
  near.sort((a, b) => a.letters - b.letters || (a.name < b.name ? -1 : 1));
  return near.slice(0, most).map(({ name }) => name);
}

/** Undefined where two names are too far apart to be meant for each other. */
function lettersApart(wanted: string, name: string): number | undefined {
  if (wanted.length > longest) return undefined;
  const limit = allowed(Math.min(wanted.length, name.length));
  if (Math.abs(wanted.length - name.length) > limit) return holds(name, wanted) ? limit + 1 : undefined;
  const letters = lettersBetween(wanted, name);
  return letters <= limit ? letters : undefined;
}

/** `white` is near `bone white`: a whole word of it. */
const holds = (name: string, wanted: string): boolean =>
  wanted.length >= 4 && ` ${name} `.includes(` ${wanted} `);

/** `a`, `a or b`, `a, b or c`. */
export function joinOr(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} or ${names.at(-1)}`;
}

/** Short words differ by a letter easily. */
const slips = (letters: number): number => (letters < 4 ? 0 : letters < 7 ? 1 : 2);

/**
 * Whether two words are so close that one may be a slip for the other: one letter apart, two from seven letters on.
 * Stricter than `findNearest`, for words that nothing else is wrong with.
 */
export function isSlip(one: string, other: string): boolean {
  if (one.length > longest) return false;
  const most = slips(Math.min(one.length, other.length));
  return Math.abs(one.length - other.length) <= most && lettersBetween(one, other) <= most;
}

/** Letters to be put in, out or right; two neighbours swapped are one. */
export function lettersBetween(one: string, other: string): number {
  return isSwap(one, other) ? 1 : distance(one, other);
}

function isSwap(one: string, other: string): boolean {
  if (one.length !== other.length) return false;
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  const isTurned = at + 1 < one.length && one[at] === other[at + 1] && one[at + 1] === other[at];
  return isTurned && one.slice(at + 2) === other.slice(at + 2);
}
