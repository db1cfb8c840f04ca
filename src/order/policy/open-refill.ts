// Policy: later orders, each searched for once. In: goods, a solver. Out: the cheapest order for what is wanted, from what is left.
import { at } from '../../model/at.js';
import type { OrderLine, OrderNeed } from '../../model/order.js';
import type { Offer } from '../../model/sheets.js';
import { sameMl } from '../../model/volume.js';
import type { Container } from '../../model/words.js';
import { type Buying, cheapestCounts } from '../choose-counts.js';
import { usableMlOf } from '../open-market.js';
import { listAmounts, type Size } from '../promise/list-amounts.js';
import { measureSupply, splitNeeds } from '../split-needs.js';
import { writeOrder } from '../write-order.js';
import type { Goods, Left } from './list-goods.js';

/** So much is wanted of a paint of the work, by its place. */
export interface Wanted {
  readonly place: number;
  readonly ml: number;
}

/** Pots of one paint that come to the shelf. */
export interface Piece {
  /** Which paint of the work it is; -1: none. */
  readonly place: number;
  readonly container: Container;
  /** Usable ml of all of them. */
  readonly ml: number;
  readonly costMinor: number;
}

export interface Refill {
  readonly cashMinor: number;
  readonly pieces: readonly Piece[];
  /** How many of which offers, by place. */
  readonly counts: readonly (readonly [place: number, count: number])[];
}

/** All that is wanted, as far as it can be had. */
export type FindRefill = (wanted: readonly Wanted[], left: Left) => Promise<Refill>;

/** Orders for more paints than this are hardly ever the same, and would fill the memory. */
const mostKept = 128;

/**
 * What is wanted is asked for in whole pots: most of the thousands of orders on paper are then the same few, and each of these is
 * searched for as any order.
 */
export function openRefill(goods: Goods, buying: Buying): FindRefill {
  const { holders } = goods;
  const roundUp = openRounding(goods);
  const known = new Map<string, Promise<Refill>>();
  return (asked, left) => {
    const wanted = asked.map(({ place, ml }) => ({ place, ml: roundUp(place, ml) }));
    if (wanted.length > mostKept) return search(wanted, left, goods, buying);
    const key = wanted.map(({ place, ml }) => `${place} ${ml} ${limitsOf(at(holders, place), left)}`).join();
    const found = known.get(key) ?? search(wanted, left, goods, buying);
    known.set(key, found);
    return found;
  };
}

/** What is left of a paint's offers, as far as that is limited. */
const limitsOf = (offers: readonly number[], left: Left): string =>
  offers
    .map((offer) => left[offer])
    .filter((count) => count !== Number.POSITIVE_INFINITY)
    .join(' ');

async function search(wanted: readonly Wanted[], left: Left, goods: Goods, buying: Buying): Promise<Refill> {
  const { paints, market } = goods;
  const needs = wanted.map(({ place, ml }): OrderNeed => ({ paint: at(paints, place), ml }));
  const selling = { ...market, offers: offersFor(new Set(wanted.map(({ place }) => place)), goods, left) };
  const { within } = splitNeeds(needs, measureSupply(selling));
  const { lines, totalMinor } = writeOrder(await cheapestCounts(within, selling, buying), within, selling);
  return {
    cashMinor: totalMinor,
    pieces: piecesOf(lines, goods),
    counts: lines.map((line) => [goods.offerAt(line) as number, line.count]),
  };
}

/** What is left of the offers that hold any of the paints, and of each shop's cheapest, which may fill up an order. */
function offersFor(paints: ReadonlySet<number>, { market: { offers }, placeOf }: Goods, left: Left): Offer[] {
  const cheapest = new Map<string, Offer>();
  for (const offer of offers) {
    const known = cheapest.get(offer.shop);
    if (offer.priceMinor > 0 && offer.priceMinor < (known?.priceMinor ?? Number.POSITIVE_INFINITY))
      cheapest.set(offer.shop, offer);
  }
  return offers.flatMap((offer, place) => {
    const isMeant =
      cheapest.get(offer.shop) === offer || offer.pots.some(({ paint }) => paints.has(placeOf(paint)));
    const available = at(left, place);
    if (!isMeant) return [];
    return [available === Number.POSITIVE_INFINITY ? offer : { ...offer, available }];
  });
}

export function piecesOf(lines: readonly OrderLine[], { placeOf }: Goods): Piece[] {
  return lines.flatMap(({ pots }) =>
    pots.map(({ paint, container, usableMl, count, costMinor }) => ({
      ...{ place: placeOf(paint), container, ml: usableMl * count, costMinor },
    })),
  );
}

/** More sums of whole pots than this are not looked for: then each need is its own. */
const mostAmounts = 1000;

/** A need of a paint, rounded up to what whole pots of it come to. */
function openRounding(goods: Goods): (place: number, ml: number) => number {
  const known = new Map<number, readonly number[] | undefined>();
  return (place, ml) => {
    const before = known.get(place);
    const isKnown = known.has(place) && (before === undefined || ml <= (before.at(-1) ?? 0));
    const amounts = isKnown ? before : listAmounts(sizesOf(place, goods), 2 * ml, mostAmounts);
    known.set(place, amounts);
    return amounts?.find((amount) => amount >= ml - sameMl) ?? ml;
  };
}

/** What the offers of a paint hold of it. */
function sizesOf(place: number, { holders, market, placeOf }: Goods): Size[] {
  return at(holders, place).map((offer) => {
    const { pots, available: most = Number.POSITIVE_INFINITY } = at(market.offers, offer);
    const own = pots.filter(({ paint }) => placeOf(paint) === place);
    return { ml: own.reduce((sum, pot) => sum + usableMlOf(pot, market.assumptions) * pot.count, 0), most };
  });
}
