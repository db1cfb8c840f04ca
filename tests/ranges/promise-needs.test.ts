// The joint promise on armies small enough to try everything.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DrawnArmy } from '../../src/ranges/draw-army.js';
import { chanceMet } from '../../src/ranges/fill-shelf.js';
import { asNeeds, onlyPaints, openPromise, type ToBuy } from '../../src/ranges/promise-needs.js';
import { takeBack } from '../../src/ranges/take-back.js';
import { makeDrawn, makeLine } from './make-drawn.js';

const always = () => true;

/** In how many draws no paint lacks more than is bought of it. */
const drawsKept = ({ paints, drawing }: DrawnArmy, bought: ToBuy): number =>
  Array.from({ length: drawing.draws }, (_, draw) =>
    paints.every(({ paint, lackMl }) => (lackMl[draw] ?? 0) <= Math.max(0, bought.get(paint) ?? 0) + 1e-6),
  ).filter(Boolean).length;

/** In eighths of a ml: equal or clearly apart. */
const lack = fc.integer({ min: -24, max: 72 }).map((eighths) => eighths / 8);
const anyArmy = fc
  .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 3 }))
  .chain(([draws, paints]) =>
    fc
      .array(fc.array(lack, { minLength: draws, maxLength: draws }), { minLength: paints, maxLength: paints })
      .map((lacks) => {
        const named = Object.fromEntries(lacks.map((one, at) => [`paint ${at}`, one]));
        // Cans hold just what they likely hold, but by a column of draws.
        return makeDrawn(named, { can: new Array<number>(draws).fill(1) });
      }),
  );
const anySure = fc.constantFrom(0.5, 0.8, 0.9, 0.95, 0.99);

