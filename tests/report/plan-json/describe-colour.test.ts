import { describe, expect, it } from 'vitest';
import { describePlan } from '../../../src/report/plan-json/describe-plan.js';
import { planSchema } from '../../../src/report/plan-json/plan-document.js';
import { smallPlan } from '../a-small-plan.js';
import { textOf } from './plan-example.js';

const description = describePlan(smallPlan, []);
const document = JSON.parse(textOf(description));

describe('colours in plan.json', () => {
  it('fit the schema, to the last key', () => {
    expect(planSchema.parse(document)).toEqual(document);
  });

  it('give the reason with each line whose coats colours decided, and with no other', () => {
    const [primer, base] = document.jobs[0].lines;
    expect(base).toMatchObject({ paint: 'Nettle coat', coats: 3 });
    expect(base.coatsBecause).toEqual({
      under: ['Kettle grey'],
      dE00: 23.1,
      coatOpacity: 0.7,
      better: { undercoat: 'Moss bed', coats: 1 },
    });
    expect(primer).not.toHaveProperty('coatsBecause');
  });

  it('list undercoats, primers with the best of them, and swaps', () => {
    expect(document.undercoats).toEqual([
      expect.objectContaining({
        ...{ scheme: 'Marsh', step: 2, undercoat: 'Moss bed', coatsWithout: 3, coatsWith: 1, figures: 20 },
        ...{ over: [{ paint: 'Nettle coat', share: 1 }], mlSaved: -0.31, minutesSaved: 66 },
      }),
    ]);
    expect(document.primers[0]).toEqual({
      ...{ paint: 'Lamp white', best: true, owned: true, inUse: false, hasColour: true },
      ...{ coats: 101, ml: 95.2, useCost: '8.804000', atLeast: true, minutes: 150 },
    });
    expect(document.primers.map(({ best }: { best: boolean }) => best)).toEqual([true, false, false]);
    expect(document.swaps).toEqual([
      { scheme: 'Timber', steps: [2], paint: 'Bark hush', by: 'Rust hush', dE00: 0.83 },
    ]);
  });

  it('list each substitute by itself, best first', () => {
    expect(document.instead).toEqual([
      {
        ...{ paint: 'Nettle coat', toBuyMl: 8.02, by: 'Nettle, old label', sameByName: true },
        ...{ dE00: null, spareMl: 14 },
      },
      {
        ...{ paint: 'Nettle coat', toBuyMl: 8.02, by: 'Moss bed', sameByName: false },
        ...{ dE00: 1.96, spareMl: 6.5 },
      },
    ]);
  });

  it('give cash for every difference, its swaps, and what is proved', () => {
    expect(
      document.frontier.map(({ dE00, cash }: { dE00: number; cash: string }) => `${dE00}: ${cash}`),
    ).toEqual([...['0: 7.40', '2: 0.00', '5: 0.00', '10: 7.00']]);
    expect(document.frontierNotDrawn).toEqual([]);
    expect(document.frontier[0]).toMatchObject({
      status: "can't be met",
      swaps: [],
      unmet: [{ paint: 'Rust hush', ml: 4.05 }],
    });
    expect(document.frontier[3]).toMatchObject({
      status: 'not proved',
      aboveBest: '0.40',
      swaps: [
        { paint: 'Nettle coat', by: 'Moss bed', dE00: 1.96 },
        { paint: 'Rust hush', by: 'Clay, "wet"', dE00: 6.2 },
      ],
    });
    expect(document.fewestPots).toMatchObject({ pots: 1, cash: '7.60', abovePots: 0, status: 'proved' });
  });
});
