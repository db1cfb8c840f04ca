// Frontier: a better way to serve needs, quick and not proved, for the solver to start from. In: a program, a way.
// Out: that way or a cheaper one.
import { at } from '../../model/at.js';
import { sameMl } from '../../model/volume.js';
import { choosePots, type Pack } from '../choose-pots.js';
import { placesByShop } from '../list-wares.js';
import { costOfCounts } from '../write-order.js';
import { type Effort, moveNeeds } from './move-needs.js';
import { askedOf, checkServed, type Served, type ServingProgram } from './serving-program.js';

type Shops = ReadonlySet<string>;

interface Tried {
  readonly paints: readonly string[];
  readonly counts: readonly number[];
  readonly totalMinor: number;
}

/** Prices asked for at the most. Among 60 needs and 200 paints five times as many found starts better by a thousandth. */
const mostLooks = 200_000;

/**
 * Single pots alone, paint by paint: from all shops, then without one shop after the other as long as that is
 * cheaper. For each choice of shops needs move to other paints while that saves: one need; all needs of a paint away from it;
 * all that a paint can serve to it.
 */
export function improveServing(program: ServingProgram, start: Served): Served {
  let best = start;
  const effort: Effort = { looks: mostLooks };
  const visit = (open: Shops, paints: readonly string[]): Tried | undefined => {
    if (effort.looks <= 0) return undefined;
    // Each ware's price is asked for once, whatever moves.
    effort.looks -= program.order.wares.length;
    const tried = tryShops(program, open, { paints, effort });
    const sound = tried && checkServed(program, tried.paints, tried.counts);
    if (sound !== undefined && sound.totalMinor < best.totalMinor) best = sound;
    return tried;
  };
  let open: Shops = new Set(program.order.shops.keys());
  let reached = visit(open, start.paints);
  while (reached !== undefined && open.size > 1) {
    const { paints, totalMinor } = reached;
    const fewer = [...open]
      .map((left) => new Set([...open].filter((shop) => shop !== left)))
      .map((shops) => ({ shops, tried: visit(shops, paints) }))
      .filter(({ tried }) => tried !== undefined && tried.totalMinor < totalMinor)
      .sort((a, b) => (a.tried?.totalMinor ?? 0) - (b.tried?.totalMinor ?? 0))[0];
    if (fewer === undefined) break;
    open = fewer.shops;
    reached = fewer.tried;
  }
  return best;
}

/** Undefined where the shops do not suffice. */
function tryShops(
  program: ServingProgram,
  open: Shops,
  { paints, effort }: Pick<Tried, 'paints'> & { readonly effort: Effort },
): Tried | undefined {
  const pots = openPots(program, open);
  const costOf = (paint: string, ml: number): number => pots.buy(paint, ml).costMinor;
  const moved = moveNeeds({ servings: program.servings, from: paints }, costOf, effort);
  const bought = program.order.wares.map(() => 0);
  for (const [paint, ml] of askedOf(program.servings, moved)) {
    const { columns, counts } = pots.buy(paint, ml);
    if (counts === undefined) return undefined;
    for (const [place, column] of columns.entries()) bought[column] = at(counts, place);
  }
  const counts = fillUp(program, bought);
  return { paints: moved, counts, totalMinor: costOfCounts(program.order.wares, counts, program.market) };
}

/** For a ml that can't be bought: finite, so that sums can be compared. */
const unsoldMinor = 1e9;

interface Bought {
  readonly columns: readonly number[];
  readonly counts: readonly number[] | undefined;
  /** Goods alone; more than any order costs where the pots do not suffice. */
  readonly costMinor: number;
}

interface Pots {
  /** The cheapest pots for so much of a paint beyond the shelf. */
  readonly buy: (paint: string, ml: number) => Bought;
}

function openPots({ order, haveMl }: ServingProgram, open: Shops): Pots {
  const packsOf = new Map<string, (Pack & { readonly column: number })[]>();
  for (const [column, { offer, mlOf, pots, limit }] of order.wares.entries()) {
    const [only] = mlOf;
    if (only === undefined || mlOf.size > 1 || !open.has(offer.shop)) continue;
    const packs = packsOf.get(only[0]) ?? [];
    packs.push({ column, ml: only[1], priceMinor: offer.priceMinor, pots, limit });
    packsOf.set(only[0], packs);
  }
  const known = new Map<string, Map<number, Bought>>();
  const choose = (paint: string, ml: number): Bought => {
    const packs = packsOf.get(paint) ?? [];
    const lackMl = ml - (haveMl.get(paint) ?? 0);
    const counts = lackMl <= sameMl ? packs.map(() => 0) : choosePots(lackMl, packs);
    const costMinor =
      counts?.reduce((sum, count, place) => sum + count * at(packs, place).priceMinor, 0) ??
      lackMl * unsoldMinor;
    return { columns: packs.map(({ column }) => column), counts, costMinor };
  };
  return {
    buy: (paint, ml) => {
      const ofPaint = known.get(paint) ?? new Map<number, Bought>();
      known.set(paint, ofPaint);
      const found = ofPaint.get(ml) ?? choose(paint, ml);
      ofPaint.set(ml, found);
      return found;
    },
  };
}

/** Fills up with the cheapest ware of a shop where that reaches a least order, or saves more postage than it costs. */
function fillUp({ order, columns, market }: ServingProgram, bought: readonly number[]): number[] {
  const counts = [...bought];
  const priceOf = (place: number): number => at(order.wares, place).offer.priceMinor;
  for (const [shop, places] of placesByShop(order.wares)) {
    const goods = places.reduce((sum, place) => sum + priceOf(place) * at(counts, place), 0);
    const terms = market.shops.get(shop);
    if (goods === 0 || terms === undefined) continue;
    const { leastOrderMinor = 0, freeFromMinor = Number.POSITIVE_INFINITY, postageMinor } = terms;
    const isNearFree = freeFromMinor - goods < postageMinor;
    let missing = Math.max(leastOrderMinor, isNearFree ? freeFromMinor : 0) - goods;
    if (missing <= 0) continue;
    const cheapest = places.filter((place) => priceOf(place) > 0).sort((a, b) => priceOf(a) - priceOf(b));
    for (const place of cheapest) {
      const most = at(columns, place).upper - at(counts, place);
      const more = Math.max(0, Math.min(most, Math.ceil(missing / priceOf(place))));
      counts[place] = at(counts, place) + more;
      missing -= more * priceOf(place);
    }
  }
  return counts;
}
