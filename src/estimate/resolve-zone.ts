// Estimate: a zone's area on a figure. In: a zone name, the painter's zones, a measured figure. Out: parts with cm2.

import type { OwnZone } from '../model/sheets.js';
import type { FigureArea } from '../model/work.js';
import { type Part, partsOfZone } from '../model/zones.js';

/**
 * The parts of a figure that a zone covers, with the area covered of each in cm2. The painter's zone for this
 * figure wins over one for any figure. A zone of which the figure has no part, or an unknown one, is empty.
 */
export function resolveZone(
  zone: string,
  { figure, parts }: FigureArea,
  ownZones: readonly OwnZone[],
): ReadonlyMap<Part, number> {
  const covered = new Map<Part, number>();
  for (const { part, share } of partsOfZone(zone, figure, ownZones)) {
    const areaCm2 = parts.get(part);
    if (areaCm2 !== undefined) covered.set(part, (covered.get(part) ?? 0) + areaCm2 * share);
  }
  return covered;
}
