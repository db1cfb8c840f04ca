// Coats of one hex over another, through the whole choice: a primed figure with one more step.
import { decideCoats } from '../../src/colour/decide-coats.js';
import type { Layer, Opacity, PaintKind } from '../../src/model/words.js';
import { makePaint, makeSheets, makeStep } from '../make-sheets.js';
import { makeSight } from './make-sight.js';

export interface CoatTrial {
  readonly over: string;
  readonly under: string;
  readonly opacity: Opacity;
  readonly thin?: number;
  readonly kind?: PaintKind;
  readonly layer?: Layer;
}

export async function countOver({ over, under, layer = 'base coat', ...more }: CoatTrial) {
  const paints = [
    makePaint({ paint: 'Over', hex: over, ...more }),
    makePaint({ paint: 'Under', hex: under }),
  ];
  const step = makeStep({ step: 2, paint: 'Over', layer });
  const steps = [makeStep({ step: 1, zone: 'all', layer: 'primer', paint: 'Under' }), step];
  const sheets = makeSheets({ paints, steps });
  return decideCoats(sheets, await makeSight(sheets))
    .get(step)
    ?.get('guard')?.coats;
}
