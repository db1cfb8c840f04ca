// Policy: what later orders may buy, looked up once for all that want the same paints. In: goods. Out: the market of what is left.
import { at } from '../../model/at.js';
import type { Offer } from '../../model/sheets.js';
import type { Market } from '../open-market.js';
import { measureSupply, type Supply } from '../split-needs.js';
import type { Goods, Left } from './list-goods.js';

/** A market, and how much of each paint it holds. */
export interface Selling {
  readonly market: Market;
  readonly supply: Supply;
}

/** Offers of all the markets that are remembered: what is beyond them would fill the memory. */
const mostRemembered = 20_000;

/** By places of paints: what is left of the offers that hold any of them, and of each shop's cheapest, which may fill up an order. */
export function openSelling(goods: Goods): (places: readonly number[], left: Left) => Selling {
  const { market } = goods;
  const fillers = cheapestOf(market.offers);
  const holders = listHolders(goods);
  let known = new Map<string, Selling>();
  let remembered = 0;
  return (places, left) => {
    const meant = new Set([...fillers, ...places.flatMap((place) => at(holders, place))]);
    const offers = [...meant].sort((a, b) => a - b);
    if (offers.length > mostRemembered) return sell(offers, left, market);
    const key = offers.map((offer) => `${offer} ${at(left, offer)}`).join();
    const before = known.get(key);
    if (before !== undefined) return before;
    if (remembered + offers.length > mostRemembered) [known, remembered] = [new Map(), 0];
    const selling = sell(offers, left, market);
    known.set(key, selling);
    remembered += offers.length;
    return selling;
  };
}

function sell(places: readonly number[], left: Left, whole: Market): Selling {
  const offers = places.map((place): Offer => {
    const [offer, available] = [at(whole.offers, place), at(left, place)];
    return available === Number.POSITIVE_INFINITY ? offer : { ...offer, available };
  });
  const market = { ...whole, offers };
  return { market, supply: measureSupply(market) };
}

/** Of each paint, also what is sold out: its price still tells what a pot of a set is worth. */
function listHolders({ paints, market, placeOf }: Goods): number[][] {
  const holders = paints.map((): number[] => []);
  for (const [offer, { pots }] of market.offers.entries())
    for (const { paint } of pots) holders[placeOf(paint)]?.push(offer);
  return holders;
}

/** The place of each shop's cheapest offer. */
function cheapestOf(offers: readonly Offer[]): number[] {
  const cheapest = new Map<string, number>();
  for (const [place, { shop, priceMinor }] of offers.entries()) {
    const known = cheapest.get(shop);
    if (priceMinor > 0 && (known === undefined || priceMinor < at(offers, known).priceMinor))
      cheapest.set(shop, place);
  }
  return [...cheapest.values()];
}
