// Ranges: what of an order the promise can do without. In: drawn army, the order, how sure. Out: what it must still hold.
import type { Order } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import type { DrawnArmy } from './draw-army.js';
import { type Bought, cutLine, fillShelf, holdingsOf } from './fill-shelf.js';
import type { ToBuy } from './promise-needs.js';

/**
 * What an order must still hold once every pot that the promise does not need is taken back, the dearest first. In what is
 * kept, each paint is asked for no more than before. An order that does not keep the promise gives nothing back.
 */
export function takeBack(
  drawn: DrawnArmy,
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
function sparePots(drawn: DrawnArmy, order: Bought, mayFail: number): Order['lines'] {
  const shelf = fillShelf(drawn, order);
  let failing = shelf.failing();
  if (failing > mayFail) return order.lines;
  return [...order.lines]
    .sort((a, b) => b.priceMinor - a.priceMinor)
    .map((line) => {
      const one = [...holdingsOf(drawn, [cutLine(line, 1)]).values()];
      for (let { count } = line; ; count--) {
        const more = count === 0 ? 0 : shelf.failingWithout(one);
        if (count === 0 || failing + more > mayFail) return cutLine(line, count);
        shelf.take(one);
        failing += more;
      }
    });
}

function boughtMl(lines: Order['lines']): Map<string, number> {
  const bought = new Map<string, number>();
  for (const { paint, usableMl, count } of lines.flatMap(({ pots }) => pots)) {
    bought.set(paint, (bought.get(paint) ?? 0) + usableMl * count);
  }
  return bought;
}
