import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Assumptions } from '../../src/model/assumption.js';
import type { Sheets } from '../../src/model/sheets.js';
import { drawArmy } from '../../src/ranges/draw-army.js';
import { chancesShort, sumUpArmy } from '../../src/ranges/sum-up-army.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { makeFigure, makePot, makeSheets, makeStep, makeUnit } from '../make-sheets.js';
import { holdExact } from './simulate-painter.js';

const noExtras = { perFigure: 0, whole: 0, remaining: 0 };
const everyLikely = Object.fromEntries([...registry.values()].map(({ name, likely }) => [name, likely]));

function sumUp(
  sheets: Sheets,
  { assumptions = registry as Assumptions, perMl = 20, extras = noExtras } = {},
) {
  const estimate = estimateArmy(sheets, assumptions);
  const stock = takeStock(sheets, estimate.needs, assumptions);
  const beliefs = { assumptions, joint: undefined };
  const drawn = drawArmy({ estimate, stock, beliefs }, { draws: 10_000, seed: 1 });
  const prices = { usePerMl: () => perMl, buyPerMl: () => perMl, extras };
  const ranges = sumUpArmy({ drawn, estimate, assumptions, ...prices });
  return { estimate, drawn, ranges };
}

const steps = [makeStep({ step: 1 }), makeStep({ step: 2, paint: 'Shade', layer: 'wash' })];
const army = makeSheets({ steps, pots: [makePot({ paint: 'Slate', left: { how: 'in ml', ml: 2 } })] });

describe('ranges', () => {
  const { estimate, drawn, ranges } = sumUp(army);

  it('hold the likely values between low and high, for needs, costs and figures', () => {
    for (const [paint, { needMl }] of ranges.paints) {
      const likely = estimate.needs.get(paint)?.remainingMl ?? 0;
      expect(needMl.low).toBeLessThan(likely);
      expect(needMl.high).toBeGreaterThan(likely);
    }
    const whole = [...estimate.needs.values()].reduce((sum, { wholeMl }) => sum + 20 * wholeMl, 0);
    expect(ranges.useWhole.low).toBeLessThan(whole);
    expect(ranges.useWhole.high).toBeGreaterThan(whole);
    expect(ranges.useRemaining).toEqual(ranges.useWhole);
    const [job] = estimate.jobs.keys();
    const each = job && ranges.perFigure.get(job);
    expect(each?.low).toBeCloseTo(ranges.useWhole.low / 10, 9);
    expect(each?.high).toBeCloseTo(ranges.useWhole.high / 10, 9);
  });

  it('of a sum are narrower than the sum of the ranges: not all of it is high at once', () => {
    const highs = [...ranges.paints.values()].reduce((sum, { needMl }) => sum + 20 * needMl.high, 0);
    expect(ranges.useRemaining.high).toBeLessThan(highs);
  });

  it('state the chance that each paint runs short and that none does, with their errors', () => {
    const [slate, shade] = ['Slate', 'Shade'].map(
      (paint) => ranges.paints.get(paint)?.chanceShort.chance ?? 0,
    );
    // Nobody owns Shade, so it runs short in every draw, and nothing ever lasts.
    expect(shade).toBe(1);
    expect(ranges.chanceAllLast).toMatchObject({ chance: 0 });
    expect(slate).toBeGreaterThan(0.3);
    expect(slate).toBeLessThan(0.7);
    const chance = ranges.paints.get('Slate')?.chanceShort;
    expect(chance?.error).toBeCloseTo(Math.sqrt(((slate ?? 0) * (1 - (slate ?? 0))) / 10_000), 12);
    expect(chancesShort(drawn).get('Slate')).toEqual(chance);
    expect(ranges).toMatchObject({ draws: 10_000, seed: 1 });
  });

  // Twenty pots of which a hundredth is left, each read by eye to a tenth of its size: none holds less than nothing, so all
  // together are likely to hold more than they say, and nine times in ten they do.
  it('hold what the shelf says, though the draws lie above it', () => {
    const pots = Array.from({ length: 20 }, (_, at) =>
      makePot({ paint: 'Slate', row: at + 2, left: { how: 'by eye', share: 0.01 } }),
    );
    const haveMl = sumUp({ ...army, pots }).ranges.paints.get('Slate')?.haveMl;
    expect(haveMl?.low).toBeCloseTo(20 * 0.17 * 0.94, 9);
    expect(haveMl?.high).toBeGreaterThan(10);
  });

  it('take extras as they are', () => {
    const extras = { perFigure: 7, whole: 70, remaining: 30 };
    const more = sumUp(army, { extras }).ranges;
    expect(more.useWhole.low - ranges.useWhole.low).toBeCloseTo(70, 9);
    expect(more.useRemaining.high - ranges.useRemaining.high).toBeCloseTo(30, 9);
    expect([...more.perFigure.values()][0]?.low).toBeCloseTo(
      ([...ranges.perFigure.values()][0]?.low ?? 0) + 7,
      9,
    );
  });

  it('of a job that is like another but for its count go with its own likely cost', () => {
    const two = { ...army, army: [makeUnit({ count: 10 }), makeUnit({ unit: 'few', row: 3, count: 3 })] };
    const { estimate: cut, ranges: both } = sumUp(two);
    const [ten, three] = [...cut.jobs.keys()].map((job) => {
      const likely = job.lines.reduce((sum, { putOutMl }) => sum + (20 * putOutMl) / job.count, 0);
      return (both.perFigure.get(job)?.high ?? 0) / likely;
    });
    expect(three).toBeCloseTo(ten ?? 0, 9);
  });

  it('of exact assumptions and a sealed shelf are single values, in doubt for nothing', () => {
    const { estimate: known, ranges: exact } = sumUp(
      { ...army, pots: [] },
      { assumptions: holdExact(registry, everyLikely) },
    );
    const whole = [...known.needs.values()].reduce((sum, { wholeMl }) => sum + 20 * wholeMl, 0);
    expect(exact.useWhole.low).toBeCloseTo(whole, 9);
    expect(exact.useWhole.high).toBeCloseTo(whole, 9);
    expect(exact.doubts).toEqual([]);
    expect(exact.remedies).toEqual([]);
  });

  it('of an army that nothing is lacking for doubt nothing; of no army all lasts', () => {
    const rich = {
      ...army,
      pots: ['Slate', 'Shade'].map((paint, at) => makePot({ paint, row: at + 2, sizeMl: 500 })),
    };
    expect(sumUp(rich).ranges).toMatchObject({
      doubts: [],
      remedies: [],
      chanceAllLast: { chance: 1 },
    });
    expect(sumUp({ ...army, army: [] }).ranges).toMatchObject({
      paints: new Map(),
      chanceAllLast: { chance: 1 },
    });
  });
});

