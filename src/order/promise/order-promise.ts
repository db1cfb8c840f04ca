// Promise: what is found for it as an order. In: what was found, a way to order needs. Out: the order, and how far above the best.
import type { Order } from '../../model/order.js';
import { writeOrder } from '../write-order.js';
import { asNeeds, type FoundPromise } from './find-promise.js';
import type { OpenPromise } from './open-promise.js';
import { markFailing, type Way } from './way.js';

/** Makes an order for some needs, likely usable ml by paint. */
export type Place = (needs: ReadonlyMap<string, number>) => Promise<Order>;

/**
 * An order for what the cheapest way covers. Where a paint comes in two kinds of container, which give less in different draws, it
 * may buy other pots that fail more often, and short of time it may be dearer: then the very pots of the way are ordered. Where the
 * offers do not reach the promise, the order is for what they hold.
 */
export async function orderPromise(found: FoundPromise, open: OpenPromise, place: Place): Promise<Order> {
  const placed = await place(found.needs);
  if (found.way === undefined) return placed;
  const isNoDearer = placed.totalMinor <= found.way.totalMinor;
  const order = isNoDearer && isKept(placed, found, open) ? placed : orderWay(placed, found.way, found, open);
  const aboveBestMinor = Math.max(0, order.totalMinor - found.leastMinor);
  const isOpen = order.status === 'proved' || order.status === 'not proved';
  return {
    ...{ ...order, aboveBestMinor },
    ...(isOpen ? { status: aboveBestMinor === 0 ? 'proved' : 'not proved' } : {}),
  };
}

function isKept({ lines }: Order, { mayFail }: FoundPromise, open: OpenPromise): boolean {
  const fails = markFailing(
    lines.flatMap(({ pots }) => pots),
    open,
  );
  return fails.reduce((sum, mark) => sum + mark, 0) <= mayFail;
}

function orderWay(placed: Order, way: Way, { needs }: FoundPromise, { market }: OpenPromise): Order {
  const written = writeOrder({ ...way, aboveBestMinor: 0 }, asNeeds(needs), market);
  return { ...placed, ...written, passedOver: [], fromOneShop: [] };
}
