// Checks: which names mean which paint. In: rows of pots, paints and offers. Out: a book in which each name finds its paint.
import type { Describing } from './check-paints.js';
import { foldName } from './fold-name.js';
import { makeNameBook, type NameBook } from './keep-names.js';

interface Naming {
  /** Pots before paints: the first spelling met counts. */
  readonly describing: readonly Describing[];
  /** Paints as the offers name them. */
  readonly offered: readonly string[];
  /** The sheet in which a row of its own makes a name a paint of its own, whoever else claims it. */
  readonly paints: Describing;
}

interface Claims {
  /** Names with a row of their own in the paints sheet. */
  readonly own: ReadonlySet<string>;
  /** By the key of a name that is not a paint: the key of the paint that claims it. */
  readonly meant: Map<string, string>;
  readonly spelling: ReadonlyMap<string, string>;
}

/**
 * Every paint that pots, paints and offers name. A name that stands under `also called` of a paint means that
 * paint everywhere (a pot or an offer may carry the old label), unless it has a row of its own in the paints sheet;
 * that, and a name that two paints claim, is told.
 */
export function namePaints({ describing, offered, paints }: Naming): NameBook {
  const written = [...describing.flatMap(namesIn), ...offered];
  const spelling = new Map(written.toReversed().map((name) => [foldName(name), name]));
  const claims: Claims = { own: new Set(namesIn(paints).map(foldName)), meant: new Map(), spelling };
  for (const from of describing) claimNames(from, claims);

  const book = makeNameBook();
  for (const name of written) if (!claims.meant.has(foldName(name))) book.add(name);
  for (const other of claims.meant.keys())
    book.alias(other, book.add(spellingOf(rootOf(other, claims), claims)));
  return book;
}

const namesIn = ({ sheet }: Describing): string[] => sheet.rows.flatMap(({ paint }) => paint ?? []);

const spellingOf = (key: string, { spelling }: Claims): string => spelling.get(key) ?? key;

/** Follows a name to the paint that claims it. */
function rootOf(key: string, { meant }: Claims): string {
  let root = key;
  for (let next = meant.get(root); next !== undefined; next = meant.get(root)) root = next;
  return root;
}

function claimNames({ sheet }: Describing, claims: Claims): void {
  for (const row of sheet.rows) {
    if (row.paint === undefined) continue;
    for (const found of row.alsoCalled ?? []) {
      const wrong = claimName(row.paint, found, claims);
      if (wrong === undefined) continue;
      sheet.blame(wrong.code, row, 'alsoCalled', { found, expected: wrong.expected });
    }
  }
}

/** Lets a paint claim a name; where the name belongs elsewhere, says why not. */
function claimName(paint: string, other: string, claims: Claims) {
  const claimer = rootOf(foldName(paint), claims);
  const claimed = rootOf(foldName(other), claims);
  if (claimer === claimed) return undefined;
  if (claimed !== foldName(other)) {
    return { code: 'also-called-twice', expected: spellingOf(claimed, claims) } as const;
  }
  if (claims.own.has(claimed)) return { code: 'also-called-own', expected: '' } as const;
  claims.meant.set(claimed, claimer);
  return undefined;
}
