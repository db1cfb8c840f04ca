import { describe, expect, it } from 'vitest';
import type { Limits, Solve } from '../../../src/order/solver/integer-program.js';
import { shareInTurn, shareSeconds } from '../../../src/order/solver/share-seconds.js';

const program = { columns: [], rows: [] };
const limits: Limits = { seconds: 1 };

/** Takes its seconds, as given, whatever it is asked, and notes what it was allowed. */
function slowSolver(seconds: readonly number[]) {
  const allowed: number[] = [];
  const solve: Solve = async (_, within) => {
    allowed.push(within.seconds);
    return { state: 'proved', values: [], bound: 0, seconds: seconds[allowed.length - 1] ?? 0 };
  };
  return { solve, allowed };
}

describe('searches that share their seconds', () => {
  it('take what the ones before have left, and nothing once that is gone', async () => {
    const { solve, allowed } = slowSolver([0.9, 0.9, 0.2]);
    const shared = shareSeconds(solve, 2);
    const states = [];
    for (let search = 0; search < 5; search++) states.push((await shared(program, limits)).state);
    // 2 s in all: 0.9 and 0.9 leave 0.2 for the third.
    expect(allowed.map((seconds) => Math.round(seconds * 10) / 10)).toEqual([1, 1, 0.2]);
    expect(states).toEqual(['proved', 'proved', 'proved', 'none found', 'none found']);
  });

  it('in turn leave something to those that follow, which may take what is left over', async () => {
    const { solve, allowed } = slowSolver([1, 0.4, 0.1, 0.5]);
    const [first, second, last] = shareInTurn(solve, 2, [0.6, 0.3, 0]) as [Solve, Solve, Solve];
    for (const ask of [first, first, second, last]) await ask(program, limits);
    // Of 2 s the first may take 1.4: 1 and 0.4. The second is left 0.6 - 0.3 and takes 0.1; the last 0.5.
    expect(allowed.map((seconds) => Math.round(seconds * 10) / 10)).toEqual([1, 0.4, 0.3, 0.5]);
    expect((await first(program, limits)).state).toBe('none found');
  });
});
