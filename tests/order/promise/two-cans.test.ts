// A primer and a varnish in cans of two sizes: where the larger does for both, and where the smaller. Against every order there is.
import { expect, it } from 'vitest';
import { likely, usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import { estimateArmy } from '../../../src/estimate/estimate-army.js';
import type { DrawnLack } from '../../../src/model/draws.js';
import type { Offer } from '../../../src/model/sheets.js';
import type { Container } from '../../../src/model/words.js';
import { prepareBuying } from '../../../src/order/prepare-buying.js';
import { findPromise } from '../../../src/order/promise/find-promise.js';
import { openPromise } from '../../../src/order/promise/open-promise.js';
import { drawLack } from '../../../src/ranges/draw-army.js';
import { takeStock } from '../../../src/stock/take-stock.js';
import {
  makeFigure,
  makeOffer,
  makePaint,
  makePot,
  makeSheets,
  makeShop,
  makeStep,
  makeUnit,
} from '../../make-sheets.js';

const can = (paint: string, sizeMl: number, priceMinor: number): Offer =>
  makeOffer({
    offer: `${paint} ${sizeMl}`,
    priceMinor,
    pots: [{ paint, sizeMl, count: 1, container: 'can' }],
  });

const offers = [
  ...['grey', 'matt'].flatMap((paint) => [can(paint, 300, 800), can(paint, 400, 950)]),
  makeOffer({
    offer: 'red',
    priceMinor: 300,
    pots: [{ paint: 'red', sizeMl: 17, count: 1, container: 'pot' }],
  }),
];
const draws = 1000;
const market = { offers, shops: new Map([['Quay', makeShop()]]), assumptions: registry };

/** So many figures, all grey, their torsos red, all matt; a red pot is a fifth full. */
function lackOf(figures: number): DrawnLack {
  const sheets = makeSheets({
    figures: [
      makeFigure({
        kit: [
          { item: 'weapon', count: 1 },
          { item: 'round shield', count: 1 },
        ],
        base: { shape: 'round', acrossMm: 25 },
      }),
    ],
    steps: [
      makeStep({ step: 1, zone: 'all', layer: 'primer', paint: 'grey', method: 'spray can' }),
      makeStep({ step: 2, zone: 'torso', paint: 'red' }),
      makeStep({ step: 3, zone: 'all', layer: 'varnish', paint: 'matt', method: 'spray can' }),
    ],
    paints: [makePaint({ paint: 'grey', kind: 'primer' }), makePaint({ paint: 'matt', kind: 'varnish' })],
    pots: [makePot({ paint: 'red', left: { how: 'by eye', share: 0.2 } })],
    offers,
    army: [makeUnit({ count: figures })],
  });
  const estimate = estimateArmy(sheets, registry);
  const stock = takeStock(sheets, estimate.needs, registry);
  return drawLack(
    { estimate, stock, beliefs: { assumptions: registry, joint: undefined } },
    { draws, seed: 1 },
  );
}

/** One way to buy a paint: what it costs, and the draws in which it does. */
interface Tried {
  readonly costMinor: number;
  readonly does: Uint8Array;
}

/** Every number of each of a paint's offers up to where all draws are served. */
function tryPaint({ paints, gainOf }: DrawnLack, paint: string, container: Container): Tried[] {
  const lack = paints.find((one) => one.paint === paint)?.lackMl ?? new Float64Array();
  const own = offers.flatMap(({ pots, priceMinor }) =>
    pots
      .filter((pot) => pot.paint === paint)
      .map(({ sizeMl }) => ({ priceMinor, ml: sizeMl * usableShare(registry, container) })),
  );
  const [first = { priceMinor: 0, ml: 0 }, second = { priceMinor: 1, ml: 0 }] = own;
  const gain = gainOf(container);
  const tried: Tried[] = [];
  for (let one = 0; one <= 12; one++)
    for (let other = 0; other <= (own.length > 1 ? 12 : 0); other++) {
      const ml = one * first.ml + other * second.ml;
      const does = Uint8Array.from(lack, (asked, draw) => (ml * (gain?.[draw] ?? 1) >= asked - 1e-6 ? 1 : 0));
      tried.push({ costMinor: one * first.priceMinor + other * second.priceMinor, does });
    }
  return tried.sort((a, b) => a.costMinor - b.costMinor);
}

function leastOf(drawn: DrawnLack, sure: number): number {
  const keep = Math.ceil(sure * draws);
  const [grey, matt, red] = [
    tryPaint(drawn, 'grey', 'can'),
    tryPaint(drawn, 'matt', 'can'),
    tryPaint(drawn, 'red', 'pot'),
  ];
  let best = Number.POSITIVE_INFINITY;
  for (const a of grey)
    for (const b of matt) {
      if (a.costMinor + b.costMinor >= best) break;
      const both = a.does.map((does, draw) => does & (b.does[draw] ?? 0));
      if (both.reduce((sum, one) => sum + one, 0) < keep) continue;
      for (const c of red) {
        const cost = a.costMinor + b.costMinor + c.costMinor;
        if (cost >= best) break;
        if (both.reduce((sum, one, draw) => sum + (one & (c.does[draw] ?? 0)), 0) >= keep) best = cost;
      }
    }
  return best;
}

it.each([30, 45, 60, 90, 120, 160, 200])('%i figures: the least cash there is', async (figures) => {
  const drawn = lackOf(figures);
  for (const sure of [0.5, 0.8, 0.95]) {
    const { way, leastMinor } = await findPromise(openPromise(drawn, market), sure, prepareBuying({}));
    expect([sure, way?.totalMinor, leastMinor]).toEqual([sure, leastOf(drawn, sure), leastOf(drawn, sure)]);
  }
});

it('sprays, and leaves some of a can in it', () => {
  const { gainOf } = lackOf(30);
  const shares = gainOf('can')?.map((gain) => gain * likely(registry, 'usable share of a can')) ?? [];
  expect(Math.max(...shares)).toBeLessThanOrEqual(1);
  expect(Math.min(...shares)).toBeLessThan(0.65);
});
