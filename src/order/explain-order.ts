// Order: why this order. In: needs, market, what was chosen. Out: sets passed over, and all from one shop.

import type { OneShop, OrderNeed, PassedOver } from '../model/order.js';
import type { Offer } from '../model/sheets.js';
import { type Buying, besides, cheapestCounts } from './choose-counts.js';
import { listWares } from './list-wares.js';
import type { Market } from './open-market.js';
import { measureSupply, splitNeeds } from './split-needs.js';
import type { Ware } from './ware.js';
import type { Chosen } from './write-order.js';

interface Explained {
  readonly market: Market;
  readonly buying: Buying;
  readonly chosen: Chosen;
}

/** At most so many sets are weighed against the order, those that hold the most needed paints first; a set whose
 * order is not proved within its short search is not named. */
const mostSets = 6;

/** Sets that hold two or more needed paints and are not bought, each with what the cheapest order with it costs more. */
export async function weighSets(
  needs: readonly OrderNeed[],
  { market, buying, chosen }: Explained,
): Promise<PassedOver[]> {
  const passed: PassedOver[] = [];
  for (const { offer } of temptingSets(needs, market, chosen)) {
    const forced = await orderWith(offer, needs, { market, buying });
    if (forced !== undefined)
      passed.push({ shop: offer.shop, offer: offer.offer, extraMinor: forced - chosen.totalMinor });
  }
  return passed;
}

function temptingSets(needs: readonly OrderNeed[], market: Market, { wares, counts }: Chosen): Ware[] {
  const needed = new Set(needs.map(({ paint }) => paint));
  const bought = new Set(wares.flatMap(({ offer }, place) => (counts[place] ? [offer] : [])));
  const hits = ({ mlOf }: Ware): number => [...mlOf.keys()].filter((paint) => needed.has(paint)).length;
  return listWares(needs, market)
    .filter((ware) => !bought.has(ware.offer) && hits(ware) > 1)
    .sort((a, b) => hits(b) - hits(a))
    .slice(0, mostSets);
}

/** Cost of the cheapest order that holds one of an offer: its own price, and the rest of the needs as ever. */
async function orderWith(
  offer: Ware['offer'],
  needs: readonly OrderNeed[],
  { market, buying }: Omit<Explained, 'chosen'>,
): Promise<number | undefined> {
  const chosen = await cheapestCounts(needs, market, { ...besides(buying), held: new Map([[offer, 1]]) });
  return chosen.aboveBestMinor === 0 ? chosen.totalMinor : undefined;
}

/** The cheapest order from each shop that covers every need alone; none where only one shop has offers. */
export async function askEachShop(
  needs: readonly OrderNeed[],
  { market, buying }: Explained,
): Promise<OneShop[]> {
  if (needs.length === 0) return [];
  const found: OneShop[] = [];
  for (const [shop, offers] of groupByShop(market.offers)) {
    const alone = { ...market, offers };
    if (splitNeeds(needs, measureSupply(alone)).unmet.length > 0) continue;
    const { totalMinor, aboveBestMinor } = await cheapestCounts(needs, alone, besides(buying));
    if (aboveBestMinor === 0) found.push({ shop, totalMinor });
  }
  return found;
}

/** Shops by name. */
function groupByShop(offers: Market['offers']): [shop: string, offers: Offer[]][] {
  const groups = new Map<string, Offer[]>();
  for (const offer of offers) {
    const known = groups.get(offer.shop);
    if (known === undefined) groups.set(offer.shop, [offer]);
    else known.push(offer);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
}
