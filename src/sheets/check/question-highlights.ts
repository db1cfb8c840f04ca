// Checks: highlights that a base coat would cover again. In: checked schemes, zones. Out: a warning at each such row.
import type { OwnZone, Step } from '../../model/sheets.js';
import { solidLayers } from '../../model/words.js';
import { readyMadeZones } from '../../model/zones.js';
import type { CheckedSchemes } from './check-schemes.js';

const highlights: readonly string[] = ['highlight', 'edge highlight'];

/**
 * A highlight is questioned where the same zone gets its base coat in a later step, and no earlier step covers any part
 * of it. Told once for each zone of a scheme.
 */
export function questionHighlights(
  { sheet, schemes, rowOf }: CheckedSchemes,
  zones: readonly OwnZone[],
): void {
  const partsOf = partLookup(zones);
  for (const { steps } of schemes.values()) {
    const told = new Set<string>();
    for (const step of steps) {
      const row = rowOf.get(step);
      const base = highlights.includes(step.layer) ? laterBase(step, steps, partsOf) : undefined;
      if (base === undefined || row === undefined || told.has(step.zone)) continue;
      told.add(step.zone);
      const details = { found: String(step.step), expected: String(base.step) };
      sheet.blame('highlight-before-base', row, 'layer', details);
    }
  }
}

type PartsOf = (zone: string) => ReadonlySet<string>;

function laterBase(light: Step, steps: readonly Step[], partsOf: PartsOf): Step | undefined {
  const parts = partsOf(light.zone);
  const isCovered = steps.some(
    ({ step, layer, zone }) =>
      step <= light.step && solidLayers.includes(layer) && [...partsOf(zone)].some((part) => parts.has(part)),
  );
  if (isCovered) return undefined;
  return steps.find(
    ({ step, layer, zone }) => step > light.step && layer === 'base coat' && zone === light.zone,
  );
}

/** Every part that a zone has on any figure. */
function partLookup(zones: readonly OwnZone[]): PartsOf {
  const found = new Map<string, ReadonlySet<string>>();
  return (zone) => {
    const known = found.get(zone);
    if (known !== undefined) return known;
    const own = zones.filter((one) => one.zone === zone).flatMap(({ parts }) => parts);
    const parts = new Set([...own, ...(readyMadeZones.get(zone) ?? [])].map(({ part }) => part));
    found.set(zone, parts);
    return parts;
  };
}
