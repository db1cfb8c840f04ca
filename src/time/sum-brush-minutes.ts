// Time: the brush time of a whole army, to compare armies by. In: the estimate, assumptions. Out: minutes.
import type { Assumptions } from '../model/assumption.js';
import type { Estimate } from '../model/work.js';
import { rangeMinutes } from './range-minutes.js';

/** Likely minutes tool in hand for the whole scheme on every figure, done or not; no setup, no waiting. */
export function sumBrushMinutes({ jobs }: Estimate, assumptions: Assumptions): number {
  const counted = [...jobs].map(([job, times]) => ({
    lines: job.lines,
    times: () => job.count * times,
  }));
  return rangeMinutes(counted, assumptions).likely;
}
