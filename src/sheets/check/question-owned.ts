// Checks: a column of the pots sheet that says which paints are owned. In: its table. Out: a warning at its header where it says
// no of any row, since every row counts as a pot.
import { problem } from '../../problems/catalogue.js';
import { cellAddress } from '../read/name-cell.js';
import { isOpen } from '../spell-headers.js';
import { type Cell, type Table, textOfObject } from '../table.js';
import { type Findings, tell } from './collect-findings.js';
import { isNote, wordsOf } from './near-headers.js';
import { Mistake, readCell } from './read-cell/cell-kind.js';
import { yesKind } from './read-cell/read-choice.js';

/** English, German, French, Spanish, Italian, Dutch, Polish. */
const owning: ReadonlySet<string> = new Set(
  (
    'own owned have got stock besitz besitze vorhanden habe possédé possédée ai poseo tengo tenemos posseduto ' +
    'possiedo ho bezit heb posiadam posiadane mam'
  ).split(' '),
);

/** Columns that are looked into; only a table gone wrong has more. */
const mostAsked = 10;

export function questionOwned(table: Table, findings: Findings): void {
  const { file, sheet, headerRow: row, headers } = table;
  const owned = headers.flatMap((header, index) => {
    const isOwning = wordsOf(header).some((word) => owning.has(word));
    return !isOwning || isNote(header) || !isOpen(table, header) ? [] : [{ header, index }];
  });
  for (const { header, index } of owned.slice(0, mostAsked)) {
    const cells = table.rows.map(({ cells }) => cells[index] ?? '');
    const none = cells.findIndex(saysNo);
    if (none === -1 || cells.every((cell) => cell === '')) continue;
    const place = { file, sheet, row, column: header, cell: cellAddress(index + 1, row) };
    const found = shown(cells[none] ?? '');
    tell(
      findings,
      problem('rows-maybe-not-owned', place, { found, expected: `row ${table.rows[none]?.row}` }),
    );
  }
}

const nothing = /^(?:[-\u2013?0]|none|nein|non|nie|nee|)$/i;

function saysNo(cell: Cell): boolean {
  if (nothing.test(shown(cell))) return true;
  const read = readCell(yesKind, cell);
  return !(read instanceof Mistake) && !read;
}

const shown = (cell: Cell): string => (typeof cell === 'object' ? textOfObject(cell) : String(cell).trim());
