// Checks: words out of a closed list. In: a cell, the list. Out: the word as the list spells it, or a mistake.
import type { Called } from '../../columns/choice-words.js';
import { headerKey, nameKey } from '../../match-header.js';
import { findNearest, joinOr } from '../find-nearest.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';

/** Finds a word of a list whatever its case, blanks and hyphens; by what else it is called whatever its accents, too. */
export function wordFinder<T extends string>(
  words: readonly T[],
  called?: Called<T>,
): (written: string) => T | undefined {
  const seen = new Map<string, T>(words.map((word) => [word, word]));
  let byKey: ReadonlyMap<string, T> | undefined;
  return (written) => {
    const known = seen.get(written);
    if (known !== undefined) return known;
    // Put together for the first word that is written otherwise.
    byKey ??= keysOf(words, called);
    const word = byKey.get(nameKey(written)) ?? byKey.get(headerKey(written));
    if (word !== undefined) seen.set(written, word);
    return word;
  };
}

/** The words' own keys before those of what else they are called. */
function keysOf<T extends string>(words: readonly T[], called?: Called<T>): ReadonlyMap<string, T> {
  const others = words.flatMap((word) =>
    (called?.[word]?.split(', ') ?? []).map((other): [string, T] => [headerKey(other), word]),
  );
  return new Map([...others, ...words.map((word): [string, T] => [nameKey(word), word])]);
}

/** A cell that holds one word of a list. */
export function choiceKind<T extends string>(
  noun: string,
  words: readonly T[],
  called?: Called<T>,
): CellKind<T> {
  const find = wordFinder(words, called);
  return {
    noun,
    choices: words,
    read: (cell) => (typeof cell === 'string' ? find(cell) : undefined) ?? notAChoice(cell, words),
  };
}

/** The nearest words, or the whole list where none is near. */
function wordsNear(written: string, words: readonly string[]): string {
  return findNearest(written, words) || joinOr(words);
}

function notAChoice(cell: Written, words: readonly string[]): Mistake {
  return new Mistake('not-a-choice', wordsNear(String(cell), words));
}

const findYes = wordFinder(['yes', 'y', 'true', 'no', 'n', 'false']);

/** `yes` or `no`; a workbook's TRUE and FALSE are taken too. */
export const yesKind: CellKind<boolean> = {
  noun: 'yes or no',
  choices: ['yes', 'no'],
  read: (cell) => {
    const word = findYes(String(cell));
    return word === undefined ? new Mistake('not-a-choice', 'yes or no') : /^[yt]/.test(word);
  },
};
