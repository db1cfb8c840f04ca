// What was painted and not measured stays in doubt: the chance of running short after most of the work against a simulation
// of all of it, in plain loops with a generator of its own.
import { describe, expect, it } from 'vitest';
import { likely } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import { listPastWork } from '../../src/estimate/list-past-work.js';
import { quantileOf } from '../../src/model/quantiles.js';
import type { LogRow, Sheets } from '../../src/model/sheets.js';
import { planArmy } from '../../src/plan-army.js';
import { twoPieceOf, valueAt } from '../../src/ranges/two-piece.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { makeOffer, makePot, makeSheets, makeStep, makeUnit, offerPot } from '../make-sheets.js';

const units = Array.from({ length: 14 }, (_, at) =>
  makeUnit({ unit: `watch ${at}`, row: at + 2, priority: at }),
);
const painted = (unit: string, at: number, more: Partial<LogRow> = {}): LogRow => ({
  ...{ row: at + 2, date: '2026-03-02', paint: 'Chalk', unit, step: 1, figures: 10 },
  ...more,
});
const log = units.slice(0, 12).map(({ unit }, at) => painted(unit, at));

/** A brushed primer in pots that are full and closed, so that no reading is in doubt. */
function sheetsWith(sizeMl: number, rows: readonly LogRow[] = log): Sheets {
  return makeSheets({
    steps: [makeStep({ step: 1, layer: 'primer', method: 'brush', paint: 'Chalk' })],
    pots: [makePot({ paint: 'Chalk', sizeMl, countedOn: '2026-03-01' })],
    army: units,
    log: rows,
  });
}

