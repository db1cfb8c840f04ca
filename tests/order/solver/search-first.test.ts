import { describe, expect, it } from 'vitest';
import type { IntegerProgram, Limits, Solve } from '../../../src/order/solver/integer-program.js';
import { searchFirst } from '../../../src/order/solver/search-first.js';

const limits: Limits = { seconds: 10 };

/** A cover of so many paints by so many pots each, all at prices of their own. */
function coverOf(paints: number, pots: number): IntegerProgram {
  const columns = Array.from({ length: paints * pots }, (_, at) => ({
    ...{ cost: 200 + ((at * 37) % 61), lower: 0, upper: 9, integer: true },
  }));
  const rows = Array.from({ length: paints }, (_, paint) => ({
    lower: 20 + paint,
    upper: Number.POSITIVE_INFINITY,
    terms: Array.from({ length: pots }, (_, pot) => [paint * pots + pot, 11 + pot] as const),
  }));
  return { columns, rows };
}

/** Notes what it is asked, and has no answer. */
function watch() {
  const asked: { program: IntegerProgram; limits: Limits }[] = [];
  const solve: Solve = async (program, within) => {
    asked.push({ program, limits: within });
    return { state: 'none found', seconds: 2 };
  };
  return { asked, solve: searchFirst(solve) };
}

describe('searchFirst', () => {
  it('solves a small program without the solver, and says what time it took', async () => {
    const { asked, solve } = watch();
    const solution = await solve(coverOf(3, 2), limits);
    expect(solution).toMatchObject({ state: 'proved' });
    expect(solution.seconds).toBeGreaterThan(0);
    expect(solution.seconds).toBeLessThan(0.05);
    expect(asked).toEqual([]);
  });

  it('says that nothing fits', async () => {
    const { asked, solve } = watch();
    const { columns } = coverOf(1, 1);
    const far = {
      columns,
      rows: [{ lower: 1000, upper: Number.POSITIVE_INFINITY, terms: [[0, 11]] as const }],
    };
    expect(await solve(far, limits)).toMatchObject({ state: 'impossible' });
    expect(asked).toEqual([]);
  });

  it('hands a large program on as it is', async () => {
    const { asked, solve } = watch();
    const large = coverOf(400, 2);
    expect(await solve(large, limits)).toEqual({ state: 'none found', seconds: 2 });
    expect(asked).toEqual([{ program: large, limits }]);
  });

  it('hands a column without an end on', async () => {
    const { asked, solve } = watch();
    const [column] = coverOf(1, 1).columns;
    const endless = { ...column, cost: 1, lower: 0, integer: true, upper: Number.POSITIVE_INFINITY };
    await solve({ columns: [endless], rows: [] }, limits);
    expect(asked).toHaveLength(1);
  });

  it('hands on a relaxation that is not small, where there is nothing to branch on', async () => {
    const { asked, solve } = watch();
    const alike = (paints: number): IntegerProgram => {
      const { columns, rows } = coverOf(paints, 1);
      return { columns, rows: rows.map((row) => ({ ...row, lower: 20 })) };
    };
    const relaxed = (paints: number): IntegerProgram => {
      const { columns, rows } = alike(paints);
      return { columns: columns.map((column) => ({ ...column, integer: false })), rows };
    };
    // Rows squared times columns: 144 cubed is just under three million, 145 cubed over it.
    expect(await solve(relaxed(144), limits)).toMatchObject({ state: 'proved' });
    expect(asked).toHaveLength(0);
    await solve(relaxed(145), limits);
    expect(asked).toHaveLength(1);
    expect(await solve(alike(145), limits)).toMatchObject({ state: 'proved' });
    expect(asked).toHaveLength(1);
  });

  it('hands on what it does not prove in its time, with the time that is left', async () => {
    const { asked, solve } = watch();
    // Jeroslow 1974 (Trivial integer programs unsolvable by branch-and-bound): 2 (x1 + ... + x15) + y = 15. Only halves do
    // without y, and thousands of branches must be closed before that is plain.
    const yesOrNo = { cost: 0, lower: 0, upper: 1, integer: true };
    const columns = [{ ...yesOrNo, cost: 1 }, ...Array.from({ length: 15 }, () => yesOrNo)];
    const terms = columns.map((_, at) => [at, at === 0 ? 1 : 2] as const);
    const start = columns.map((_, at) => (at < 8 ? 1 : 0));
    const hard = { columns, rows: [{ lower: 15, upper: 15, terms }], start };
    const solution = await solve(hard, { seconds: 0.001 });
    expect(asked).toHaveLength(1);
    expect(asked[0]?.limits.seconds).toBeLessThan(0.001);
    expect(asked[0]?.program.start).toEqual(start);
    expect(solution.seconds).toBeGreaterThan(2);
  });
});
