// Ranges: what of an order the promise can do without. In: drawn army, the order, how sure. Out: what it must still hold.

import type { DrawnLack } from '../model/draws.js';
import type { Order } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import { type Bought, cutLine, fillShelf, openHoldings } from './fill-shelf.js';
import type { ToBuy } from './promise-needs.js';

/**
 * What an order must still hold once every pot that the promise does not need is taken back, the dearest first. In what is
 * kept, each paint is asked for no more than before. An order that does not keep the promise gives nothing back.
 */
export function takeBack(
  drawn: DrawnLack,
  order: Bought,
  { toBuy, sure }: { readonly toBuy: ToBuy; readonly sure: number },
): ToBuy {
  const { draws } = drawn.drawing;
  const mayFail = draws - Math.ceil(sure * draws - 1e-9);
  const bought = boughtMl(sparePots(drawn, order, mayFail));
  const kept = new Map(toBuy);
  for (const { paint } of drawn.paints) {
    const ml = toBuy.get(paint) ?? 0;
    if (ml > sameMl) kept.set(paint, Math.min(ml, bought.get(paint) ?? 0));
  }
  return kept;
}

/** The order's lines without the pots that can go while no more than `mayFail` draws run out. */
function sparePots(drawn: DrawnLack, order: Bought, mayFail: number): Order['lines'] {
  const shelf = fillShelf(drawn, order);
  const holdingsOf = openHoldings(drawn);
  let room = mayFail - shelf.failing();
  if (room < 0) return order.lines;
  return [...order.lines]
    .sort((a, b) => b.priceMinor - a.priceMinor)
    .map((line) => {
      const holdings = (count: number) => [...holdingsOf([cutLine(line, count)]).values()];
      const spare = mostWithin(line.count, (count) => shelf.failingWithout(holdings(count)) <= room);
      if (spare > 0) {
        room -= shelf.failingWithout(holdings(spare));
        shelf.take(holdings(spare));
      }
      return cutLine(line, line.count - spare);
    });
}

/** The largest number up to `most` that fits, where none past one that does not fit does. */
function mostWithin(most: number, fits: (count: number) => boolean): number {
  let [low, high] = [0, most];
  while (low < high) {
    // One pot is asked about first, since mostly none can go.
    const middle = low === 0 && high === most ? 1 : Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

function boughtMl(lines: Order['lines']): Map<string, number> {
  const bought = new Map<string, number>();
  for (const { paint, usableMl, count } of lines.flatMap(({ pots }) => pots)) {
    bought.set(paint, (bought.get(paint) ?? 0) + usableMl * count);
  }
  return bought;
}
