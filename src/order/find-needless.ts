// Order: offers that others of their shop make needless. In: offers as stock, what is needed of them. Out: those that no
// cheapest order has to hold.
import { at } from '../model/at.js';
import type { Shop } from '../model/sheets.js';
import { hasSums, type Stocked } from './ware.js';

/**
 * Offers of one shop with as many pots of the same paints, and of one price where the shop counts sums: only there one can
 * always stand in for another, whether cash or pots shall be few. The cheapest first; of one price the first name. Never of one
 * offer alone.
 */
export type Alike = readonly Stocked[];

export function groupAlike(stock: readonly Stocked[], shops: ReadonlyMap<string, Shop>): Alike[] {
  const groups = new Map<string, Stocked[]>();
  for (const stocked of stock) {
    const { offer, mlOf, pots } = stocked;
    const paints = [...mlOf.keys()];
    if (paints.length > 1) paints.sort();
    const price = hasSums(shops.get(offer.shop)) ? offer.priceMinor : '';
    const key = [offer.shop, price, pots, ...paints].join('\n');
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [stocked]);
    else known.push(stocked);
  }
  const several = [...groups.values()].filter(({ length }) => length > 1);
  for (const group of several) group.sort((a, b) => a.offer.priceMinor - b.offer.priceMinor);
  return several;
}

/** What of an offer counts. */
export interface Counting {
  /** How much of a paint one of it covers; 0 where that is not needed. */
  readonly coverOf: (stocked: Stocked, paint: string) => number;
  /** More of an offer than that, with all that can stand in for it, make no sense in any order. */
  readonly enoughOf: (stocked: Stocked) => number;
}

/**
 * Dominated offers: of those that come first in their group enough cover no less. In their place a cheapest order holds one of
 * those, and of two such orders the one that ties are settled for.
 */
export function findNeedless(groups: readonly Alike[], { coverOf, enoughOf }: Counting): Set<Stocked> {
  const needless = new Set<Stocked>();
  for (const group of groups) {
    const paints = [...at(group, 0).mlOf.keys()].filter((paint) =>
      group.some((stocked) => coverOf(stocked, paint) > 0),
    );
    const [only] = paints;
    if (only === undefined) continue;
    const standIns =
      paints.length === 1
        ? standInsBySize(group, (stocked) => coverOf(stocked, only))
        : standInsOfSets((one, other) =>
            paints.every((paint) => coverOf(one, paint) >= coverOf(other, paint)),
          );
    for (const stocked of group) {
      if (standIns.countFor(stocked) >= enoughOf(stocked)) needless.add(stocked);
      standIns.add(stocked);
    }
  }
  return needless;
}

/** Offers that come first, and how many of them can stand in for one. */
interface StandIns {
  readonly countFor: (stocked: Stocked) => number;
  readonly add: (stocked: Stocked) => void;
}

/** Of one paint: those that cover as much or more, summed up in a tree over the sizes (Fenwick 1994). */
function standInsBySize(group: Alike, coverOf: (stocked: Stocked) => number): StandIns {
  const sizes = [...new Set(group.map(coverOf))].sort((a, b) => b - a);
  const rankOf = new Map(sizes.map((ml, rank) => [ml, rank + 1]));
  const tree = new Float64Array(sizes.length + 1);
  return {
    countFor: (stocked) => {
      let count = 0;
      for (let node = rankOf.get(coverOf(stocked)) ?? 0; node > 0; node -= node & -node)
        count += at(tree, node);
      return count;
    },
    add: (stocked) => {
      for (let node = rankOf.get(coverOf(stocked)) ?? 0; node > 0 && node < tree.length; node += node & -node)
        tree[node] = at(tree, node) + stocked.limit;
    },
  };
}

/** Sets compared with each other at the most; any that are left uncompared stay. */
const mostCompared = 100;

function standInsOfSets(coversAsMuch: (one: Stocked, other: Stocked) => boolean): StandIns {
  const seen: Stocked[] = [];
  return {
    countFor: (stocked) =>
      seen.reduce((count, one) => (coversAsMuch(one, stocked) ? count + one.limit : count), 0),
    add: (stocked) => {
      if (seen.length < mostCompared) seen.push(stocked);
    },
  };
}
