// Order: wares that another of their shop makes needless. In: wares, needs, shops. Out: the others.
import type { Offer, Shop } from '../model/sheets.js';
import { hasSums, mostOf, type Ware } from './ware.js';

/** What wares are compared by. */
export interface Comparing {
  /** Usable ml to be covered of each paint, at the most. */
  readonly needOf: ReadonlyMap<string, number>;
  readonly shops: ReadonlyMap<string, Shop>;
  /** Of these an order must hold some: they stay. */
  readonly isHeld: (offer: Offer) => boolean;
}

/**
 * Without the wares in whose place a cheapest order never needs to hold one: as many as make sense can be had of others of the
 * shop that hold as much of the same needed paints for no more; of two alike the fewer pots stay, then the first name, as
 * ties are settled. Where the shop counts sums, only wares of one price are compared: a dearer pot may reach a sum.
 */
export function dropDominated(wares: readonly Ware[], comparing: Comparing): Ware[] {
  const needless = new Set<Ware>();
  for (const group of groupAlike(wares, comparing)) {
    if (group.length === 1) continue;
    group.sort((a, b) => a.offer.priceMinor - b.offer.priceMinor || a.pots - b.pots);
    const standIns = openStandIns(group, comparing);
    for (const ware of group) {
      const { offer, useful } = ware;
      const enough = mostOf(offer, useful, comparing.shops.get(offer.shop));
      if (standIns.countFor(ware) >= enough && !comparing.isHeld(offer)) needless.add(ware);
      standIns.add(ware);
    }
  }
  return needless.size === 0 ? [...wares] : wares.filter((ware) => !needless.has(ware));
}

/** Wares of one shop with the same needed paints, and of one price where the shop counts sums; in the order of the list. */
function groupAlike(wares: readonly Ware[], { needOf, shops }: Comparing): Ware[][] {
  const groups = new Map<string, Ware[]>();
  for (const ware of wares) {
    const { offer, mlOf, useful } = ware;
    if (useful === 0) continue;
    const paints = [...mlOf.keys()].filter((paint) => needOf.has(paint));
    const price = hasSums(shops.get(offer.shop)) ? offer.priceMinor : '';
    const key = [offer.shop, price, ...(paints.length > 1 ? paints.sort() : paints)].join('\n');
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [ware]);
    else known.push(ware);
  }
  return [...groups.values()];
}

/** Wares that come first, and how many of them can stand in for one. */
interface StandIns {
  readonly countFor: (ware: Ware) => number;
  readonly add: (ware: Ware) => void;
}

function openStandIns(group: readonly Ware[], { needOf }: Comparing): StandIns {
  const [first] = group;
  const paints = [...(first?.mlOf.keys() ?? [])].filter((paint) => needOf.has(paint));
  const coverOf = ({ mlOf }: Ware, paint: string): number =>
    Math.min(mlOf.get(paint) ?? 0, needOf.get(paint) ?? 0);
  const [only] = paints;
  return paints.length === 1 && only !== undefined
    ? standInsBySize(group, (ware) => coverOf(ware, only))
    : standInsOfSets((one, other) => paints.every((paint) => coverOf(one, paint) >= coverOf(other, paint)));
}

/** Of one paint: those that hold as much or more, summed up in a tree over the sizes (Fenwick 1994). */
function standInsBySize(group: readonly Ware[], mlOf: (ware: Ware) => number): StandIns {
  const sizes = [...new Set(group.map(mlOf))].sort((a, b) => b - a);
  const rankOf = new Map(sizes.map((ml, rank) => [ml, rank + 1]));
  const tree = new Float64Array(sizes.length + 1);
  return {
    countFor: (ware) => {
      let count = 0;
      for (let at = rankOf.get(mlOf(ware)) ?? 0; at > 0; at -= at & -at) count += tree[at] as number;
      return count;
    },
    add: (ware) => {
      for (let at = rankOf.get(mlOf(ware)) ?? 0; at > 0 && at < tree.length; at += at & -at)
        tree[at] = (tree[at] as number) + ware.limit;
    },
  };
}

/** Sets compared with each other at the most; any that are left uncompared stay. */
const mostCompared = 100;

function standInsOfSets(holdsAsMuch: (one: Ware, other: Ware) => boolean): StandIns {
  const seen: Ware[] = [];
  return {
    countFor: (ware) => seen.reduce((count, one) => (holdsAsMuch(one, ware) ? count + one.limit : count), 0),
    add: (ware) => {
      if (seen.length < mostCompared) seen.push(ware);
    },
  };
}
