// Estimate: how often a brush or can goes over the army. In: the estimate. Out: coats, ml.
import { countSchemes } from '../model/count-schemes.js';
import type { Estimate } from '../model/work.js';

/** Coats of the whole scheme, each on one figure counted once, done or not; the paints of a mix are one coat together. */
export function sumCoats({ jobs }: Estimate): number {
  let sum = 0;
  for (const [lines, units] of countSchemes(jobs)) {
    for (const { coats, mixShare, figures } of lines) sum += coats * mixShare * figures * units;
  }
  return sum;
}

/** Paint that the whole scheme puts out, ml. */
export function sumMl({ needs }: Estimate): number {
  return [...needs.values()].reduce((sum, { wholeMl }) => sum + wholeMl, 0);
}
