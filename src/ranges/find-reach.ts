// Ranges: how far today's pots reach. In: the work by stages over the draws. Out: ml of the likely need that are done for sure.
import type { StagedPaint, StagedWork } from '../model/draws.js';
import { quantileOf } from '../model/quantiles.js';
import { sameMl } from '../model/volume.js';

/**
 * Of each paint's likely need, taken stage by stage, what is done before its pots are dry in all but one draw in ten (P10). Of a
 * stage in which they run dry a share is done.
 */
export function findReach({ paints, drawing }: StagedWork): Map<string, number> {
  return new Map(
    paints.map((one) => {
      const reached = Float64Array.from({ length: drawing.draws }, (_, draw) => reachIn(one, draw));
      return [one.paint, quantileOf(reached, 0.1)];
    }),
  );
}

function reachIn({ needMl, likelyMl, haveMl }: StagedPaint, draw: number): number {
  let [left, reached] = [haveMl[draw] as number, 0];
  for (const [stage, needs] of needMl.entries()) {
    const need = needs[draw] as number;
    const likely = likelyMl[stage] ?? 0;
    if (need > left + sameMl) return reached + (likely * left) / need;
    left -= need;
    reached += likely;
  }
  return reached;
}