describe('doubts', () => {
  it('of a base coat are put down to film and transfer first', () => {
    const { ranges } = sumUp(
      makeSheets({ steps: [makeStep({ step: 1, coats: 1 })], army: [makeUnit({ count: 100, batch: 100 })] }),
    );
    const shares = new Map(ranges.doubts.map(({ name, share }) => [name, share]));
    expect(
      ranges.doubts
        .slice(0, 2)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['brush transfer', 'brush wet film']);
    // By first order the log variances: film 0.3827^2, transfer 0.3306^2, painter 0.1741^2, sculpt 0.155^2, dress
    // 0.131^2, the rest little.
    const parts = [0.3827, 0.3306, 0.1741, 0.155, 0.131].map((s) => Math.exp(s * s) - 1);
    const [film, , painter] = parts;
    const total = parts.reduce((product, part) => product * (1 + part), 1) - 1;
    expect(Math.abs((shares.get('brush wet film') ?? 0) - (film ?? 0) / total)).toBeLessThan(0.06);
    expect(Math.abs((shares.get('painter') ?? 0) - (painter ?? 0) / total)).toBeLessThan(0.03);
    const [first] = ranges.remedies;
    expect(first).toMatchObject({ how: 'weigh', what: 'brush', paint: 'Slate' });
    expect(first?.share).toBeGreaterThan(0.8);
    for (const { share } of ranges.remedies) expect(share).toBeLessThanOrEqual(first?.share ?? 0);
  });

  it('of a pot read by eye are its reading, where all else is exact', () => {
    const assumptions = holdExact(registry, everyLikely);
    const pots = [makePot({ paint: 'Slate', sizeMl: 17, left: { how: 'by eye', share: 0.1 } })];
    const { ranges } = sumUp(makeSheets({ steps: [makeStep({ step: 1 })], pots }), { assumptions });
    expect(ranges.doubts.map(({ name }) => name)).toEqual(['reading of Slate']);
    expect(ranges.paints.get('Slate')?.doubts).toEqual([
      { name: 'reading of Slate', share: expect.closeTo(1, 6) },
    ]);
    expect(ranges.remedies).toEqual([{ how: 'read', what: 'Slate', paint: '', share: expect.any(Number) }]);
    expect(ranges.remedies[0]?.share).toBeGreaterThan(0.5);
  });

  it('of a figure whose surface alone is in doubt are settled by measuring it', () => {
    const values = Object.fromEntries(
      Object.entries(everyLikely).filter(([name]) => !/^(dress|build)/.test(name)),
    );
    const assumptions = holdExact(registry, values);
    const { ranges } = sumUp(makeSheets({ figures: [makeFigure()], steps: [makeStep({ step: 1 })] }), {
      assumptions,
    });
    expect(ranges.doubts.map(({ name }) => name)).toEqual(['dress clothed', 'build heroic']);
    expect(ranges.remedies[0]).toMatchObject({ how: 'measure', what: 'guard' });
    expect(ranges.remedies[0]?.share).toBeGreaterThan(0.99);
  });

  // A surface of shares that make up 1 is drawn as 0.9999999999999999: that is rounding, and nothing to measure.
  it('of a figure whose area is given are none of its surface', () => {
    const { ranges } = sumUp(
      makeSheets({
        figures: [makeFigure({ areaCm2: 18 })],
        steps: [makeStep({ step: 1 }), makeStep({ step: 2, paint: 'Shade', layer: 'wash' })],
        army: [makeUnit({ count: 200 })],
      }),
    );
    expect(ranges.remedies.map(({ how, what }) => `${how} ${what}`)).toEqual(['weigh brush', 'weigh flood']);
    for (const { share } of [...ranges.doubts, ...ranges.remedies]) expect(share).toBeLessThan(1);
  });

  it('never add up to more than the whole', () => {
    const { ranges } = sumUp(army);
    expect(ranges.doubts.reduce((sum, { share }) => sum + share, 0)).toBeLessThan(1.03);
  });
});
