// Steps, groups and cuts: a way that keeps the promise keeps to every row, a way that does not breaks one.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutInputs, cutRows, pairRows } from '../../../src/order/promise/cut-rows.js';
import { groupDraws } from '../../../src/order/promise/group-draws.js';
import type { Asked } from '../../../src/order/promise/list-asked.js';
import { countOver, listSteps } from '../../../src/order/promise/list-steps.js';

const asked = (paint: string, ml: readonly number[]): Asked => {
  const column = Float64Array.from(ml);
  return {
    paint,
    ml: column,
    rising: column.slice().sort(),
    lackMl: column,
    gains: new Map(),
  };
};

const all = { shareLeft: 0 };
const pots = (ml: number) => ({
  sizes: [{ ml, most: Number.POSITIVE_INFINITY }],
  supplyMl: Number.POSITIVE_INFINITY,
});

describe('steps of a paint', () => {
  // Pots of 10 ml; ten draws.
  const slate = asked('Slate', [-4, 1, 5, 10, 11, 18, 25, 31, 44, 60]);

  it('begin with its own quantile, in whole pots, and end where every draw is served', () => {
    // Two draws may fail: the others ask for up to 31.
    expect(listSteps(slate, { ...pots(10), mayFail: 2 }, all)).toEqual({
      paint: 'Slate',
      amounts: [40, 50, 60],
      beyond: [31, 40, 50],
    });
    expect(listSteps(slate, { ...pots(10), mayFail: 9 }, all).amounts).toEqual([0, 10, 20, 30, 40, 50, 60]);
  });

  it('end sooner where few draws are left, and what asks for more takes the last', () => {
    const steps = listSteps(slate, { ...pots(10), mayFail: 4 }, { shareLeft: 0.25 });
    expect(steps.amounts).toEqual([20, 30, 40, 50]);
    const { groups, hopeless } = groupDraws([slate], [steps], () => Number.POSITIVE_INFINITY);
    expect(groups.map(({ draws, steps: [step] }) => [step, draws])).toEqual([
      [1, 1],
      [2, 1],
      [3, 2],
    ]);
    expect(hopeless).toBe(0);
  });

  it('of many lie about some amounts, at distances that double, so that a draw takes the last that it needs', () => {
    // Pots of 1 ml, up to 320: the first 161 places apart by ten, and about 100 ml those 1, 2, 4 to 128 away.
    const oat = asked('Oat', [0, 0, 0, 0, 0, 0, 0, 0, 120, 320]);
    const { amounts, beyond } = listSteps(
      oat,
      { ...pots(1), mayFail: 9 },
      { shareLeft: 0, about: [new Map([['Oat', 100]])] },
    );
    const evenly = Array.from({ length: 17 }, (_, one) => 20 * one);
    const about = [1, 2, 4, 8, 16, 32, 64, 128].flatMap((apart) => [100 - apart, 100 + apart]);
    const places = [...new Set([...evenly, 100, ...about])].filter((ml) => ml >= 0).sort((a, b) => a - b);
    expect(amounts).toEqual(places);
    expect(beyond).toEqual(places.map((ml) => Math.max(0, ml - 1)));
  });

  it('leave draws without hope that ask for more than there is', () => {
    const steps = listSteps(slate, { ...pots(10), supplyMl: 30, mayFail: 9 }, all);
    expect(steps.amounts).toEqual([0, 10, 20, 30]);
    expect(groupDraws([slate], [steps], () => 30).hopeless).toBe(3);
  });

  it.each([
    [-5, 10],
    [0, 9],
    [10, 6],
    [10.5, 6],
    [60, 0],
  ])('draws that ask for more than %f ml: %i', (ml, count) => {
    expect(countOver(slate.rising, ml)).toBe(count);
  });
});

/** Values of the columns where each paint is raised to a step. */
function raisedTo(way: readonly number[], { stepColumns }: Pick<CutInputs, 'stepColumns'>): number[] {
  const values: number[] = [];
  for (const [place, columns] of stepColumns.entries())
    for (const [step, column] of columns.entries()) values[column] = step < (way[place] ?? 0) ? 1 : 0;
  return values;
}

