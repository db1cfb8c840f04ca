import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { branchAndBound } from '../../../src/order/solver/branch-and-bound.js';
import type { IntegerProgram } from '../../../src/order/solver/integer-program.js';
import { solveProgram } from '../../../src/order/solver/solve-program.js';
import { drawProgram } from './draw-program.js';
import { atLeast, atMost, published, tried, whole } from './published-programs.js';

const enough = 1e8;
it.each([...published, ...tried])('known: $name', ({ program, values, cost }) => {
  expect(branchAndBound(program, enough)).toMatchObject({ state: 'proved', values, cost });
});

describe('a search', () => {
  const program: IntegerProgram = { columns: [whole(290, 9), whole(495, 9)], rows: [atLeast(50, [12, 24])] };

  it('keeps a start that nothing undercuts, and finds what does', () => {
    // 50 ml of pots of 12 (290) and 24 (495): 24 + 24 + 12 is 1280; five of 12 cost 1450, three of 24 cost 1485.
    const best = { state: 'proved', cost: 1280, values: [1, 2] };
    expect(branchAndBound(program, enough)).toMatchObject(best);
    expect(branchAndBound({ ...program, start: [5, 0] }, enough)).toMatchObject(best);
    expect(branchAndBound({ ...program, start: [1, 2] }, enough)).toMatchObject(best);
    const alike = { columns: [whole(100, 3), whole(100, 3)], rows: [atLeast(1, [1, 1])], start: [0, 1] };
    expect(branchAndBound(alike, enough)).toMatchObject({ state: 'proved', values: [0, 1] });
  });

  it('says when nothing fits', () => {
    expect(branchAndBound({ columns: [whole(1, 1)], rows: [atMost(-1, [1])] }, enough).state).toBe(
      'impossible',
    );
    // Whole numbers alone: 2 x = 3 has a fraction for an answer.
    const halves = { columns: [whole(1, 5)], rows: [{ ...atLeast(3, [2]), upper: 3 }] };
    expect(branchAndBound(halves, enough).state).toBe('impossible');
  });

  it('ends with its work, with the best so far and without proof', () => {
    expect(branchAndBound(program, 0)).toMatchObject({ state: 'none found' });
    expect(branchAndBound({ ...program, start: [5, 0] }, 0)).toMatchObject({
      state: 'not proved',
      values: [5, 0],
      cost: 1450,
    });
  });

  it('takes the same work each time', () => {
    const { work } = branchAndBound(program, enough);
    expect(work).toBeGreaterThan(0);
    expect(branchAndBound(program, enough).work).toBe(work);
  });
});

describe('sums that are off by rounding', () => {
  it('a need a hair above so many pots is covered by them, and the search ends', () => {
    // 2662 pots of 16.32 ml, and 2e-8 ml more than they hold.
    const need = 2662 * 16.32 + 2e-8;
    const program = {
      columns: [whole(105, 5000), whole(105, 5000), whole(185, 5000), whole(260, 5000)],
      rows: [atLeast(need, [16.32, 16.32]), atLeast(3092 * 11.52 + 1e-8, [0, 0, 11.52, 32.64])],
    };
    // The second need is 35 619.84 ml. 1091 pots of 32.64 hold 35 610.24, and 9.6 ml more take one of 11.52.
    const cost = 2662 * 105 + 1091 * 260 + 185;
    expect(branchAndBound(program, enough)).toMatchObject({ state: 'proved', cost });
  });

  it('what is bought already leaves nothing to buy, though it adds up to a little less', () => {
    const held = (cost: number, lower: number, upper: number) => ({ cost, lower, upper, integer: true });
    const program = {
      columns: [held(260, 0, 9), held(295, 97, 102), held(1450, 2, 2)],
      rows: [atLeast(97 * 16.32 + 2 * 32.64 + 3e-13, [11.52, 16.32, 32.64])],
    };
    expect(branchAndBound(program, enough)).toMatchObject({ state: 'proved', values: [0, 97, 2] });
  });
});

describe('what it is given', () => {
  it('is no start where it breaks a row or a bound', () => {
    const none = { columns: [whole(1, 1)], rows: [atMost(-1, [1])], start: [1] };
    expect(branchAndBound(none, enough).state).toBe('impossible');
    const beyond = { columns: [whole(5, 3), whole(9, 3)], rows: [atLeast(3, [1, 1])], start: [4, 0] };
    expect(branchAndBound(beyond, enough)).toMatchObject({ state: 'proved', values: [3, 0], cost: 15 });
    const under = { ...beyond, start: [1, 1] };
    expect(branchAndBound(under, enough)).toMatchObject({ state: 'proved', values: [3, 0] });
  });

  it('fits, though a small coefficient would make much of what rounding took', () => {
    const row = atLeast(16.32e6 + 0.003 + 2e-9, [16.32, 0.001]);
    const program = { columns: [whole(3, 1e6), whole(1, 3)], rows: [row] };
    expect(branchAndBound(program, enough)).toMatchObject({ state: 'proved', values: [1e6, 3] });
  });
});

describe('without a start', () => {
  it('finds the only solution, whatever it costs', () => {
    const only = { columns: [{ cost: 2, lower: 0, upper: 0, integer: true }], rows: [] };
    expect(branchAndBound(only, enough)).toMatchObject({ state: 'proved', values: [0] });
  });
});

describe('against HiGHS', () => {
  it.each([
    ['whole columns at whole costs', true],
    ['columns of which some are whole, at any cost', false],
  ])('%s cost the same, or neither fits', async (_, isWhole) => {
    let [met, unmet] = [0, 0];
    await fc.assert(
      fc.asyncProperty(drawProgram({ isWhole, mostColumns: 9 }), async (program) => {
        const ours = branchAndBound(program, enough);
        const theirs = await solveProgram(program, { seconds: 10 });
        expect(ours.state).toBe(theirs.state);
        if (ours.state !== 'proved' || theirs.state !== 'proved') return void unmet++;
        met++;
        expect(ours.cost).toBeCloseTo(theirs.bound, 4);
        for (const { lower, upper, terms } of program.rows) {
          const sum = terms.reduce((all, [column, one]) => all + one * (ours.values[column] ?? 0), 0);
          expect(sum).toBeGreaterThanOrEqual(lower - 1e-6);
          expect(sum).toBeLessThanOrEqual(upper + 1e-6);
        }
      }),
      { numRuns: 1000 },
    );
    expect(met).toBeGreaterThan(200);
    expect(unmet).toBeGreaterThan(50);
  });
});
