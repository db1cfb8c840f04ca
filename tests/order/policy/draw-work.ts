// Policy tests: an army by chance, over many draws and unit by unit. In: a seed, sizes. Out: what it lacks, its work, a market. The draws
// share a factor, as those of a real army do.
import { registry } from '../../../src/assumptions/registry.js';
import type { DrawnLack, StagedWork } from '../../../src/model/draws.js';
import type { Market } from '../../../src/order/open-market.js';
import { openStream } from '../../../src/ranges/open-stream.js';
import { drawFrom, drawMarket } from '../draw-market.mjs';

export interface DrawnCase {
  readonly market: Market;
  /** What it lacks over so many draws. */
  readonly lackOver: (draws: number, seed: number) => DrawnLack;
  readonly workOver: (draws: number, seed: number) => StagedWork;
  /** Likely need less the shelf. */
  readonly likelyMl: ReadonlyMap<string, number>;
}

interface Sizes {
  readonly paints: number;
  readonly offers: number;
  readonly shops: number;
  readonly stages: number;
}

/** Each need: likely ml by unit, times a factor common to all and one of its own, both lognormal; two thirds of the paints stand on the shelf. */
export function drawCase(seed: number, { paints, offers, shops, stages }: Sizes): DrawnCase {
  const { whole, share, chance } = drawFrom(seed + 900);
  const drawnMarket = drawMarket(seed, { paints, offers, shops, sets: 0.15 });
  const rows = drawnMarket.needs.map(({ paint, ml }) => {
    const likelyMl = Array.from({ length: stages }, () =>
      chance(0.6) ? (Math.min(ml, 25) * (0.5 + share())) / stages : 0,
    );
    return { paint, likelyMl, haveMl: chance(0.67) ? whole(0, 160) / 10 : 0 };
  });
  const needed = rows.filter(({ likelyMl }) => likelyMl.some((ml) => ml > 0));
  const workOver = (draws: number, chanceSeed: number): StagedWork => {
    const normal = (name: string): Float64Array =>
      openStream(chanceSeed, name).fillNormal(new Float64Array(draws));
    const common = normal('common');
    return {
      drawing: { draws, seed: chanceSeed },
      units: Array.from({ length: stages }, (_, at) => `unit ${at}`),
      paints: needed.map(({ paint, likelyMl, haveMl }) => {
        const own = normal(paint);
        const factor = common.map((z, draw) => Math.exp(0.45 * z + 0.25 * (own[draw] ?? 0)));
        return {
          paint,
          likelyMl,
          needMl: likelyMl.map((ml) => factor.map((one) => ml * one)),
          haveMl: new Float64Array(draws).fill(haveMl),
        };
      }),
      gainOf: () => undefined,
    };
  };
  return {
    market: { offers: drawnMarket.offers, shops: drawnMarket.shops, assumptions: registry },
    workOver,
    lackOver: (draws, chanceSeed) => lackOf(workOver(draws, chanceSeed)),
    likelyMl: new Map(
      needed.map(({ paint, likelyMl, haveMl }) => [
        paint,
        likelyMl.reduce((sum, ml) => sum + ml, 0) - haveMl,
      ]),
    ),
  };
}

function lackOf({ drawing, paints, gainOf }: StagedWork): DrawnLack {
  return {
    ...{ drawing, gainOf },
    paints: paints.map(({ paint, needMl, haveMl }) => ({
      paint,
      container: 'dropper',
      lackMl: haveMl.map((have, draw) => needMl.reduce((sum, need) => sum + (need[draw] ?? 0), 0) - have),
    })),
  };
}
