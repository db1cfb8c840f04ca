// Checks: names that rows refer to each other by. In: names as written. Out: the first spelling met, for all of them.
import { findNearest } from './find-nearest.js';
import { foldName, tidyName } from './fold-name.js';

/** Comparisons for near names in one book; after them no nearer name is offered (repeats are capped anyway). */
const mostComparisons = 500_000;

export interface NameBook {
  /** Keeps a name and gives its first spelling. */
  readonly add: (written: string) => string;
  /** Makes `other` another way to say `name`. */
  readonly alias: (other: string, name: string) => void;
  /** The first spelling of a known name, or undefined. */
  readonly find: (written: string) => string | undefined;
  /** Known names that were likely meant, '' for none. */
  readonly nearest: (written: string) => string;
  /** First spellings, in the order in which they were met. */
  readonly all: () => readonly string[];
}

/** An empty book of names. */
export function makeNameBook(): NameBook {
  const byKey = new Map<string, string>();
  const aliases = new Map<string, string>();
  const byWriting = new Map<string, string>();
  const near = new Map<string, string>();
  let comparisons = 0;

  const find = (written: string): string | undefined => {
    const seen = byWriting.get(written);
    if (seen !== undefined) return seen;
    const key = foldName(written);
    const name = byKey.get(key) ?? aliases.get(key);
    if (name !== undefined) byWriting.set(written, name);
    return name;
  };

  const search = (key: string): string => {
    comparisons += byKey.size;
    return comparisons > mostComparisons ? '' : findNearest(key, byKey.values());
  };

  return {
    add: (written) => {
      const key = foldName(written);
      const name = byKey.get(key) ?? aliases.get(key) ?? tidyName(written);
      if (!byKey.has(key) && !aliases.has(key)) byKey.set(key, name);
      return name;
    },
    alias: (other, name) => void aliases.set(foldName(other), name),
    find,
    nearest: (written) => {
      const key = foldName(written);
      const known = near.get(key) ?? search(key);
      near.set(key, known);
      return known;
    },
    all: () => [...byKey.values()],
  };
}
