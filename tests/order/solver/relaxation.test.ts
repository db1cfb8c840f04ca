import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Column, Row } from '../../../src/order/solver/integer-program.js';
import { Relaxation } from '../../../src/order/solver/relaxation.js';
import { solveProgram } from '../../../src/order/solver/solve-program.js';
import { scaleRow } from '../../../src/order/solver/sparse-rows.js';
import { drawProgram } from './draw-program.js';
import { atLeast, atMost } from './published-programs.js';

const part = (cost: number, upper: number, lower = 0): Column => ({ cost, lower, upper, integer: false });
const open = (columns: readonly Column[], rows: readonly Row[]): Relaxation =>
  new Relaxation(columns, rows.map(scaleRow), { touched: 0 });

function valuesOf(relaxation: Relaxation, count: number): number[] {
  const values = new Float64Array(count);
  relaxation.readValues(values);
  return [...values];
}

describe('published linear programs', () => {
  it('the first one of Chvátal, Linear Programming (1983), chapter 2: 13 at (2, 0, 1) (from memory)', () => {
    const rows = [atMost(5, [2, 3, 1]), atMost(11, [4, 1, 2]), atMost(8, [3, 4, 2])];
    const relaxation = open([part(-5, 100), part(-4, 100), part(-3, 100)], rows);
    expect(relaxation.solve(0)).toBe('optimal');
    expect(valuesOf(relaxation, 3)).toEqual([2, 0, 1].map((value) => expect.closeTo(value, 9)));
    expect(relaxation.dualBound()).toBeCloseTo(-13, 9);
  });
});

describe('by hand', () => {
  it('two foods, two needs: the corner where both hold just so', () => {
    // 2 x + y >= 8, x + 3 y >= 9, cost 3 x + 4 y: at x = 3, y = 2 both hold just so, 17; (0, 8) costs 32, (9, 0) 27.
    const relaxation = open([part(3, 50), part(4, 50)], [atLeast(8, [2, 1]), atLeast(9, [1, 3])]);
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(valuesOf(relaxation, 2)).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
    expect(relaxation.dualBound()).toBeCloseTo(17, 9);
  });
});

