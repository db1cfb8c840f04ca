// How a search begins: a large one with a better start where there are many sets.
import { expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { type Buying, cheapestCounts } from '../../src/order/choose-counts.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import type { IntegerProgram, Limits, Solution } from '../../src/order/solver/integer-program.js';
import { drawMarket } from './draw-market.mjs';

/** What comes to a solver that finds nothing, what is made of that, and what is chosen in the end. */
async function begin(size: Parameters<typeof drawMarket>[1]) {
  const { needs, ...shelves } = drawMarket(1, size);
  const asked: { program: IntegerProgram; limits: Limits }[] = [];
  const found: Solution[] = [];
  const { solve, ...rest } = prepareBuying({
    solve: async (program, limits) => {
      asked.push({ program, limits });
      return { state: 'none found', seconds: 0.5 };
    },
    seconds: 10,
  });
  const buying: Buying = {
    ...rest,
    solve: async (program, limits) => {
      const solution = await solve(program, limits);
      found.push(solution);
      return solution;
    },
  };
  const chosen = await cheapestCounts(needs, { ...shelves, assumptions: registry }, buying);
  return { asked, found, chosen, seconds: buying.limits.seconds };
}

const startCost = ({ columns, start = [] }: IntegerProgram): number =>
  columns.reduce((sum, { cost }, column) => sum + cost * (start[column] ?? 0), 0);

it('of many sets begins with them swapped, and ends there where the solver finds nothing', async () => {
  // The first order, each paint by itself, costs 458.47.
  const { asked, found, chosen, seconds } = await begin({ paints: 100, offers: 170, shops: 5, sets: 0.28 });
  const [{ program, limits }] = asked as [(typeof asked)[0]];
  expect(chosen.totalMinor).toBeLessThan(36_000);
  expect(chosen.aboveBestMinor).toBeGreaterThan(0);
  expect(startCost(program)).toBe(chosen.totalMinor);
  // What it took is off the solver's time, no more than a quarter, and counted.
  expect(limits.seconds).toBeLessThan(seconds);
  expect(limits.seconds).toBeGreaterThan(0.7 * seconds);
  expect(found[0]?.seconds).toBeCloseTo(seconds - limits.seconds + 0.5, 9);
  // A thread can be sent it.
  expect(structuredClone(program)).toEqual(program);
});

it('of few sets leaves the start and all the time to the solver', async () => {
  const { asked, found, seconds } = await begin({ paints: 100, offers: 170, shops: 5, sets: 0.1 });
  expect(asked[0]?.limits.seconds).toBe(seconds);
  expect(found).toEqual([{ state: 'none found', seconds: 0.5 }]);
});
