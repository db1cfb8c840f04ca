// Colours of an invented shelf, and measured figures, for the tests of the colour stage.
import { registry } from '../../src/assumptions/registry.js';
import type { Sight } from '../../src/colour/decide-coats.js';
import { openColours } from '../../src/colour/open-colours.js';
import { measureFigure } from '../../src/estimate/measure-figure.js';
import type { Assumptions } from '../../src/model/assumption.js';
import type { Paint, Sheets } from '../../src/model/sheets.js';
import { makePaint } from '../make-sheets.js';

export const shelf: readonly Paint[] = [
  makePaint({ paint: 'Quay grey', kind: 'primer', hex: '#8d8f8c', opacity: 'strong' }),
  makePaint({ paint: 'Soot black', kind: 'primer', hex: '#1c1c1e', opacity: 'strong' }),
  makePaint({ paint: 'Chalk', kind: 'primer', hex: '#f2f2ee', opacity: 'strong' }),
  makePaint({ paint: 'Peat', hex: '#5b3a26', opacity: 'strong' }),
  makePaint({ paint: 'Oat', hex: '#e3d6b4', opacity: 'fair' }),
  makePaint({ paint: 'Lamp yellow', hex: '#f3c63f', opacity: 'weak' }),
  makePaint({ paint: 'Rowan red', hex: '#c2262e', opacity: 'weak' }),
  makePaint({ paint: 'Foam', hex: '#f4f4f0', opacity: 'weak' }),
  makePaint({ paint: 'Sedge', hex: '#7e9b3a', opacity: 'weak' }),
  makePaint({ paint: 'Harbour blue', hex: '#23395d', opacity: 'fair' }),
  makePaint({ paint: 'Brine steel', kind: 'metallic', hex: '#7b8087', opacity: 'fair' }),
  makePaint({ paint: 'Bog wash', kind: 'wash', hex: '#3b2a1a' }),
  makePaint({ paint: 'Slack medium', kind: 'medium' }),
  makePaint({ paint: 'Silt', kind: 'texture', hex: '#6f6350', opacity: 'strong' }),
  makePaint({ paint: 'Plain', opacity: 'fair' }),
  makePaint({ paint: 'Guess', hex: '#993333' }),
];

/** What the choices of some sheets are made with. */
export async function makeSight(sheets: Sheets, assumptions: Assumptions = registry): Promise<Sight> {
  const areas = [...sheets.figures].map(([name, one]) => [name, measureFigure(one, assumptions)] as const);
  return { areas: new Map(areas), colours: await openColours(sheets.paints.values()), assumptions };
}
