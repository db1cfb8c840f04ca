// Cells as they are spoken: months by their names (general dictionaries), counts with what is counted.
import { describe, expect, it } from 'vitest';
import { Mistake } from '../../../../src/sheets/check/read-cell/cell-kind.js';
import { figureCount } from '../../../../src/sheets/check/read-cell/read-count.js';
import { dateKind } from '../../../../src/sheets/check/read-cell/read-date.js';
import { servedFigures } from '../../../../src/sheets/check/read-cell/read-number.js';

const codeOf = (read: unknown): unknown => (read instanceof Mistake ? read.code : read);

describe('a date', () => {
  it.each([
    ['14-mrt-2026', '2026-03-14'],
    ['14 March 2026', '2026-03-14'],
    ['1. Mai 2026', '2026-05-01'],
    ['3 août 2025', '2025-08-03'],
    ['9 paź. 2025', '2025-10-09'],
    ['28 Feb 2026', '2026-02-28'],
  ])('%s', (written, day) => {
    expect(dateKind.read(written)).toBe(day);
  });

  it.each([
    ['14 jui 2026', 'not-a-date'],
    ['14 soon 2026', 'not-a-date'],
    ['30 Feb 2026', 'no-such-day'],
  ])('is not %s', (written, code) => {
    expect(codeOf(dateKind.read(written))).toBe(code);
  });
});

it.each([
  ['20 figurines', 20],
  ['10 Stück', 10],
  ['12minis', 12],
  ['20 boats', 'not-a-count'],
  ['1,5 figures', 'not-whole'],
])('%s counts as %s', (written, count) => {
  expect(codeOf(figureCount.read(written))).toBe(count);
});

it('one item serves so many figures', () => {
  expect(servedFigures.read('200 figurines')).toBe(200);
});
