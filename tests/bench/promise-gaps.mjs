// Bench: how far above the best the promises of a plan may lie. In: its folder. Out: per cents.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Of each promise, surest last, how far above the best it may lie, in per cent of that; where no bound is known, that. */
export function promiseGaps(out) {
  const { choices } = JSON.parse(readFileSync(join(out, 'plan.json'), 'utf8'));
  return choices
    .filter(({ sure }) => sure !== null)
    .map(({ cashNow, aboveBest }) =>
      Number(aboveBest) < Number(cashNow)
        ? ((100 * aboveBest) / (cashNow - aboveBest)).toFixed(1)
        : 'no bound',
    );
}
