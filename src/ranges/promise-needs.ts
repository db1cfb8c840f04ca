// Ranges: the joint promise. In: drawn needs and shelf, how sure. Out: what must be bought of each paint so that nothing at
// all runs out in so many draws, how often an order keeps that, and what of an order it can do without.
import type { Order, OrderNeed } from '../model/order.js';
import type { Chance } from '../model/ranges.js';
import { sameMl } from '../model/volume.js';
import type { DrawnArmy, DrawnPaint } from './draw-army.js';
import { chanceOf } from './sum-up-draws.js';

/** Part of an order that says what it brings. */
export type Bought = Pick<Order, 'lines'>;

/** What must be bought, by paint, in likely usable ml; below 0: so much may be missing. */
export type ToBuy = ReadonlyMap<string, number>;

/**
 * What must be bought so that in a share `sure` (0 to 1) of draws no paint lacks more: one quantile of what is lacking, common
 * to all paints, just high enough. Each draw is as hard as its hardest paint, by rank; so the quantile is the hardness that
 * `sure` of the draws do not pass. Paints that can't be bought are left out of the hardness: buying more would not help.
 */
export function openPromise(drawn: DrawnArmy, canBuy: (paint: string) => boolean): (sure: number) => ToBuy {
  const { draws } = drawn.drawing;
  const hardness = new Int32Array(draws).fill(-1);
  const sorted = drawn.paints.map((one) => {
    const lack = lackToBuy(one, drawn);
    const rising = lack.slice().sort();
    if (canBuy(one.paint) && (rising.at(-1) ?? 0) > sameMl) raiseHardness(hardness, lack, rising);
    return { paint: one.paint, rising };
  });
  hardness.sort();
  return (sure) => {
    const least = Math.max(1, Math.ceil(sure * draws - 1e-9)) - 1;
    const rank = Math.max(least, hardness[least] ?? 0);
    return new Map(sorted.map(({ paint, rising }) => [paint, rising[rank] ?? 0]));
  };
}

/** Lack in ml of the pots that would be bought, whose usable share is drawn too; cans where the shelf has cans. */
function lackToBuy({ lackMl, container }: DrawnPaint, { gainOf }: DrawnArmy): Float64Array {
  const gain = gainOf(container);
  return gain === undefined ? lackMl : lackMl.map((ml, draw) => ml / (gain[draw] as number));
}

function raiseHardness(hardness: Int32Array, lack: Float64Array, rising: Float64Array): void {
  for (let draw = 0; draw < hardness.length; draw++) {
    const ml = lack[draw] as number;
    if (ml <= sameMl) continue;
    const rank = countBelow(rising, ml);
    if (rank > (hardness[draw] as number)) hardness[draw] = rank;
  }
}

