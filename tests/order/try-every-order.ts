// Every order there is, tried one by one: the plain way to know the cheapest. Shares no code with the order stage.
import type { Offer, Shop } from '../../src/model/sheets.js';

/** Least cost, then fewest shops, then fewest pots, over all counts up to `most` of each offer. */
export interface Tried {
  readonly costMinor: number;
  readonly shops: number;
  readonly pots: number;
}

/** Usable ml of a pot that is no can: 0.94 of its label. */
const usable = 0.94;

export function tryEveryOrder(
  needs: ReadonlyMap<string, number>,
  offers: readonly Offer[],
  shops: ReadonlyMap<string, Shop>,
  most: number,
): Tried | undefined {
  let best: Tried | undefined;
  const counts = offers.map(() => 0);
  const visit = (at: number): void => {
    if (at < offers.length) {
      for (let count = 0; count <= Math.min(most, offers[at]?.available ?? most); count++) {
        counts[at] = count;
        visit(at + 1);
      }
      counts[at] = 0;
      return;
    }
    const tried = priceOf(counts, needs, offers, shops);
    if (tried !== undefined && (best === undefined || compare(tried, best) < 0)) best = tried;
  };
  visit(0);
  return best;
}

const compare = (a: Tried, b: Tried): number =>
  a.costMinor - b.costMinor || a.shops - b.shops || a.pots - b.pots;

function priceOf(
  counts: readonly number[],
  needs: ReadonlyMap<string, number>,
  offers: readonly Offer[],
  shops: ReadonlyMap<string, Shop>,
): Tried | undefined {
  const got = new Map<string, number>();
  const goods = new Map<string, number>();
  let pots = 0;
  for (const [at, offer] of offers.entries()) {
    const count = counts[at] ?? 0;
    if (count === 0) continue;
    goods.set(offer.shop, (goods.get(offer.shop) ?? 0) + count * offer.priceMinor);
    for (const pot of offer.pots) {
      got.set(pot.paint, (got.get(pot.paint) ?? 0) + count * pot.count * pot.sizeMl * usable);
      pots += count * pot.count;
    }
  }
  for (const [paint, ml] of needs) if ((got.get(paint) ?? 0) < ml - 1e-9) return undefined;
  let costMinor = 0;
  for (const [name, sum] of goods) {
    const shop = shops.get(name);
    if (sum < (shop?.leastOrderMinor ?? 0)) return undefined;
    const isFree = sum >= (shop?.freeFromMinor ?? Number.POSITIVE_INFINITY);
    costMinor += sum + (isFree ? 0 : (shop?.postageMinor ?? 0));
  }
  return { costMinor, shops: goods.size, pots };
}
