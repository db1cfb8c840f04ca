// Problems in sheet and row order, and repeats capped for display.
import { describe, expect, it } from 'vitest';
import type { Place } from '../../src/model/problem.js';
import { type ProblemCode, problem, problemCodes, saysOf } from '../../src/problems/catalogue.js';
import { capRepeats, orderProblems } from '../../src/problems/order-problems.js';
import { wordProblem } from '../../src/problems/word-problem.js';

const at = (place: Partial<Place>, code: ProblemCode = 'zero') => problem(code, { file: 'x.csv', ...place });

describe('orderProblems', () => {
  it('goes by sheet, row and column; wider places come first', () => {
    const right = [
      at({ file: 'x' }),
      at({ sheet: 'pots' }),
      at({ sheet: 'pots', row: 2 }),
      at({ sheet: 'pots', row: 2, cell: 'B2' }),
      at({ sheet: 'pots', row: 2, cell: 'Z2' }),
      at({ sheet: 'pots', row: 2, cell: 'AA2' }),
      at({ sheet: 'pots', row: 10, cell: 'A10' }),
      at({ sheet: 'army', row: 1, cell: 'A1' }),
    ];
    const input = right.toReversed();
    expect(orderProblems(input)).toEqual(right);
    expect(input).toEqual(right.toReversed());
  });

  it('keeps the order of problems at one place', () => {
    const both = [
      at({ sheet: 'pots', row: 2, cell: 'A2' }, 'zero'),
      at({ sheet: 'pots', row: 2, cell: 'A2' }, 'negative'),
    ];
    expect(orderProblems(both)).toEqual(both);
  });
});

describe('capRepeats', () => {
  it('shows the first of the same kind in the same column, and counts the rest', () => {
    const sizes = Array.from({ length: 42 }, (_, index) =>
      at({ sheet: 'pots', column: 'size ml', row: index + 2 }),
    );
    const price = at({ sheet: 'pots', column: 'price', row: 2 });
    const [first, second, ...others] = capRepeats([...sizes.slice(0, 1), price, ...sizes.slice(1)]);
    expect(first).toEqual({ shown: sizes.slice(0, 5), more: 37 });
    expect(second).toEqual({ shown: [price], more: 0 });
    expect(others).toEqual([]);
  });
});

describe('the words', () => {
  it('have no gap left to fill, with something expected and without', () => {
    for (const code of problemCodes) {
      for (const expected of ['', 'THIS']) {
        const one = problem(code, { file: 'pots.csv' }, { found: 'THAT', expected });
        expect(`${saysOf(one)} ${one.hint}`).not.toMatch(/[{}[\]]/);
        expect(one.hint).toMatch(/^\p{Lu}.*\.$/u);
        expect(saysOf(one)).not.toMatch(/\.$/);
      }
    }
  });

  it('leave what the painter wrote as it is', () => {
    const one = problem(
      'unknown-paint',
      { file: 'pots.csv' },
      { found: '[a] {expected} $1', expected: '{found} [b]' },
    );
    expect(wordProblem(one)).toBe(
      'pots.csv: no sheet of yours knows the paint "[a] {expected} $1". Add it to the pots, paints or offers sheet, or spell it as there: {found} [b].',
    );
  });

  it('name the sheet of a workbook, and widen the place where there is no cell', () => {
    const place: Place = { file: 'army.xlsx', sheet: 'pots', row: 14, column: 'size ml', cell: 'B14' };
    const words = (of: Place): string => wordProblem(problem('not-a-volume', of, { found: 'a dab' }));
    const rest = ': "a dab" is not a volume. Write a number of millilitres, such as 12.5.';
    expect(words(place)).toBe(`army.xlsx, sheet pots, row 14, "size ml" (B14)${rest}`);
    expect(words({ ...place, file: 'pots.csv' })).toBe(`pots.csv row 14, "size ml" (B14)${rest}`);
    expect(words({ file: 'pots.csv', sheet: 'pots', row: 14 })).toBe(`pots.csv row 14${rest}`);
    expect(words({ file: 'pots.csv', sheet: 'pots' })).toBe(`pots.csv${rest}`);
  });
});
