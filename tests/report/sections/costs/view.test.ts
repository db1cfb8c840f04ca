// Money: splits that add up to the cent, "at least", two sums that are never mixed, and long armies.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactMinor } from '../../../../src/model/money.js';
import type { Plan, UnitCost } from '../../../../src/model/plan.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { smallUnits, wardensCost } from '../../a-small-army.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const costsOf = (plan: Plan) => viewPlan(plan, []).costs;
/** A part that is under a cent counts as none. */
const cents = (text: string): number =>
  text.startsWith('under') ? 0 : Math.round(Number(text.replace(/[^\d.]/g, '')) * 100);
const sumCents = (texts: readonly string[]): number => texts.map(cents).reduce((sum, one) => sum + one, 0);

describe('the small plan', () => {
  const costs = costsOf(smallPlan);

  it('splits a figure over layers and extras, by largest remainder', () => {
    // A figure: 12, 12.1, 15.25, 0.9, 0 and 3.3 of 43.55, shown as 44: times 44/43.55 the quotas are 12.12, 12.23,
    // 15.41, 0.91, 0, 3.33; whole parts sum to 42, and the two cents go to 0.91 and 15.41.
    expect(costs.parts.map(({ part }) => part)).toEqual([
      'primer',
      'base coat',
      'wash',
      'highlight',
      'detail',
      'extras',
    ]);
    expect(costs.units[0]?.split).toEqual(['€0.12', '€0.12', '€0.16', '€0.01', 'unpriced', '€0.03']);
    expect(costs.units[0]?.perFigure).toBe('at least €0.44');
  });

  it('leaves layers that a figure lacks blank', () => {
    expect(costs.units[2]?.split).toEqual(['€0.36', 'unpriced', '', '', '', '€0.03']);
  });

  it('adds up by unit', () => {
    // Still to be used 874 of 435.5, 435.5, 3.3: whole parts 435, 435, 3; the last cent goes to the first of equals.
    // Done is 910 - 874 = 36, all of it the ram's.
    expect(costs.rows.map(({ whole }) => whole)).toEqual([
      'at least €4.36',
      'at least €4.35',
      'at least €0.39',
    ]);
    expect(costs.total.whole).toBe('at least €9.10');
    expect(costs.rows.map(({ remaining }) => remaining)).toEqual([
      'at least €4.36',
      'at least €4.35',
      'at least €0.03',
    ]);
    expect(costs.total.remaining).toBe('at least €8.74');
  });

  it('gives low to high: of a figure, of a unit, of the army', () => {
    // Wardens 30.4 to 64.2, ten of them; the ram 22.6 to 68.9.
    expect(costs.units.map(({ range }) => range)).toEqual([
      '€0.30 to €0.64',
      '€0.30 to €0.64',
      '€0.23 to €0.69',
    ]);
    expect(costs.rows.map(({ wholeRange }) => wholeRange)).toEqual([
      '€3.04 to €6.42',
      '€3.04 to €6.42',
      '€0.23 to €0.69',
    ]);
    expect(costs.sums.map(({ range }) => range)).toEqual(['€6.40 to €13.40', '€6.10 to €12.90', '', '']);
    expect(costs.total.wholeRange).toBe('€6.40 to €13.40');
  });

  it('says whose price is that of the newest pot, as neither pots nor order give enough', () => {
    const [first] = smallPlan.costs.paints.values();
    if (first === undefined) throw new Error('the small plan has no paint');
    const paints = new Map(smallPlan.costs.paints).set(first.paint, { ...first, likeNewestMl: 2 });
    const says = costsOf({ ...smallPlan, costs: { ...smallPlan.costs, paints } }).sums[0]?.says;
    expect(says).toContain(` What is still missing of ${first.paint} is priced like your newest pot of it.`);
    expect(costs.sums[0]?.says).not.toContain('newest');
  });

  it('keeps cash and the figures apart', () => {
    expect(
      costs.rows.map(({ cash, cashPerFigure, figuresPrice }) => [cash, cashPerFigure, figuresPrice]),
    ).toEqual([
      ['€3.70', '€0.37', '€15.00'],
      ['€3.70', '€0.37', '€15.00'],
      ['€0.00', '€0.00', 'unpriced'],
    ]);
    expect([costs.total.cash, costs.total.figuresPrice]).toEqual(['€7.40', 'at least €30.00']);
  });

  it('names paints without a price', () => {
    expect(costs.unpriced).toContain('Bell brass and Rust hush');
    expect(costsOf(changedPlan({ costs: { ...smallPlan.costs, unpriced: [] } })).unpriced).toBe('');
  });

  it('draws bars to one scale', () => {
    // The ram may cost most, 68.9; wardens cost 43.55, the ram 39.3, of which its primer is 36.
    const sums = costs.units.map(({ bar }) => bar.pieces.reduce((sum, { share }) => sum + share, 0));
    expect(sums).toEqual([43.55, 43.55, 39.3].map((minor) => expect.closeTo(minor / 68.9)));
    expect(costs.units[2]?.bar.pieces[0]?.share).toBeCloseTo(36 / 68.9);
    expect(costs.units[2]?.bar.range).toEqual({ low: expect.closeTo(22.6 / 68.9), high: 1 });
  });
});

