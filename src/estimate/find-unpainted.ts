// Estimate: parts that a scheme leaves without a colour. In: a measured figure, steps, zones. Out: their names.

import type { OwnZone, Step } from '../model/sheets.js';
import type { Layer } from '../model/words.js';
import type { FigureArea } from '../model/work.js';
import { type Part, partsOfZone } from '../model/zones.js';

/** Layers that go over everything and give no part a colour of its own. */
const overall: readonly Layer[] = ['primer', 'wash', 'varnish'];

/** The figure's parts that no step but primer, wash and varnish reaches, in the order of the parts. */
export function findUnpainted(area: FigureArea, steps: readonly Step[], zones: readonly OwnZone[]): Part[] {
  const painted = new Set<Part>();
  for (const step of steps.filter(({ layer }) => !overall.includes(layer))) {
    for (const { part } of partsOfZone(step.zone, area.figure.figure, zones)) painted.add(part);
  }
  return [...area.parts.keys()].filter((part) => !painted.has(part));
}
