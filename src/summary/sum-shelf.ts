// Summary: what stands on the shelf, and what it is worth. In: stock by paint. Out: sums, and the worth of each paint.

import type { ShelfSums } from '../model/cost-sums.js';
import { type Amount, exactMinor, sumMinor } from '../model/money.js';
import type { PaintStock, ShelfPot } from '../model/stock.js';

/** A pot is worth the share of its price that can still be got out of it. */
export function sumShelf(stock: readonly PaintStock[]): ShelfSums {
  const owned = stock.filter(({ pots }) => pots.length > 0);
  const pots = owned.flatMap((one) => one.pots);
  return {
    pots: pots.length,
    paints: owned.length,
    haveMl: owned.reduce((sum, { haveMl }) => sum + haveMl, 0),
    worth: worthOf(pots),
    unpriced: pots.filter(({ priceMinor }) => priceMinor === undefined).length,
    worthOf: new Map(owned.map((one) => [one.paint, worthOf(one.pots)])),
  };
}

function worthOf(pots: readonly ShelfPot[]): Amount {
  const exact = pots.map(({ priceMinor, usableMl, fullUsableMl }) =>
    exactMinor(priceMinor ?? 0)
      .times(usableMl)
      .div(fullUsableMl),
  );
  return { exactMinor: sumMinor(exact), atLeast: pots.some(({ priceMinor }) => priceMinor === undefined) };
}
