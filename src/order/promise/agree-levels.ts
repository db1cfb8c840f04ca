// Promise: promises side by side. In: what was found for each, the surest first. Out: the same, agreed with one another.

import { leastNeeds } from './common-needs.js';
import type { FoundPromise } from './find-promise.js';
import { isCheaper } from './note-found.js';
import type { OpenPromise } from './open-promise.js';

/** An order that keeps a promise keeps all that are less sure; what no order for one of these undercuts, none for a surer one does. */
export function agreeLevels(found: readonly FoundPromise[], { asked }: OpenPromise): FoundPromise[] {
  const lowered: FoundPromise[] = [];
  for (const one of found) {
    const surer = lowered.at(-1)?.way;
    const isLower = surer !== undefined && isCheaper(surer, one.way);
    lowered.push(isLower ? { ...one, way: surer, needs: leastNeeds(surer, asked, one.mayFail) } : one);
  }
  let leastMinor = 0;
  const bounded = lowered.toReversed().map((one) => {
    leastMinor = Math.max(leastMinor, one.leastMinor);
    return { ...one, leastMinor };
  });
  return bounded.toReversed();
}
