import { describe, expect, it } from 'vitest';
import type { PaintStock } from '../../src/model/stock.js';
import { promiseRatios, scaleDemands, scaleNeeds } from '../../src/ranges/scale-to-promise.js';

const stock = (paint: string, needMl: number, haveMl: number): PaintStock => ({
  ...{ paint, pots: [], needMl, haveMl, orderedMl: 0, leftAfterMl: 0, toBuyMl: 0, keepMl: 0 },
  ...{ state: 'enough', runningLow: false, mark: 'yours' },
});

describe('the margin of the promise', () => {
  // Slate: 4 ml there and 8 to buy, of 8 likely: 1.5. Rust: 20 there, 8 of them more than promised, of 10: 1.2.
  const ratioOf = promiseRatios(
    new Map([
      ['Slate', 8],
      ['Rust', -8],
      ['Moss', -30],
    ]),
    [stock('Slate', 8, 4), stock('Rust', 10, 20), stock('Moss', 2, 16), stock('Chalk', 0, 5)],
  );

  it('is what is promised of a paint over what is likely, and never below nothing', () => {
    expect(ratioOf('Slate')).toBe(1.5);
    expect(ratioOf('Rust')).toBe(1.2);
    expect(ratioOf('Moss')).toBe(0);
  });

  it('of a paint that the army no longer needs is that of all others together: 24 of 20', () => {
    expect(ratioOf('Chalk')).toBe(1.2);
    expect(ratioOf('Unknown')).toBe(1.2);
    expect(promiseRatios(new Map(), [])('Slate')).toBe(1);
  });

  it('scales needs and demands; demands that share a map still do', () => {
    const ml = new Map([['Slate', 2]]);
    expect([...scaleNeeds(ml, ratioOf)]).toEqual([['Slate', 3]]);
    const unit = {
      unit: 'watch',
      priority: 1,
      figures: 10,
      batch: 10,
      perFigureMl: ml,
      perSittingMl: new Map(),
    };
    const [one, other] = scaleDemands([unit, { ...unit, unit: 'archers' }], ratioOf);
    expect([...(one?.perFigureMl ?? [])]).toEqual([['Slate', 3]]);
    expect(other?.perFigureMl).toBe(one?.perFigureMl);
    expect(other).toMatchObject({ unit: 'archers', figures: 10, batch: 10 });
  });
});