/** `done` is the share of the work that is done already. */
const unitOf = (minor: number, done = 0): UnitCost => ({
  ...smallUnits[0],
  use: {
    ...wardensCost,
    whole: { exactMinor: exactMinor(minor), atLeast: false },
    remaining: { exactMinor: exactMinor(minor).times(1 - done), atLeast: false },
    perFigure: { exactMinor: exactMinor(minor).div(10), atLeast: false },
  },
});

const sumOf = (units: readonly UnitCost[], which: 'whole' | 'remaining') => ({
  exactMinor: units.reduce((sum, { use }) => sum.plus(use[which].exactMinor), exactMinor(0)),
  atLeast: false,
});

const planOf = (units: readonly UnitCost[]): Plan =>
  changedPlan({
    figureCount: units.reduce((sum, { unit }) => sum + unit.count, 0),
    estimate: { ...smallPlan.estimate, units: units.map(({ unit, job }) => ({ unit, job })) },
    costs: {
      ...smallPlan.costs,
      units,
      useWhole: sumOf(units, 'whole'),
      useRemaining: sumOf(units, 'remaining'),
    },
  });

describe('any army', () => {
  it('adds up to the cent, unit by unit and layer by layer, and never has more left than the whole', () => {
    const minor = fc.double({ min: 0.01, max: 5000, noNaN: true });
    const done = fc.constantFrom(0, 0.25, 1 / 3, 1);
    const army = fc.array(fc.tuple(minor, done), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(army, (units) => {
        const costs = costsOf(planOf(units.map(([whole, share]) => unitOf(whole, share))));
        expect(sumCents(costs.rows.map(({ whole }) => whole))).toBe(cents(costs.total.whole));
        expect(sumCents(costs.rows.map(({ remaining }) => remaining))).toBe(cents(costs.total.remaining));
        for (const { split, perFigure } of costs.units) expect(sumCents(split)).toBe(cents(perFigure));
        costs.rows.forEach(({ whole, remaining }, index) => {
          expect(cents(remaining)).toBeLessThanOrEqual(cents(whole));
          if (units[index]?.[1] === 0) expect(remaining).toBe(whole);
        });
      }),
      { numRuns: 60 },
    );
  });

  it('shows 1,000 units one by one and the rest as a sum', () => {
    const units = Array.from({ length: 2003 }, (_, index) => unitOf(index % 2 === 0 ? 435.5 : 100.25));
    const costs = costsOf(planOf(units));
    expect(costs.units).toHaveLength(1000);
    expect(costs.rows).toHaveLength(1001);
    expect(costs.rows.at(-1)).toMatchObject({
      name: 'All other units',
      figures: '10,030',
      cash: '€3,711.10',
    });
    expect(costs.more).toContain('The first 1,000 of 2,003 units');
    expect(sumCents(costs.rows.map(({ whole }) => whole))).toBe(cents(costs.total.whole));
  });

  it('says nothing of a rest where there is none', () => {
    const costs = costsOf(planOf(Array.from({ length: 1000 }, () => unitOf(10))));
    expect([costs.more, costs.rows.length]).toEqual(['', 1000]);
  });
});
