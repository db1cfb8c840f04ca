// Ranges tests: drawn armies written down by hand. In: what each paint lacks in each draw. Out: a drawn army, orders.
import type { Order } from '../../src/model/order.js';
import type { Container } from '../../src/model/words.js';
import type { DrawnArmy } from '../../src/ranges/draw-army.js';

const none = { low: 0, high: 0 };

/** An army that lacks so much of each paint in each draw, ml; the shelf is empty. */
export function makeDrawn(
  lacks: Readonly<Record<string, readonly number[]>>,
  gains: Partial<Record<Container, readonly number[]>> = {},
): DrawnArmy {
  const draws = Object.values(lacks)[0]?.length ?? 0;
  const columns = new Map(Object.entries(gains).map(([name, column]) => [name, Float64Array.from(column)]));
  return {
    drawing: { draws, seed: 1 },
    paints: Object.entries(lacks).map(([paint, lack]) => ({
      ...{ paint, container: 'pot', readings: [], lackMl: Float64Array.from(lack) },
      likely: { needMl: lack[0] ?? 0, haveMl: 0 },
      range: { needMl: none, haveMl: none, chanceShort: { chance: 0, error: 0 } },
    })),
    factors: new Map(),
    putOut: () => new Float64Array(draws),
    gainOf: (container) => columns.get(container),
  };
}

type Line = Order['lines'][number];

/** Some of an offer: so many ml of each paint in one of it. */
export function makeLine(
  count: number,
  priceMinor: number,
  holds: Readonly<Record<string, number>>,
  container: Container = 'pot',
): Line {
  return {
    ...{
      shop: 'Quay',
      offer: Object.keys(holds).join(' and '),
      count,
      priceMinor,
      costMinor: count * priceMinor,
    },
    pots: Object.entries(holds).map(([paint, usableMl]) => ({
      ...{ paint, sizeMl: usableMl, container, count, usableMl, coversMl: usableMl, overMl: 0 },
      costMinor: count * priceMinor,
    })),
  };
}
