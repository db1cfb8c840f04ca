// Assumptions: how much of a part the ready-made zones cover. Names are `share <zone>`.
import type { Assumption } from '../model/assumption.js';
import { type PartialZone, zoneShareName } from '../model/zones.js';
import { define } from './define-assumption.js';

const shares: Record<PartialZone, readonly [percent: number, of: string]> = {
  face: [50, '% of the head'],
  hair: [50, '% of the head'],
  eyes: [1, '% of the head'],
  trousers: [50, '% of the lower legs'],
  boots: [50, '% of the lower legs'],
  belt: [3, '% of the front and back trunk'],
};

export const zoneAssumptions: readonly Assumption[] = Object.entries(shares).map(([zone, [percent, unit]]) =>
  define(zoneShareName(zone as PartialZone), percent, {
    unit,
    mark: 'from memory',
    source: 'as such zones are mostly sculpted',
  }),
);