describe('a relaxation', () => {
  const rows = [atLeast(10, [1, 1])];
  const bounds = (...numbers: number[]): Float64Array => Float64Array.from(numbers);

  it('goes on from its last basis when bounds are moved, and back', () => {
    const relaxation = open([part(1, 8), part(2, 8)], rows);
    relaxation.solve(1000);
    expect(relaxation.dualBound()).toBeCloseTo(8 + 2 * 2, 9);
    relaxation.setBounds(bounds(0, 0), bounds(3, 8));
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(relaxation.dualBound()).toBeCloseTo(3 + 7 * 2, 9);
    relaxation.setBounds(bounds(0, 0), bounds(8, 8));
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(relaxation.dualBound()).toBeCloseTo(8 + 2 * 2, 9);
  });

  it('is pruned where nothing costs as little as the cutoff, and where nothing is feasible', () => {
    const relaxation = open([part(1, 8), part(2, 8)], rows);
    expect(relaxation.solve(11.9)).toBe('pruned');
    expect(relaxation.solve(12.1)).toBe('optimal');
    relaxation.setBounds(bounds(0, 0), bounds(4, 5));
    expect(relaxation.solve(Number.MAX_SAFE_INTEGER)).toBe('pruned');
  });

  it('drops cuts that are slack, and no other rows', () => {
    // At (8, 2) x + y >= 10 holds just so; x + 2 y >= 5 and x <= 9 have room to spare, the first of them must stay.
    const relaxation = open([part(1, 8), part(2, 8)], [...rows, atLeast(5, [1, 2]), atMost(9, [1, 0])]);
    relaxation.solve(1000);
    relaxation.dropSlackCuts(2);
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(relaxation.dualBound()).toBeCloseTo(12, 9);
    // Begun anew it is the same program, but for the row left out: with x up to 20 that would have held it at 9.
    relaxation.setBounds(bounds(0, 0), bounds(20, 8));
    relaxation.restart();
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(valuesOf(relaxation, 2)).toEqual([expect.closeTo(10, 9), expect.closeTo(0, 9)]);
    // The other row is still there: it asks for y where x may be no more than 1.
    relaxation.setBounds(bounds(0, 0), bounds(1, 9));
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(valuesOf(relaxation, 2)).toEqual([expect.closeTo(1, 9), expect.closeTo(9, 9)]);
  });

  it('takes rows that come later, and is then the same as with them from the start', () => {
    // Two foods again, the second need later: (4, 0) at 12, then (3, 2) at 17.
    const foods = [part(3, 50), part(4, 50)];
    const relaxation = open(foods, [atLeast(8, [2, 1])]);
    relaxation.solve(1000);
    expect(relaxation.dualBound()).toBeCloseTo(12, 9);
    relaxation.addRows([scaleRow(atLeast(9, [1, 3]))]);
    expect(relaxation.solve(1000)).toBe('optimal');
    expect(valuesOf(relaxation, 2)).toEqual([expect.closeTo(3, 9), expect.closeTo(2, 9)]);
    fc.assert(
      fc.property(
        drawProgram({ isWhole: false, mostColumns: 7 }),
        fc.nat(8),
        ({ columns, rows: all }, first) => {
          const late = open(columns, all.slice(0, first));
          if (late.solve(1e6) === 'optimal') late.addRows(all.slice(first).map(scaleRow));
          const soon = open(columns, all);
          const relaxed = soon.solve(1e6);
          expect(late.solve(1e6)).toBe(relaxed);
          if (relaxed === 'optimal') expect(late.dualBound()).toBeCloseTo(soon.dualBound(), 4);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('tells what branching costs at the least: by hand, and never more than it does', () => {
    // 16 x + 12 y >= 20 at 3 and 4: x = 1.25. One more x takes nothing off y, which is 0, so each costs its 3; one fewer is made up
    // for by 16 / 12 y at 4, which saves the 3 of x: 16/3 - 3.
    const pots = open([part(3, 9), part(4, 9)], [atLeast(20, [16, 12])]);
    pots.solve(1000);
    const { down, up } = pots.penalties(0);
    expect([down, up]).toEqual([expect.closeTo(16 / 3 - 3, 9), expect.closeTo(3, 9)]);
    expect(pots.penalties(1)).toEqual({ down: 0, up: 0 });
    expect(pots.childBounds(0, 1.25)).toEqual({
      down: expect.closeTo(3.75 + 0.25 * (16 / 3 - 3), 9),
      up: expect.closeTo(6, 9),
    });
    fc.assert(
      fc.property(drawProgram({ isWhole: false, mostColumns: 7 }), ({ columns, rows: all }) => {
        const relaxation = open(columns, all);
        if (relaxation.solve(1e6) !== 'optimal') return;
        for (const [column, value] of valuesOf(relaxation, columns.length).entries()) {
          if (Math.abs(value - Math.round(value)) < 1e-6) continue;
          const ofChildren = relaxation.childBounds(column, value);
          const child = (ends: Partial<Column>) => {
            const one = open(
              columns.map((own, at) => (at === column ? { ...own, ...ends } : own)),
              all,
            );
            return one.solve(1e6) === 'optimal' ? one.dualBound() : 1e6;
          };
          const least = { down: child({ upper: Math.floor(value) }), up: child({ lower: Math.ceil(value) }) };
          expect(ofChildren.down).toBeLessThanOrEqual(least.down + 1e-6);
          expect(ofChildren.up).toBeLessThanOrEqual(least.up + 1e-6);
          expect(Math.min(ofChildren.down, ofChildren.up)).toBeGreaterThan(relaxation.dualBound() - 1e-6);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('never bounds from too high, and agrees with HiGHS', async () => {
    await fc.assert(
      fc.asyncProperty(drawProgram({ isWhole: false, mostColumns: 7 }), async ({ columns, rows }) => {
        const loose = columns.map((column) => ({ ...column, integer: false }));
        const theirs = await solveProgram({ columns: loose, rows }, { seconds: 10 });
        const ours = open(loose, rows);
        const relaxed = ours.solve(1e6);
        expect([theirs.state, relaxed]).toEqual(
          theirs.state === 'impossible' ? ['impossible', 'pruned'] : ['proved', 'optimal'],
        );
        if (relaxed === 'pruned') return;
        const cost = 'bound' in theirs ? theirs.bound : Number.NaN;
        expect(ours.dualBound()).toBeLessThanOrEqual(cost + 1e-6);
        expect(ours.dualBound()).toBeCloseTo(cost, 4);
      }),
      { numRuns: 500 },
    );
  });
});
