// Ranges: the shelf once an order has come. In: drawn army, the order. Out: how often nothing runs out, and whether it may
// do without some pots.

import type { DrawnLack } from '../model/draws.js';
import type { Order } from '../model/order.js';
import { chanceOf } from '../model/quantiles.js';
import type { Chance } from '../model/ranges.js';
import { sameMl } from '../model/volume.js';

/** Part of an order that says what it brings. */
export type Bought = Pick<Order, 'lines'>;
type Line = Order['lines'][number];

/** What some pots hold of one paint that is needed, by its place among the paints. */
interface Holding {
  readonly place: number;
  /** From pots whose usable share is exact. */
  sureMl: number;
  /** From the others, in each draw; undefined where there are none. */
  drawnMl: Float64Array | undefined;
}

/** How often nothing runs out once an order has come; without one, with today's pots. */
export function chanceMet(drawn: DrawnLack, { lines }: Bought): Chance {
  const { draws } = drawn.drawing;
  const bought = openHoldings(drawn)(lines);
  const fails = new Uint8Array(draws);
  drawn.paints.forEach(({ lackMl }, place) => {
    markShort(fails, lackMl, { holding: bought.get(place) ?? nothing, sign: 1 });
  });
  return chanceOf(draws - countMarks(fails), draws);
}

/** What lines bring of each needed paint, by its place and by the drawn usable share of each container. */
export function openHoldings(drawn: DrawnLack): (lines: readonly Line[]) => Map<number, Holding> {
  const places = new Map(drawn.paints.map(({ paint }, place) => [paint, place]));
  return (lines) => holdingsOf(lines, places, drawn);
}

function holdingsOf(
  lines: readonly Line[],
  places: ReadonlyMap<string, number>,
  drawn: DrawnLack,
): Map<number, Holding> {
  const holdings = new Map<number, Holding>();
  for (const { paint, container, usableMl, count } of lines.flatMap(({ pots }) => pots)) {
    const place = places.get(paint);
    if (place === undefined) continue;
    const holding: Holding = holdings.get(place) ?? { place, sureMl: 0, drawnMl: undefined };
    holdings.set(place, holding);
    const gain = drawn.gainOf(container);
    if (gain === undefined) holding.sureMl += usableMl * count;
    else {
      holding.drawnMl ??= new Float64Array(gain.length);
      addTimes(holding.drawnMl, usableMl * count, gain);
    }
  }
  return holdings;
}

function addTimes(sum: Float64Array, times: number, column: Float64Array): void {
  for (let draw = 0; draw < sum.length; draw++)
    sum[draw] = (sum[draw] as number) + times * (column[draw] as number);
}

const nothing = { sureMl: 0, drawnMl: undefined };

interface Marking {
  readonly holding: Pick<Holding, 'sureMl' | 'drawnMl'>;
  readonly sign: 1 | -1;
}

/** Marks the draws in which a paint still falls short once so much more is there (sign 1) or less (-1). */
function markShort(fails: Uint8Array, lack: Float64Array, { holding, sign }: Marking): void {
  const { sureMl, drawnMl } = holding;
  const most = sign * sureMl + sameMl;
  for (let draw = 0; draw < lack.length; draw++) {
    const ml = drawnMl === undefined ? 0 : sign * (drawnMl[draw] as number);
    if ((lack[draw] as number) - ml > most) fails[draw] = 1;
  }
}

function countMarks(fails: Uint8Array): number {
  let count = 0;
  for (let draw = 0; draw < fails.length; draw++) count += fails[draw] as number;
  return count;
}

/** So many of a line's offer. */
export function cutLine(line: Line, count: number): Line {
  const pots = line.pots.map((pot) => ({ ...pot, count: (pot.count * count) / line.count }));
  return { ...line, count, pots };
}

/** The shelf after an order, from which pots can be taken again. */
interface FilledShelf {
  /** In how many draws something runs out. */
  failing(): number;
  /** In how many more it would if so much less were there. */
  failingWithout(holdings: Iterable<Holding>): number;
  take(holdings: Iterable<Holding>): void;
}

/** Keeps count of what runs out in each draw, so that one pot less asks only for its own paints. */
export function fillShelf(drawn: DrawnLack, { lines }: Bought): FilledShelf {
  const lacks = drawn.paints.map(({ lackMl }) => lackMl.slice());
  const misses = new Uint16Array(drawn.drawing.draws);
  const fails = new Uint8Array(drawn.drawing.draws);
  const lackAt = (place: number) => lacks[place] as Float64Array;
  const change = ({ place, sureMl, drawnMl }: Holding, sign: number): void => {
    const lack = lackAt(place);
    for (let draw = 0; draw < lack.length; draw++) lack[draw] = (lack[draw] as number) + sign * sureMl;
    if (drawnMl !== undefined) addTimes(lack, sign, drawnMl);
  };
  for (const holding of openHoldings(drawn)(lines).values()) change(holding, -1);
  for (const lack of lacks) countMisses(misses, lack, 1);
  return {
    failing() {
      let count = 0;
      for (let draw = 0; draw < misses.length; draw++) if (misses[draw] !== 0) count++;
      return count;
    },
    failingWithout(holdings) {
      fails.fill(0);
      for (const holding of holdings) markShort(fails, lackAt(holding.place), { holding, sign: -1 });
      for (let draw = 0; draw < fails.length; draw++) if (misses[draw] !== 0) fails[draw] = 0;
      return countMarks(fails);
    },
    take(holdings) {
      for (const holding of holdings) {
        countMisses(misses, lackAt(holding.place), -1);
        change(holding, 1);
        countMisses(misses, lackAt(holding.place), 1);
      }
    },
  };
}

/** Counts the draws in which a paint falls short in or out of the misses of each draw. */
function countMisses(misses: Uint16Array, lack: Float64Array, sign: number): void {
  for (let draw = 0; draw < lack.length; draw++) {
    if ((lack[draw] as number) > sameMl) misses[draw] = (misses[draw] as number) + sign;
  }
}
