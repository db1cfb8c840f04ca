// Policy: later orders, each searched for once. In: goods, a solver. Out: the cheapest order for what is wanted, from what is left.
import { at } from '../../model/at.js';
import type { OrderLine, OrderNeed } from '../../model/order.js';
import type { Offer } from '../../model/sheets.js';
import { sameMl } from '../../model/volume.js';
import type { Container } from '../../model/words.js';
import { type Buying, cheapestCounts } from '../choose-counts.js';
import { type Market, usableMlOf } from '../open-market.js';
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

/**
 * What is wanted is asked for in whole pots: most of the thousands of orders on paper are then the same few, and each of these is
 * searched for as any order.
 */
export function openRefill(paints: readonly string[], goods: Goods, buying: Buying): FindRefill {
  const { market, holders } = goods;
  const roundUp = openRounding(paints, market);
  const known = new Map<string, Promise<Refill>>();
  return (asked, left) => {
    const wanted = asked.map(({ place, ml }) => ({ place, ml: roundUp(place, ml) }));
    const key = wanted
      .map(({ place, ml }) => `${place} ${ml} ${limitsOf(holders[place] ?? [], left)}`)
      .join();
    const found = known.get(key) ?? search(wanted, left, { paints, market, buying });
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

interface Searching {
  readonly paints: readonly string[];
  readonly market: Market;
  readonly buying: Buying;
}

async function search(wanted: readonly Wanted[], left: Left, searching: Searching): Promise<Refill> {
  const { paints, market, buying } = searching;
  const needs = wanted.map(({ place, ml }): OrderNeed => ({ paint: paints[place] ?? '', ml }));
  const offers = offersFor(new Set(needs.map(({ paint }) => paint)), market, left);
  const selling = { ...market, offers };
  const { within } = splitNeeds(needs, measureSupply(selling));
  const { lines, totalMinor } = writeOrder(await cheapestCounts(within, selling, buying), within, selling);
  return {
    cashMinor: totalMinor,
    pieces: piecesOf(lines, paints),
    counts: lines.map((line) => [market.offers.findIndex((offer) => isOf(line, offer)), line.count]),
  };
}

/** What is left of the offers that hold any of the paints, and of each shop's cheapest, which may fill up an order. */
function offersFor(paints: ReadonlySet<string>, { offers }: Market, left: Left): Offer[] {
  const cheapest = new Map<string, Offer>();
  for (const offer of offers) {
    const known = cheapest.get(offer.shop);
    if (offer.priceMinor > 0 && offer.priceMinor < (known?.priceMinor ?? Number.POSITIVE_INFINITY))
      cheapest.set(offer.shop, offer);
  }
  return offers.flatMap((offer, place) => {
    const isMeant = cheapest.get(offer.shop) === offer || offer.pots.some(({ paint }) => paints.has(paint));
    const available = at(left, place);
    if (!isMeant) return [];
    return [available === Number.POSITIVE_INFINITY ? offer : { ...offer, available }];
  });
}

/** A line's offer. */
export const isOf = (line: Pick<OrderLine, 'shop' | 'offer'>, offer: Offer): boolean =>
  line.shop === offer.shop && line.offer === offer.offer;

export function piecesOf(lines: readonly OrderLine[], paints: readonly string[]): Piece[] {
  return lines.flatMap(({ pots }) =>
    pots.map(({ paint, container, usableMl, count, costMinor }) => ({
      ...{ place: paints.indexOf(paint), container, ml: usableMl * count, costMinor },
    })),
  );
}

/** More sums of whole pots than this are not looked for: then each need is its own. */
const mostAmounts = 1000;

/** A need of a paint, rounded up to what whole pots of it come to. */
function openRounding(
  paints: readonly string[],
  { offers, assumptions }: Market,
): (place: number, ml: number) => number {
  const known = new Map<number, readonly number[] | undefined>();
  const sizesOf = (paint: string): Size[] =>
    offers.flatMap(({ pots, available: most = Number.POSITIVE_INFINITY }) => {
      const own = pots.filter((pot) => pot.paint === paint);
      const ml = own.reduce((sum, pot) => sum + usableMlOf(pot, assumptions) * pot.count, 0);
      return ml > 0 ? [{ ml, most }] : [];
    });
  return (place, ml) => {
    const before = known.get(place);
    const isKnown = known.has(place) && (before === undefined || ml <= (before.at(-1) ?? 0));
    const amounts = isKnown ? before : listAmounts(sizesOf(paints[place] ?? ''), 2 * ml, mostAmounts);
    known.set(place, amounts);
    return amounts?.find((amount) => amount >= ml - sameMl) ?? ml;
  };
}