/** How many of some rising values are below one. */
function countBelow(rising: Float64Array, value: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What is to be bought, as the order takes it. */
export function asNeeds(toBuy: ToBuy): OrderNeed[] {
  return [...toBuy].flatMap(([paint, ml]) => (ml > sameMl ? [{ paint, ml }] : []));
}

/** The army as if it needed only such paints. */
export function onlyPaints(drawn: DrawnArmy, isMeant: (paint: string) => boolean): DrawnArmy {
  return { ...drawn, paints: drawn.paints.filter(({ paint }) => isMeant(paint)) };
}

/** How often nothing runs out once an order has come; without one, with today's pots. */
export function chanceMet(drawn: DrawnArmy, order: Bought): Chance {
  const shelf = fillShelf(drawn, order);
  return chanceOf(drawn.drawing.draws - shelf.failing(), drawn.drawing.draws);
}

/** The shelf after an order, draw by draw; pots can be taken out again. */
interface FilledShelf {
  /** In how many draws something runs out. */
  failing(): number;
  /** The same if so much less of each paint were there; changes nothing. */
  failingWithout(pots: Pots): number;
  take(pots: Pots): void;
  /** Likely usable ml bought of a paint. */
  boughtMl(paint: string): number;
}

type Pots = readonly {
  readonly paint: string;
  readonly container: DrawnPaint['container'];
  readonly ml: number;
}[];

function fillShelf(drawn: DrawnArmy, { lines }: Bought): FilledShelf {
  const { draws } = drawn.drawing;
  const places = new Map(drawn.paints.map(({ paint }, place) => [paint, place]));
  // What is left of each paint at the end, in each draw.
  const left = drawn.paints.map(({ lackMl }) => lackMl.map((ml) => -ml));
  const bought = new Float64Array(drawn.paints.length);
  const misses = new Uint16Array(draws);
  let failing = 0;
  const count = (column: Float64Array, sign: number): void => {
    failing += countMisses(misses, column, sign);
  };
  const addTo = (column: Float64Array, { container, ml }: Pots[number], sign: number): void => {
    const gain = drawn.gainOf(container);
    for (let draw = 0; draw < draws; draw++) {
      column[draw] = (column[draw] as number) + sign * ml * (gain === undefined ? 1 : (gain[draw] as number));
    }
  };
  const pots = lines.flatMap((line) => potsOf(line, line.count));
  for (const pot of pots) {
    const place = places.get(pot.paint);
    if (place === undefined) continue;
    addTo(left[place] as Float64Array, pot, 1);
    bought[place] = (bought[place] ?? 0) + pot.ml;
  }
  for (const column of left) count(column, 1);
  const change = (taken: Pots, sign: number): void => {
    for (const pot of taken) {
      const place = places.get(pot.paint);
      if (place === undefined) continue;
      const column = left[place] as Float64Array;
      count(column, -1);
      addTo(column, pot, sign);
      count(column, 1);
      bought[place] = (bought[place] ?? 0) + sign * pot.ml;
    }
  };
  return {
    failing: () => failing,
    failingWithout(taken) {
      change(taken, -1);
      const without = failing;
      change(taken, 1);
      return without;
    },
    take: (taken) => change(taken, -1),
    boughtMl: (paint) => bought[places.get(paint) ?? -1] ?? 0,
  };
}

/** Counts a paint's draws that fall short in or out of the misses of each draw; gives the change in draws with any. */
function countMisses(misses: Uint16Array, left: Float64Array, sign: number): number {
  let change = 0;
  for (let draw = 0; draw < left.length; draw++) {
    if ((left[draw] as number) >= -sameMl) continue;
    const before = misses[draw] as number;
    misses[draw] = before + sign;
    if (before === 0) change++;
    else if (before + sign === 0) change--;
  }
  return change;
}

/** Pots of so many of a line's offer, by paint. */
function potsOf({ pots, count: all }: Order['lines'][number], count: number): Pots {
  return pots.map(({ paint, container, usableMl, count: potCount }) => ({
    paint,
    container,
    ml: (usableMl * potCount * count) / all,
  }));
}

/**
 * What an order must still hold once every pot that the promise does not need is taken back, the dearest first. In what is
 * kept, each paint is asked for no more than before. An order that does not keep the promise gives nothing back.
 */
export function takeBack(
  drawn: DrawnArmy,
  order: Bought,
  { toBuy, sure }: { toBuy: ToBuy; sure: number },
): ToBuy {
  const { draws } = drawn.drawing;
  const mayFail = draws - Math.ceil(sure * draws - 1e-9);
  const shelf = fillShelf(drawn, order);
  const counts = new Map(order.lines.map((line) => [line, line.count]));
  const dearestFirst = [...order.lines].sort((a, b) => b.priceMinor - a.priceMinor);
  for (const line of shelf.failing() <= mayFail ? dearestFirst : []) {
    const one = potsOf(line, 1);
    while ((counts.get(line) ?? 0) > 0 && shelf.failingWithout(one) <= mayFail) {
      shelf.take(one);
      counts.set(line, (counts.get(line) ?? 0) - 1);
    }
  }
  const kept = new Map(toBuy);
  for (const { paint } of drawn.paints) {
    const ml = toBuy.get(paint) ?? 0;
    if (ml > sameMl) kept.set(paint, Math.min(ml, shelf.boughtMl(paint)));
  }
  return kept;
}
