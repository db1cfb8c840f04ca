// Ranges: the joint promise. In: drawn needs and shelf, how sure. Out: what must be bought of each paint so that nothing at
// all runs out in so many draws.

import type { DrawnLack, LackingPaint } from '../model/draws.js';
import type { OrderNeed } from '../model/order.js';
import { sameMl } from '../model/volume.js';

/** What must be bought, by paint, in likely usable ml; below 0: so much may be missing. */
export type ToBuy = ReadonlyMap<string, number>;

/**
 * What must be bought so that in a share `sure` (0 to 1) of draws no paint lacks more: one quantile of what is lacking, common
 * to all paints, just high enough. Each draw is as hard as its hardest paint, by rank; so the quantile is the hardness that
 * `sure` of the draws do not pass. Paints that can't be bought are left out of the hardness: buying more would not help.
 */
export function openPromise(drawn: DrawnLack, canBuy: (paint: string) => boolean): (sure: number) => ToBuy {
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
function lackToBuy({ lackMl, container }: LackingPaint, { gainOf }: DrawnLack): Float64Array {
  const gain = gainOf(container);
  return gain === undefined ? lackMl : lackMl.map((ml, draw) => ml / (gain[draw] as number));
}

function raiseHardness(hardness: Int32Array, lack: Float64Array, rising: Float64Array): void {
  for (let draw = 0; draw < hardness.length; draw++) {
    const [ml, rank] = [lack[draw] as number, hardness[draw] as number];
    // Where the value at the rank found so far does for this paint too, the draw is no harder for it.
    if (ml <= sameMl || (rank >= 0 && (rising[rank] as number) >= ml)) continue;
    hardness[draw] = countBelow(rising, ml, rank + 1);
  }
}

/** How many of some rising values are below one, of which the first `least` are known to be. */
function countBelow(rising: Float64Array, value: number, least: number): number {
  let [low, high] = [least, rising.length];
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
export function onlyPaints(drawn: DrawnLack, isMeant: (paint: string) => boolean): DrawnLack {
  return { ...drawn, paints: drawn.paints.filter(({ paint }) => isMeant(paint)) };
}