/** Park and Miller's generator of 1988, and the normal deviates of Box and Muller 1958. */
function openNormals(seed: number): () => number {
  let state = seed;
  const next = (): number => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  return () => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

/** Usable need of all fourteen units less what a pot of a ml gives, in each of many armies: below 0 it lasts. */
function simulate(draws: number): { readonly needMl: number; readonly share: number }[] {
  const normal = openNormals(20260314);
  const [job] = estimateArmy(sheetsWith(17, []), registry).jobs.keys();
  const lines = job?.lines ?? [];
  const names = [
    ...new Set(lines.flatMap(({ surface }) => surface.flatMap(({ factors }) => factors))),
    ...['brush wet film', 'brush transfer', 'brush leftover', 'painter', 'usable share of a pot'],
  ];
  return Array.from({ length: draws }, () => {
    const value = new Map(names.map((name) => [name, valueAt(twoPieceOf(registryOf(name)), normal())]));
    const of = (name: string): number => value.get(name) ?? Number.NaN;
    const over = (name: string): number => of(name) / likely(registry, name);
    const needMl = lines.reduce((sum, { surface, onFigureMl, leftoverMl }) => {
      const area = surface.reduce(
        (all, { factors, share }) => all + share * factors.reduce((a, b) => a * over(b), 1),
        0,
      );
      const onFigures = (onFigureMl * area * over('brush wet film')) / of('brush transfer');
      return sum + 14 * of('painter') * (onFigures + leftoverMl * over('brush leftover'));
    }, 0);
    return { needMl, share: of('usable share of a pot') };
  });
}

function registryOf(name: string) {
  const one = registry.get(name) ?? registry.get(name.replace(/ \(.*\)$/, ''));
  if (one === undefined) throw new Error(name);
  return one;
}

describe('the chance of running short after 12 of 14 units', () => {
  const truth = simulate(40_000);
  const sizes = Float64Array.from(truth, ({ needMl, share }) => needMl / share);

  it.each([0.96, 0.5, 0.1])(
    'is %f, as the whole work says, whatever was painted since the count',
    async (chance) => {
      const sizeMl = quantileOf(sizes, 1 - chance);
      const short = sizes.filter((size) => size > sizeMl).length / sizes.length;
      expect(short).toBeCloseTo(chance, 3);
      const shown = (await planArmy(sheetsWith(sizeMl), '2026-03-03')).ranges.paints.get(
        'Chalk',
      )?.chanceShort;
      // Four standard errors of 10,000 draws and of 40,000.
      expect(Math.abs((shown?.chance ?? 0) - chance)).toBeLessThan(
        4 * Math.sqrt(0.25 / 10_000 + 0.25 / 40_000),
      );
    },
  );

  // Lowered by the likely 12/14, a pot that holds 1.6 times the likely need of all would be all but sure to last.
  it('would else be sure of itself', async () => {
    const needs = estimateArmy(sheetsWith(17, []), registry).needs.get('Chalk')?.wholeMl ?? 0;
    const sizeMl = (1.6 * needs) / 0.94;
    const truly = sizes.filter((size) => size > sizeMl).length / sizes.length;
    const plan = async (sheets: Sheets) =>
      (await planArmy(sheets, '2026-03-03')).ranges.paints.get('Chalk')?.chanceShort.chance ?? 0;
    const lowered = log.map((row) => ({ ...row, usedMl: needs / 14 }));
    expect(truly).toBeGreaterThan(0.05);
    expect(await plan(sheetsWith(sizeMl))).toBeCloseTo(truly, 1);
    // As rows with the likely amounts they would be weighings, and teach that the likely is true.
    expect(await plan(sheetsWith(sizeMl, lowered))).toBeLessThan(truly / 10);
  });
});

describe('what to do first', () => {
  const ofChalk = async (rows: readonly LogRow[]) => {
    const sheets = {
      ...sheetsWith(60, rows),
      offers: [makeOffer({ pots: [offerPot('Chalk')], priceMinor: 300 })],
    };
    return (await planArmy(sheets, '2026-03-03')).ranges.remedies.filter(({ what }) => what === 'Chalk');
  };

  it('may be to count a pot that work without amounts has lowered', async () => {
    expect(await ofChalk(log)).toMatchObject([{ how: 'count', paint: '' }]);
    expect(await ofChalk([])).toEqual([]);
  });
});

describe('the shelf after unmeasured use', () => {
  const stockOf = (sheets: Sheets) => {
    const estimate = estimateArmy(sheets, registry);
    const past = listPastWork(sheets.log, estimate, registry);
    return takeStock({ ...sheets, past }, estimate.needs, registry)[0];
  };
  const eachMl = (estimateArmy(sheetsWith(17, []), registry).needs.get('Chalk')?.wholeMl ?? 0) / 14;

  it('is lower by what the work is likely to have taken, by the need of one unit each', () => {
    expect(stockOf(sheetsWith(100))?.haveMl).toBeCloseTo(94 - 12 * eachMl, 9);
  });

  it.each<[string, Partial<LogRow>]>([
    ['before the day of the count', { date: '2026-03-01' }],
    ['without a step', { step: 2 }],
    ['of another paint', { paint: 'Slate' }],
  ])('is not lower by work %s', (_, more) => {
    const rows = [painted('watch 0', 0, more)];
    expect(stockOf(sheetsWith(100, rows))).toMatchObject({ haveMl: 94 });
    expect(stockOf(sheetsWith(100, rows))?.unmeasured).toBeUndefined();
  });

  it('goes by the row: half a unit takes half the paint and its own sitting', () => {
    const half = estimateArmy(
      { ...sheetsWith(100, []), army: [makeUnit({ unit: 'watch 0', count: 5 })] },
      registry,
    );
    const rows = [painted('watch 0', 0, { figures: 5 })];
    expect(stockOf(sheetsWith(100, rows))?.haveMl).toBeCloseTo(
      94 - (half.needs.get('Chalk')?.wholeMl ?? 0),
      9,
    );
  });

  it('begins with the first use that nobody measured; a count ends it', () => {
    const used = painted('watch 0', 0, { usedMl: 3 });
    const counted: LogRow = {
      row: 9,
      date: '2026-03-05',
      paint: 'Chalk',
      what: 'counted',
      left: { how: 'in ml', ml: 50 },
    };
    const rows = [used, painted('watch 1', 1), painted('watch 2', 2), { ...used, date: '2026-03-04' }];
    expect(stockOf(sheetsWith(100, rows))?.unmeasured).toMatchObject({
      pots: [{ usableMl: expect.closeTo(91, 9), isGone: false }],
      takes: [{ from: [0], ml: 3, work: [{ figure: 'guard' }, { figure: 'guard' }] }],
    });
    expect(stockOf(sheetsWith(100, [...rows, counted]))).toMatchObject({
      haveMl: expect.closeTo(47, 9),
    });
  });

  it('comes out of a pot that is gone before it comes out of the next', () => {
    const gone: LogRow = { row: 9, date: '2026-03-03', paint: 'Chalk', what: 'thrown away' };
    const sheets = sheetsWith(100, [...log, gone]);
    const two = { ...sheets, pots: [...sheets.pots, makePot({ paint: 'Chalk', row: 3, sizeMl: 100 })] };
    expect(stockOf(two)).toMatchObject({ haveMl: 94, unmeasured: { takes: [{ from: [0, 1] }] } });
  });
});
