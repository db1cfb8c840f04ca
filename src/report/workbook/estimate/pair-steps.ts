// Report view: what the scheme itself says of each line. In: lines of a job, the steps of its scheme. Out: a step a line.

import type { Step } from '../../../model/sheets.js';
import type { Line } from '../../../model/work.js';

/**
 * The step that each line comes from. Lines stand in the order of the steps; a step gives all lines of its mix, the shares
 * of which come to 1, or none where the figure has no part of its zone. Which paints they are plays no part: swaps may
 * have changed them. A line without a step throws, which only a mistake in the code can cause.
 */
export function pairSteps(lines: readonly Line[], steps: readonly Step[]): Step[] {
  const paired: Step[] = [];
  let at = 0;
  for (const step of steps) {
    for (let share = 0; share < almostWhole && isOf(lines[at], step); at++) {
      share += lines[at]?.mixShare ?? 1;
      paired.push(step);
    }
  }
  if (paired.length < lines.length) throw new Error('a line has no step in its scheme');
  return paired;
}

/** Rounded shares may add up to a hair less than 1. */
const almostWhole = 1 - 1e-6;

const isOf = (line: Line | undefined, { step, zone, layer }: Step): boolean =>
  line !== undefined && line.step === step && line.zone === zone && line.layer === layer;
