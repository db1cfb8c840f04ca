// Policy: how likely what an order buys is needed. In: its lines, what is asked for over the draws. Out: a chance for each line, and for
// what it leaves out.
import type { ChoiceLine, Waiting } from '../../model/choices.js';
import type { OrderLine } from '../../model/order.js';
import { chanceOf } from '../../model/quantiles.js';
import { sameMl } from '../../model/volume.js';
import type { Asked } from '../promise/list-asked.js';
import { countOver } from '../promise/list-steps.js';
import type { OpenPromise } from '../promise/open-promise.js';
import type { Thresholds } from './buy-in-goes.js';
import { thresholdOf } from './threshold.js';

/** What chances are told from. */
export interface Telling extends Pick<OpenPromise, 'asked' | 'draws' | 'market'> {
  readonly againMinor: number | undefined;
  readonly thresholds: Thresholds;
}

/** Each line with the chance that the last of its offer is needed; of a set, that any of its pots is. */
export function tellNeeded(lines: readonly OrderLine[], telling: Telling): ChoiceLine[] {
  const { draws, market, againMinor } = telling;
  const asked = new Map(telling.asked.map((one) => [one.paint, one]));
  const bought = boughtMl(lines);
  return lines.map((line) => {
    const without = [...boughtMl([line])].flatMap(([paint, ml]) => {
      const one = asked.get(paint);
      return one === undefined ? [] : [{ asked: one, ml: (bought.get(paint) ?? 0) - ml / line.count }];
    });
    const postageMinor = market.shops.get(line.shop)?.postageMinor ?? 0;
    const threshold = thresholdOf({ priceMinor: line.priceMinor, postageMinor, againMinor });
    return { ...line, chanceNeeded: chanceOf(countShort(without, draws), draws), threshold };
  });
}

function boughtMl(lines: readonly OrderLine[]): Map<string, number> {
  const bought = new Map<string, number>();
  for (const { paint, usableMl, count } of lines.flatMap(({ pots }) => pots))
    bought.set(paint, (bought.get(paint) ?? 0) + usableMl * count);
  return bought;
}

/** Draws that ask for more than so much of any of some paints. */
function countShort(held: readonly { readonly asked: Asked; readonly ml: number }[], draws: number): number {
  const [first, ...others] = held;
  if (first === undefined) return 0;
  if (others.length === 0) return countOver(first.asked.rising, first.ml);
  let count = 0;
  for (let draw = 0; draw < draws; draw++)
    if (held.some(({ asked, ml }) => (asked.ml[draw] as number) > ml + sameMl)) count++;
  return count;
}

/** Paints that some draw asks for and the lines leave out, the likeliest first. */
export function listWaiting(lines: readonly OrderLine[], { asked, draws, thresholds }: Telling): Waiting[] {
  const bought = boughtMl(lines);
  return asked
    .filter(({ paint }) => !bought.has(paint))
    .map(({ paint, rising }) => ({
      paint,
      chanceNeeded: chanceOf(countOver(rising, 0), draws),
      threshold: thresholds.get(paint) ?? 1,
    }))
    .sort((a, b) => b.chanceNeeded.chance - a.chanceNeeded.chance);
}
