// Policy: later orders, each searched for once. In: goods, a solver. Out: the cheapest order for what is wanted, from what is left.
import { at } from '../../model/at.js';
import type { OrderLine, OrderNeed } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import type { Container } from '../../model/words.js';
import { type Buying, cheapestCounts } from '../choose-counts.js';
import { findFirstOrder } from '../first-order.js';
import { findHolders, listWares } from '../list-wares.js';
import { type Market, usableMlOf } from '../open-market.js';
import { listAmounts, type Size } from '../promise/list-amounts.js';
import type { Solve } from '../solver/integer-program.js';
import { splitNeeds } from '../split-needs.js';
import { type Chosen, costOfCounts, writeOrder } from '../write-order.js';
import type { Goods, Left } from './list-goods.js';
import { openSelling } from './open-selling.js';

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
  const search = openSearch(goods, buying);
  const known = new Map<string, Promise<Refill>>();
  return (asked, left) => {
    const wanted = asked.map(({ place, ml }) => ({ place, ml: roundUp(place, ml) }));
    if (wanted.length > mostKept) return search(wanted, left);
    const key = wanted.map(({ place, ml }) => `${place} ${ml} ${limitsOf(at(holders, place), left)}`).join();
    const found = known.get(key) ?? search(wanted, left);
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

/**
 * Orders as any, as long as their search has time and they are not too large for it. Where it did not even begin, it will not for as
 * many paints or more: then an order stays as it would have begun.
 */
function openSearch(goods: Goods, buying: Buying): FindRefill {
  const sellingOf = openSelling(goods);
  let mostPaints = Number.POSITIVE_INFINITY;
  return async (wanted, left) => {
    const places = wanted.map(({ place }) => place);
    const { market, supply } = sellingOf(places, left);
    const needs = wanted.map(({ place, ml }): OrderNeed => ({ paint: at(goods.paints, place), ml }));
    const { within } = splitNeeds(needs, supply);
    const solve: Solve = async (program, limits) => {
      const solution = await buying.solve(program, limits);
      if (solution.state === 'none found' && solution.seconds === 0) mostPaints = wanted.length - 1;
      return solution;
    };
    const isSearched = wanted.length <= mostPaints;
    const chosen = isSearched
      ? await cheapestCounts(within, market, { ...buying, solve })
      : firstCounts(within, market);
    const { lines, totalMinor } = writeOrder(chosen, within, market);
    return {
      cashMinor: totalMinor,
      pieces: piecesOf(lines, goods),
      counts: lines.map((line) => [goods.offerAt(line) as number, line.count]),
    };
  };
}

/** The order that a search would begin with. */
function firstCounts(asked: readonly OrderNeed[], market: Market): Chosen {
  const needs = [...asked].sort((a, b) => (a.paint < b.paint ? -1 : 1));
  const wares = listWares(needs, market);
  const held = wares.map(() => 0);
  const counts = findFirstOrder(needs, { wares, holders: findHolders(wares), held }, market);
  const totalMinor = costOfCounts(wares, counts, market);
  return { wares, counts, totalMinor, aboveBestMinor: totalMinor };
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
