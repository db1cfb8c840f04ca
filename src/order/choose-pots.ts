// Order: the cheapest whole packs that cover one need. In: ml and packs with price and limit. Out: how many of each.
import { at } from '../model/at.js';
import { sameMl } from '../model/volume.js';

/** A pack of one paint: one pot, or several sold together. */
export interface Pack {
  /** Usable ml in it, above 0. */
  readonly ml: number;
  readonly priceMinor: number;
  /** Pots in it: of two orders at one cost, the one with fewer pots wins. */
  readonly pots: number;
  /** How many can be had; Infinity for no limit. */
  readonly limit: number;
}

interface Best {
  costMinor: number;
  pots: number;
  counts: readonly number[];
}

/** Costs are whole minor units, so a bound this little above the best is no higher. */
const sameCost = 1e-6;

/** The search ends here: a first plan needs no proof, and alike packs have very many equal orders. */
const mostSteps = 20_000;

/**
 * Counts of each pack (in the order given) that cover `needMl` at the least cost; ties go to fewer pots. Exact
 * unless the search passes `mostSteps`, which takes several limited packs of nearly the same price per ml, or there are very
 * many packs.
 * Undefined where even everything that can be had is not enough. A need of 0 takes nothing.
 * Pots of 12 ml at 2.75, 17 ml at 3.50, 60 ml at 10.90 cover 38 ml with 2, 1, 0 of them.
 * Branch and bound over packs by price per ml: the bound is the rest of the need at the best price still open.
 */
export function choosePots(needMl: number, packs: readonly Pack[]): readonly number[] | undefined {
  const supply = packs.reduce((total, { ml, limit }) => total + ml * limit, 0);
  if (supply < needMl - sameMl) return undefined;
  const sorted = nearest(
    leaveNeedless(packs).sort((a, b) => perMl(a) - perMl(b)),
    needMl,
  );
  const best = takeInTurn(needMl, sorted);
  if (sorted.length <= deepest)
    search({ packs: sorted, best, counts: [], steps: { taken: 0 } }, needMl, 0, 0);
  // The best may end before the last pack: of those after it none.
  const countOf = new Map(sorted.map((pack, place) => [pack, best.counts[place] ?? 0]));
  return packs.map((pack) => countOf.get(pack) ?? 0);
}

/** Each pack is a step deeper into the search: so many are looked at, or as many as cover the need; of more than the other none. */
const mostPacks = 300;
const deepest = 2000;

/** As many of each as the need takes, the cheapest by the ml first. */
function takeInTurn(needMl: number, sorted: readonly Pack[]): Best {
  const best = { costMinor: 0, pots: 0, counts: [] as number[] };
  let restMl = needMl;
  for (const { ml, priceMinor, pots, limit } of sorted) {
    const count = Math.max(0, Math.min(limit, Math.ceil((restMl - sameMl) / ml)));
    best.counts.push(count);
    best.costMinor += count * priceMinor;
    best.pots += count * pots;
    restMl -= count * ml;
  }
  return best;
}

/** The cheapest by the ml, at least so many as cover the need. */
function nearest(sorted: readonly Pack[], needMl: number): readonly Pack[] {
  let supply = 0;
  const enough = sorted.findIndex(({ ml, limit }) => {
    supply += ml * limit;
    return supply >= needMl - sameMl;
  });
  return sorted.slice(0, Math.max(mostPacks, enough + 1));
}

const perMl = ({ priceMinor, ml }: Pack): number => priceMinor / ml;

/** Packs without the dominated ones: another, to be had without limit, gives as much for no more, in no more pots. */
function leaveNeedless(packs: readonly Pack[]): Pack[] {
  const cheapestFirst = [...packs.keys()].sort((a, b) => compare(at(packs, a), at(packs, b)) || a - b);
  const needless = new Set<number>();
  // The most ml that so many pots give for no more than the pack at hand.
  const mostMl = new Map<number, number>();
  for (const place of cheapestFirst) {
    const { ml, pots, limit } = at(packs, place);
    if ([...mostMl].some(([other, most]) => most >= ml && other <= pots)) needless.add(place);
    else if (limit === Number.POSITIVE_INFINITY) mostMl.set(pots, ml);
  }
  return packs.filter((_, place) => !needless.has(place));
}

/** Of two packs at one price the larger first, then the one in fewer pots, then the one without a limit. */
const compare = (a: Pack, b: Pack): number =>
  a.priceMinor - b.priceMinor ||
  b.ml - a.ml ||
  a.pots - b.pots ||
  Number(a.limit !== Number.POSITIVE_INFINITY) - Number(b.limit !== Number.POSITIVE_INFINITY);

interface Search {
  readonly packs: readonly Pack[];
  readonly best: Best;
  readonly counts: readonly number[];
  readonly steps: { taken: number };
}

/** Tries every count of the pack at hand that the bound leaves open, from the most down. */
function search(state: Search, restMl: number, costMinor: number, pots: number): void {
  const { packs, best, counts, steps } = state;
  steps.taken++;
  if (restMl <= sameMl) keep(best, { costMinor, pots, counts });
  const pack = packs[counts.length];
  if (restMl <= sameMl || pack === undefined) return;
  const next = packs[counts.length + 1];
  const most = Math.min(pack.limit, Math.ceil((restMl - sameMl) / pack.ml));
  for (let count = most; count >= 0 && steps.taken < mostSteps; count--) {
    const left = restMl - count * pack.ml;
    const cost = costMinor + count * pack.priceMinor;
    // Fewer of this pack leave more to dearer ones, so once the bound is passed it stays passed.
    if (left > sameMl && cost + boundMinor(left, next) > best.costMinor + sameCost) break;
    search({ ...state, counts: [...counts, count] }, left, cost, pots + count * pack.pots);
  }
}

/** The least that the rest can cost: all of it at the next price per ml; without a next pack it can't be had. */
function boundMinor(leftMl: number, next: Pack | undefined): number {
  return next === undefined ? Number.POSITIVE_INFINITY : leftMl * perMl(next);
}

function keep(best: Best, found: Best): void {
  const cheaper = found.costMinor < best.costMinor;
  if (cheaper || (found.costMinor === best.costMinor && found.pots < best.pots)) Object.assign(best, found);
}
