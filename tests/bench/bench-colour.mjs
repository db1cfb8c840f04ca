// Bench: colours within reach of many needs. In: paints drawn here from a seed. Out: milliseconds, every search exact.

import { registry } from '../../.halfpot/modules/assumptions/registry.js';
import { findInstead } from '../../.halfpot/modules/colour/find-instead.js';
import { openColours } from '../../.halfpot/modules/colour/open-colours.js';

/** Repeatable numbers from 0 to 1 (Lehmer 1951, multiplier 48271). */
function openChance(seed) {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** 2,000 owned paints with a colour, and 500 others to be bought: what may stand in for each. Best of five. */
export async function benchColours() {
  const chance = openChance(7);
  const byte = () =>
    Math.floor(chance() * 256)
      .toString(16)
      .padStart(2, '0');
  const list = Array.from({ length: 2500 }, (_, at) => ({
    ...{ paint: `paint ${at}`, kind: 'colour', hex: `#${byte()}${byte()}${byte()}`, alsoCalled: [] },
  }));
  const paints = new Map(list.map((one) => [one.paint, one]));
  const colours = await openColours(list);
  const stock = list.map(({ paint }, at) =>
    at < 2000
      ? { paint, haveMl: 10, leftAfterMl: 10, toBuyMl: 0 }
      : { paint, haveMl: 0, leftAfterMl: 0, toBuyMl: 5 },
  );
  const runs = Array.from({ length: 5 }, () => {
    const start = performance.now();
    findInstead(stock, { paints, colours, assumptions: registry });
    return performance.now() - start;
  });
  return Math.min(...runs);
}
