// Colour: the swaps that took effect. In: sheets as they were checked, before any swap, and colours. Out: what is used
// instead of what, and where.
import type { SwapTaken } from '../model/colour.js';
import type { Sheets } from '../model/sheets.js';
import { openSwaps } from './apply-swaps.js';
import type { Colours } from './open-colours.js';

/**
 * Every paint of a scheme in use that the swaps sheet replaces, followed to the paint that goes on in the end; steps of
 * one scheme with the same two paints together. In the order of the schemes. Without swaps: none.
 */
export function listSwaps(sheets: Sheets, colours: Pick<Colours, 'distance'>): SwapTaken[] {
  if (sheets.swaps.length === 0) return [];
  const follow = openSwaps(sheets.swaps);
  const taken = new Map<string, Omit<SwapTaken, 'steps'> & { readonly steps: Set<number> }>();
  for (const name of new Set(sheets.army.map(({ scheme }) => scheme))) {
    for (const { step, paints } of sheets.schemes.get(name)?.steps ?? []) {
      for (const { paint } of paints) {
        const by = follow({ scheme: name, step, paint });
        if (by === paint) continue;
        const key = `${name}\n${paint}\n${by}`;
        const dE00 = colours.distance(paint, by);
        const fresh = {
          scheme: name,
          paint,
          by,
          steps: new Set<number>(),
          ...(dE00 !== undefined && { dE00 }),
        };
        const known = taken.get(key) ?? fresh;
        known.steps.add(step);
        taken.set(key, known);
      }
    }
  }
  return [...taken.values()].map(({ steps, ...one }) => ({
    ...one,
    steps: [...steps].sort((a, b) => a - b),
  }));
}
