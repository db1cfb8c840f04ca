import { describe, expect, it } from 'vitest';
import type { IntegerProgram } from '../../../src/order/solver/integer-program.js';
import { presolve } from '../../../src/order/solver/presolve.js';
import {
  isMuchSmaller,
  openSubproblem,
  propagateNode,
  restrict,
} from '../../../src/order/solver/subproblem.js';
import { atLeast, whole } from './published-programs.js';

const bounds = (lower: readonly number[], upper: readonly number[]) => ({
  lower: Float64Array.from(lower),
  upper: Float64Array.from(upper),
});

/** Two pots of one shop for one need, and its postage, which a sum of goods makes free. */
const shop: IntegerProgram = {
  columns: [whole(290, 3), whole(495, 2), whole(395, 1), whole(-395, 1)],
  rows: [
    atLeast(50, [12, 24]),
    atLeast(0, [-1, 0, 3]),
    atLeast(0, [0, -1, 2]),
    atLeast(0, [0, 0, 1, -1]),
    atLeast(0, [290, 495, 0, -1000]),
  ],
};

const open = (program: IntegerProgram) => {
  const upper = program.columns.map((column) => column.upper);
  const lower = program.columns.map((column) => column.lower);
  return openSubproblem(presolve(program, bounds(lower, upper)), { touched: 0 });
};

describe('a subproblem', () => {
  it('branches on a shop before its free postage, and both before pots, however dear', () => {
    const [small, large, used, free] = [0, 0, 2, 1];
    expect([...open(shop).ranks]).toEqual([small, large, used, free]);
  });

  it('closes with a shop what it sells, and counts what is left', () => {
    const part = open(shop);
    const all = bounds([0, 0, 0, 0], [3, 2, 1, 1]);
    // 36 ml of the small pots and 48 of the large do not do alone, so there is one of each, and the shop is bought from.
    // Both pots and the free postage are open still; of the rows the need, the first pot's (which said so), and the sum of goods.
    expect(propagateNode(all, part, { touched: 0 })).toBe(3 * 3);
    expect([...all.lower]).toEqual([1, 1, 1, 0]);
    expect(propagateNode(bounds([0, 0, 0, 0], [3, 2, 0, 1]), part, { touched: 0 })).toBeUndefined();
  });

  it('reads the values of a subproblem of a subproblem as those of the whole', () => {
    const work = { touched: 0 };
    const outer = restrict(open(shop), bounds([0, 0, 1, 0], [3, 2, 1, 1]), work);
    expect([outer.baseCost, ...outer.postsolve([1, 2, 0])]).toEqual([395, 1, 2, 1, 0]);
    const inner = restrict(outer, bounds([0, 1, 0], [3, 2, 0]), work);
    expect([inner.baseCost, ...inner.postsolve([2, 1])]).toEqual([395 + 495, 2, 2, 1, 0]);
    expect(work.touched).toBeGreaterThan(0);
  });

  it('becomes smaller only where it is large, and by half', () => {
    const many = {
      columns: Array.from({ length: 60 }, () => whole(290, 3)),
      rows: Array.from({ length: 40 }, (_, row) => ({
        ...atLeast(30, []),
        terms: [[row, 12] as const, [row + 20, 24] as const],
      })),
    };
    const part = open(many);
    expect(isMuchSmaller(60 * 20, part)).toBe(true);
    expect(isMuchSmaller(60 * 20 + 1, part)).toBe(false);
    expect(isMuchSmaller(0, part)).toBe(false);
    expect(isMuchSmaller(1, open(shop))).toBe(false);
  });
});