describe('one quantile common to all paints', () => {
  it('by hand: ten draws, two paints; 80 % of the army take the ninth value of each', () => {
    // Slate is hardest in the last draw, Rust in the first: at the eighth value of each both fail once, at the ninth too.
    const drawn = makeDrawn({
      Slate: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
      Rust: [10, 9, 8, 7, 6, 5, 4, 3, 2, 1],
    });
    const promiseAt = openPromise(drawn, always);
    expect([...promiseAt(0.8)]).toEqual([
      ['Slate', 9],
      ['Rust', 9],
    ]);
    // Each paint by itself would stop at 8, and the army then finishes in six draws of ten.
    expect(
      drawsKept(
        drawn,
        new Map([
          ['Slate', 8],
          ['Rust', 8],
        ]),
      ),
    ).toBe(6);
    expect(drawsKept(drawn, promiseAt(0.8))).toBe(8);
    expect([...promiseAt(0.81).values()]).toEqual([10, 10]);
  });

  it('is the least that keeps the promise, of every common quantile tried', () => {
    fc.assert(
      fc.property(anyArmy, anySure, (drawn, sure) => {
        const { draws } = drawn.drawing;
        const found = openPromise(drawn, always)(sure);
        const mustKeep = Math.ceil(sure * draws - 1e-9);
        expect(drawsKept(drawn, found)).toBeGreaterThanOrEqual(mustKeep);
        const rising = drawn.paints.map(({ paint, lackMl }) => [paint, lackMl.slice().sort()] as const);
        const every = Array.from(
          { length: draws },
          (_, rank) => new Map(rising.map(([paint, one]) => [paint, one[rank] ?? 0])),
        );
        const least = every.find((bought) => drawsKept(drawn, bought) >= mustKeep);
        for (const [paint, ml] of found) {
          // What is to be bought is the same; what need not be bought may be told more or less sharply.
          expect(Math.max(0, ml), paint).toBeLessThanOrEqual(Math.max(0, least?.get(paint) ?? 0) + 1e-6);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('never asks for less where the army is to be surer', () => {
    fc.assert(
      fc.property(anyArmy, (drawn) => {
        const promiseAt = openPromise(drawn, always);
        const levels = [0.5, 0.8, 0.9, 0.95, 0.99].map(promiseAt);
        for (const { paint } of drawn.paints) {
          const asked = levels.map((one) => one.get(paint) ?? 0);
          expect(asked).toEqual([...asked].sort((a, b) => a - b));
        }
      }),
    );
  });

  it('leaves out of the hardness what nobody sells, and still asks for it at the common quantile', () => {
    const drawn = makeDrawn({
      Slate: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
      Rust: [10, 9, 8, 7, 6, 5, 4, 3, 2, 1],
    });
    const promise = openPromise(drawn, (paint) => paint === 'Slate')(0.8);
    expect([...promise]).toEqual([
      ['Slate', 8],
      ['Rust', 8],
    ]);
  });

  it('of an army that lacks nothing asks for nothing, and says how much more is there', () => {
    const promise = openPromise(makeDrawn({ Slate: [-5, -4, -3, -2, -1] }), always)(0.8);
    expect([...promise]).toEqual([['Slate', -2]]);
    expect(asNeeds(promise)).toEqual([]);
  });

  it('counts what a bought pot gives by its drawn share', () => {
    // The pot gives half of the likely in the second draw: 4 ml lacking there take 8.
    const drawn = makeDrawn({ Slate: [4, 4] }, { pot: [1, 0.5] });
    expect(openPromise(drawn, always)(0.99).get('Slate')).toBe(8);
    expect(chanceMet(drawn, { lines: [makeLine(2, 100, { Slate: 4 })] }).chance).toBe(1);
    expect(chanceMet(drawn, { lines: [makeLine(1, 100, { Slate: 4 })] }).chance).toBe(0.5);
    expect(chanceMet(drawn, { lines: [makeLine(1, 100, { Slate: 4 }, 'dropper')] }).chance).toBe(1);
  });
});

describe('how often an order lets the army finish', () => {
  const drawn = makeDrawn({ Slate: [-1, 2, 4, 6], Rust: [3, -1, -1, 3] });
  it.each([
    ['with nothing bought: in no draw is nothing lacking', [], 0],
    ['with 4 ml of Slate: the second and the third draw', [makeLine(1, 100, { Slate: 4 })], 0.5],
    ['with 3 ml of Rust as well: all but the last', [makeLine(1, 100, { Slate: 4, Rust: 3 })], 0.75],
    ['with two sets', [makeLine(2, 100, { Slate: 4, Rust: 3 })], 1],
    ['with a paint that nothing needs', [makeLine(2, 100, { Chalk: 4 })], 0],
  ])('%s', (_, lines, chance) => {
    expect(chanceMet(drawn, { lines }).chance).toBe(chance);
  });

  it('looks at the paints that are meant', () => {
    const slate = onlyPaints(drawn, (paint) => paint === 'Slate');
    expect(chanceMet(slate, { lines: [] }).chance).toBe(0.25);
  });
});

describe('taking back', () => {
  it('by hand: the dearer of two that the promise does without', () => {
    // 80 % of ten: two draws may fail. Without Rust draws 9 and 10 fail, without Slate draws 1 and 2 do; not both.
    const drawn = makeDrawn({
      Slate: [5, 5, 0, 0, 0, 0, 0, 0, 0, 0],
      Rust: [0, 0, 0, 0, 0, 0, 0, 0, 5, 5],
    });
    const toBuy = new Map([
      ['Slate', 5],
      ['Rust', 5],
    ]);
    const order = { lines: [makeLine(1, 300, { Slate: 16 }), makeLine(1, 500, { Rust: 16 })] };
    expect([...takeBack(drawn, order, { toBuy, sure: 0.8 })]).toEqual([
      ['Slate', 5],
      ['Rust', 0],
    ]);
  });

  it('gives nothing back of an order that does not keep the promise', () => {
    const drawn = makeDrawn({ Slate: [5, 5] });
    const toBuy = new Map([['Slate', 5]]);
    const order = { lines: [makeLine(1, 300, { Slate: 4 }), makeLine(1, 300, { Rust: 4 })] };
    expect(takeBack(drawn, order, { toBuy, sure: 0.8 }).get('Slate')).toBe(4);
  });

  it('is what taking pot after pot and counting every draw anew gives', () => {
    const holds = fc.record({
      'paint 0': fc.integer({ min: 1, max: 6 }),
      'paint 1': fc.integer({ min: 1, max: 6 }),
    });
    const alone = fc.record({ 'paint 0': fc.integer({ min: 1, max: 6 }) });
    const line = fc
      .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 900 }), fc.oneof(holds, alone))
      .map(([count, price, held]) => makeLine(count, price, held, price % 2 === 0 ? 'can' : 'pot'));
    fc.assert(
      fc.property(anyArmy, anySure, fc.array(line, { maxLength: 4 }), (drawn, sure, lines) => {
        const toBuy = openPromise(drawn, always)(sure);
        const left = takePotByPot(drawn, lines, sure);
        for (const [paint, ml] of takeBack(drawn, { lines }, { toBuy, sure })) {
          const asked = toBuy.get(paint) ?? 0;
          expect(ml).toBe(asked > 0 ? Math.min(asked, heldMl(left, paint)) : asked);
        }
      }),
      { numRuns: 500 },
    );
  });
});

type Lines = readonly ReturnType<typeof makeLine>[];

const heldMl = (lines: Lines, paint: string): number =>
  lines
    .flatMap(({ pots, count }) => pots.map((pot) => ({ ...pot, count })))
    .reduce((sum, pot) => sum + (pot.paint === paint ? pot.usableMl * pot.count : 0), 0);

/** The same by the plainest means: an order without one pot is an order like any other. */
function takePotByPot(drawn: DrawnArmy, lines: Lines, sure: number): Lines {
  const isKept = (of: Lines): boolean => {
    const bought = new Map(drawn.paints.map(({ paint }) => [paint, heldMl(of, paint)]));
    return drawsKept(drawn, bought) >= Math.ceil(sure * drawn.drawing.draws - 1e-9);
  };
  let left = lines;
  if (!isKept(left)) return left;
  for (const line of [...lines].sort((a, b) => b.priceMinor - a.priceMinor)) {
    const place = lines.indexOf(line);
    for (let count = line.count - 1; count >= 0; count--) {
      const fewer = left.map((one, at) => (at === place ? { ...one, count } : one));
      if (!isKept(fewer)) break;
      left = fewer;
    }
  }
  return left;
}
