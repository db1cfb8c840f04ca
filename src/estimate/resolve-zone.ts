// Estimate: a zone's area on a figure. In: a zone name, a measured figure, the painter's zones, assumptions. Out: parts with
// cm2, and what their shares rest on.

import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { OwnZone } from '../model/sheets.js';
import type { FigureArea } from '../model/work.js';
import { type Part, partsOfZone, shareOf } from '../model/zones.js';

/** A zone on a figure. */
interface CoveredZone {
  /** The area covered of each part, cm2. */
  readonly parts: ReadonlyMap<Part, number>;
  /** Names of the assumptions that say how much of a part is covered. */
  readonly assumed: readonly string[];
}

/**
 * The parts of a figure that a zone covers. The painter's zone for this figure wins over one for any figure. A zone of
 * which the figure has no part, or an unknown one, is empty.
 */
export function resolveZone(
  zone: string,
  { figure, parts }: FigureArea,
  { zones, assumptions }: { readonly zones: readonly OwnZone[]; readonly assumptions: Assumptions },
): CoveredZone {
  const covered = new Map<Part, number>();
  const assumed = new Set<string>();
  for (const one of partsOfZone(zone, figure.figure, zones)) {
    const areaCm2 = parts.get(one.part);
    if (areaCm2 === undefined) continue;
    const share = shareOf(one, (name) => likely(assumptions, name));
    covered.set(one.part, (covered.get(one.part) ?? 0) + areaCm2 * share);
    if ('assumed' in one) assumed.add(one.assumed);
  }
  return { parts: covered, assumed: [...assumed] };
}
