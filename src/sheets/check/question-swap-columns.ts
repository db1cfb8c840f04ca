// Checks: columns of the painter's own in the swaps sheet that would narrow a swap down. In: its table. Out: a warning at each
// such header, as a swap holds for a unit, a scheme, a step and a paint, and for nothing less.
import { problem } from '../../problems/catalogue.js';
import { cellAddress } from '../read/name-cell.js';
import { isOpen } from '../spell-headers.js';
import type { Table } from '../table.js';
import { type Findings, tell } from './collect-findings.js';
import { isNote, wordsOf } from './near-headers.js';

const narrower = ['figure', 'zone', 'layer'] as const;

/** A blank column narrows nothing down. */
export function questionSwapColumns(table: Table, findings: Findings): void {
  const { file, sheet, headerRow: row } = table;
  for (const [index, header] of table.headers.entries()) {
    const words = wordsOf(header);
    const expected = narrower.find((one) => words.includes(one) || words.includes(`${one}s`));
    if (expected === undefined || isNote(header) || !isOpen(table, header)) continue;
    if (table.rows.every(({ cells }) => (cells[index] ?? '') === '')) continue;
    const place = { file, sheet, row, column: header, cell: cellAddress(index + 1, row) };
    tell(findings, problem('swap-not-narrowed', place, { expected }));
  }
}
