// How the sheets were read, as the report shows it: an arrow where a header is not the column's own name, a question where one
// was asked.
import { describe, expect, it } from 'vitest';
import { viewSheets } from '../../../../src/report/sections/sheets/view.js';
import { viewInputs } from '../../../../src/report/words/view-inputs.js';
import { wordColumnsRead } from '../../../../src/report/words/word-read.js';
import { smallPlan } from '../../a-small-plan.js';

const plain = (text = ''): string => text.replace(/[\u2068\u2069]/g, '');

describe('the sheets that were read', () => {
  it('have a row each', () => {
    const rows = viewSheets(viewInputs(smallPlan))?.rows ?? [];
    expect(rows.map((row) => Object.values(row).map(plain))).toEqual([
      ['pots', 'pots.csv, row 3', 'Colour -> paint, size ml', 'In the pot (left?), shade'],
    ]);
  });

  it('are left out where nobody read any', () => {
    expect(viewSheets(viewInputs({ ...smallPlan, read: [] }))).toBeUndefined();
  });
});

describe('headers', () => {
  const read = (...headers: readonly string[]) => {
    const columns = headers.map((header) => ({ header, isOwn: false }));
    return wordColumnsRead({ sheet: 'pots', file: 'pots.csv', headerRow: 1, columns }, (header) => header);
  };

  it('are cut where they are whole texts', () => {
    expect(read('x'.repeat(40)).alone).toEqual(['x'.repeat(40)]);
    expect(read(`a\n b${'x'.repeat(41)}`).alone).toEqual([`a b${'x'.repeat(37)} ...`]);
  });

  it('are named up to a hundred', () => {
    const many = Array.from({ length: 102 }, (_, at) => `h${at}`);
    expect(read(...many.slice(0, 100)).alone).toHaveLength(100);
    expect(read(...many).alone.slice(99)).toEqual(['h99', 'and 2 more']);
  });
});
