// Summary: to which figure today's pots of a paint last. In: demands in painting order, what the pots hold and reach. Out: a figure
// and its unit.
import { demandMl, figuresWithin } from '../model/demand-ml.js';
import type { PaintStock } from '../model/stock.js';
import type { PaintReach, Reach } from '../model/summary.js';
import { sameMl } from '../model/volume.js';
import type { UnitDemand } from '../model/work.js';

/** Likely, and one time in ten at the most: `lowMl` of the likely need is what all but one draw in ten do. */
export function tellReach(
  { paint, haveMl }: Pick<PaintStock, 'paint' | 'haveMl'>,
  demands: readonly UnitDemand[],
  lowMl: number,
): PaintReach {
  return {
    likely: reachOf(haveMl, paint, demands),
    low: reachOf(Math.min(haveMl, lowMl), paint, demands),
  };
}

/** Unit by unit as they are painted; undefined where the paint lasts for all. */
function reachOf(ml: number, paint: string, demands: readonly UnitDemand[]): Reach | undefined {
  let [left, before] = [ml, 0];
  for (const demand of demands) {
    const { unit, figures } = demand;
    const whole = demandMl(demand, paint, figures);
    if (whole > left + sameMl) {
      const ofUnit = figuresWithin(demand, paint, left);
      return { figures: before + ofUnit, unit, ofUnit };
    }
    left -= whole;
    before += figures;
  }
  return undefined;
}
