// Time: the brush time of a whole army, to compare armies by. In: the estimate, assumptions. Out: minutes.
import type { Assumptions } from '../model/assumption.js';
import { countSchemes } from '../model/count-schemes.js';
import type { Estimate } from '../model/work.js';
import { minutesOfLine } from './minutes-of-coat.js';

/** Likely minutes tool in hand for the whole scheme on every figure, done or not; no setup, no waiting. */
export function sumBrushMinutes({ jobs }: Estimate, assumptions: Assumptions): number {
  let sum = 0;
  for (const [lines, units] of countSchemes(jobs)) {
    for (const line of lines) sum += minutesOfLine(line, assumptions) * line.figures * units;
  }
  return sum;
}