describe('cuts', () => {
  it('by hand: two paints, five draws of which one may fail', () => {
    // Slate takes a step in draws 1 to 3, Oat in draws 3 to 5.
    const two = [asked('Slate', [5, 5, 5, 0, 0]), asked('Oat', [0, 0, 5, 5, 5])];
    const steps = two.map((one) => listSteps(one, { ...pots(10), mayFail: 4 }, all));
    const { groups } = groupDraws(two, steps, () => Number.POSITIVE_INFINITY);
    const cutting = { groups, mayFail: 1, stepColumns: [[7], [8]] };
    const raisedIn = (part: number): number[] => raisedTo([1, 1], cutting).map((value) => part * value);
    const rowsAt = (way: readonly number[]) =>
      cutRows(cutting, raisedTo(way, cutting)).map(({ lower, terms }) => [lower, new Map(terms)]);
    // Every draw fails. Those that both fail go to Slate, or to Oat: 3 z + 2 z >= 4, or 2 z + 3 z >= 4.
    const rows = rowsAt([0, 0]);
    const [slateFirst, oatFirst] = [
      new Map([
        [7, 3],
        [8, 2],
      ]),
      new Map([
        [7, 2],
        [8, 3],
      ]),
    ];
    expect(rows).toContainEqual([4, slateFirst]);
    expect(rows).toContainEqual([4, oatFirst]);
    // With Slate raised draws 1 and 2 are served. Of draws 3 to 5, given to Oat, two must be: 3 z8 >= 2, cut to 2 z8 >= 2.
    expect(rowsAt([1, 0])).toContainEqual([2, new Map([[8, 2]])]);
    // With both raised by seven tenths 3.5 draws are served, less than four by just half a draw; by a little more no row is worth it.
    const [seven, eight] = [cutRows(cutting, raisedIn(0.7)), cutRows(cutting, raisedIn(0.71))];
    expect([seven.length, eight.length]).toEqual([3, 0]);
    // Where three may fail, one of the two must be raised. Where two may, Slate must, whose three draws fail else, and so must Oat.
    expect(pairRows({ ...cutting, mayFail: 3 }).map(({ terms }) => terms.map(([column]) => column))).toEqual([
      [7, 8],
    ]);
    expect(pairRows({ ...cutting, mayFail: 2 })).toMatchObject([{ lower: 1, terms: [[7, 1]] }]);
    expect(pairRows({ ...cutting, mayFail: 5 })).toEqual([]);
  });

  it('are kept by every way that keeps the promise, and one is broken by a way that does not', () => {
    const column = fc.array(fc.integer({ min: -5, max: 45 }), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(
        fc.array(column, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 0, max: 6 }),
        (lacks, mayFail) => {
          const paints = lacks.map((ml, at) => asked(`paint ${at}`, ml));
          const steps = paints.map((one) => listSteps(one, { ...pots(10), mayFail }, all));
          const { groups } = groupDraws(paints, steps, () => Number.POSITIVE_INFINITY);
          let columns = 0;
          const stepColumns = steps.map(({ amounts }) => amounts.slice(1).map(() => columns++));
          const ways = steps.reduce<number[][]>(
            (before, { amounts }) => before.flatMap((way) => amounts.map((_, step) => [...way, step])),
            [[]],
          );
          const sumOf = (terms: readonly (readonly [number, number])[], way: readonly number[]): number =>
            terms.reduce((sum, [at, draws]) => {
              const taken = stepColumns.some((own, place) => own.slice(0, way[place]).includes(at));
              return sum + (taken ? draws : 0);
            }, 0);
          // By ml, as nobody looks at steps: draws in which some paint gets less than it asks for.
          const failing = (way: readonly number[]): number =>
            Array.from({ length: 8 }, (_, draw) =>
              lacks.some((ml, place) => (ml[draw] ?? 0) > (steps[place]?.amounts[way[place] ?? 0] ?? 0)),
            ).filter(Boolean).length;
          for (const way of ways) {
            const cuts = cutRows({ groups, mayFail, stepColumns }, raisedTo(way, { stepColumns }));
            expect(cuts.length > 0).toBe(failing(way) > mayFail);
            const rows = [...cuts, ...pairRows({ groups, mayFail, stepColumns })];
            const isBroken = cuts.some(({ lower, terms }) => sumOf(terms, way) < lower);
            expect(isBroken).toBe(failing(way) > mayFail);
            for (const other of ways.filter((one) => failing(one) <= mayFail))
              for (const { lower, terms } of rows) expect(sumOf(terms, other)).toBeGreaterThanOrEqual(lower);
          }
        },
      ),
      { numRuns: 40 },
    );
  });
});
