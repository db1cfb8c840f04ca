// Ranges: the shelf once an order has come. In: drawn army, the order. Out: how often nothing runs out.
import type { DrawnLack } from '../model/draws.js';
import type { Order } from '../model/order.js';
import { chanceOf } from '../model/quantiles.js';
import type { Chance } from '../model/ranges.js';
import { sameMl } from '../model/volume.js';
import type { Container } from '../model/words.js';

/** Part of an order that says what it brings. */
type Bought = Pick<Order, 'lines'>;

/** How often nothing runs out once an order has come; without one, with today's pots. */
export function chanceMet({ drawing, paints, gainOf }: DrawnLack, { lines }: Bought): Chance {
  const { draws } = drawing;
  const bought = boughtIn(lines);
  const fails = new Uint8Array(draws);
  for (const { paint, lackMl } of paints) {
    const pots = [...(bought.get(paint) ?? [])].map(([container, ml]) => ({ ml, gain: gainOf(container) }));
    for (let draw = 0; draw < draws; draw++) {
      let left = lackMl[draw] as number;
      for (const { ml, gain } of pots) left -= ml * (gain?.[draw] ?? 1);
      if (left > sameMl) fails[draw] = 1;
    }
  }
  return chanceOf(draws - fails.reduce((sum, mark) => sum + mark, 0), draws);
}

/** Likely usable ml of each paint, by what it comes in: that says what it gives in a draw. */
function boughtIn(lines: Bought['lines']): Map<string, Map<Container, number>> {
  const bought = new Map<string, Map<Container, number>>();
  for (const { paint, container, usableMl, count } of lines.flatMap(({ pots }) => pots)) {
    const known = bought.get(paint) ?? new Map<Container, number>();
    bought.set(paint, known.set(container, (known.get(container) ?? 0) + usableMl * count));
  }
  return bought;
}
