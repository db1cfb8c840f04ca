// Checks: columns of the painter's own that say what no column of the sheet does. In: a table. Out: a warning at each such
// header: of pots that are not owned, since every row counts as a pot; of swaps for less than a unit, scheme, step and paint.
import { problem } from '../../problems/catalogue.js';
import { isOpen } from '../spell-headers.js';
import { type Cell, headerPlace, type Table, textOfObject } from '../table.js';
import { type Findings, tell } from './collect-findings.js';
import { isNote, wordsOf } from './near-headers.js';
import { Mistake, readCell } from './read-cell/cell-kind.js';
import { yesKind } from './read-cell/read-choice.js';

interface Own {
  readonly index: number;
  /** The word for which it was looked for. */
  readonly word: string;
  readonly cells: readonly Cell[];
}

/** Columns that are looked into; only a table gone wrong has more. */
const mostAsked = 10;

/** Columns that nothing says the meaning of, with such a word in their header and something in their cells. */
function ownWith(table: Table, find: (words: readonly string[]) => string | undefined): readonly Own[] {
  const asked = table.headers.flatMap((header, index) => {
    const word = isNote(header) || !isOpen(table, header) ? undefined : find(wordsOf(header));
    return word === undefined ? [] : [{ index, word }];
  });
  return asked.slice(0, mostAsked).flatMap(({ index, word }) => {
    const cells = table.rows.map((row) => row.cells[index] ?? '');
    return cells.every((cell) => cell === '') ? [] : [{ index, word, cells }];
  });
}

const narrower = ['figure', 'zone', 'layer'] as const;

export function questionSwapColumns(table: Table, findings: Findings): void {
  const find = (words: readonly string[]) =>
    narrower.find((one) => words.includes(one) || words.includes(`${one}s`));
  for (const { index, word: expected } of ownWith(table, find))
    tell(findings, problem('swap-not-narrowed', headerPlace(table, index), { expected }));
}

/** English, German, French, Spanish, Italian, Dutch, Polish. */
const owning: ReadonlySet<string> = new Set(
  (
    'own owned have got stock besitz besitze vorhanden habe possédé possédée ai poseo tengo tenemos posseduto ' +
    'possiedo ho bezit heb posiadam posiadane mam'
  ).split(' '),
);

export function questionOwned(table: Table, findings: Findings): void {
  const owned = ownWith(table, (words) => words.find((word) => owning.has(word)));
  for (const { index, cells } of owned) {
    const none = cells.findIndex(saysNo);
    if (none === -1) continue;
    const details = { found: shown(cells[none] ?? ''), expected: `row ${table.rows[none]?.row}` };
    tell(findings, problem('rows-maybe-not-owned', headerPlace(table, index), details));
  }
}

const nothing = /^(?:[-\u2013?0]|none|nein|non|nie|nee|)$/i;

function saysNo(cell: Cell): boolean {
  if (nothing.test(shown(cell))) return true;
  const read = readCell(yesKind, cell);
  return !(read instanceof Mistake) && !read;
}

const shown = (cell: Cell): string => (typeof cell === 'object' ? textOfObject(cell) : String(cell).trim());
