// Colour: what stands on the shelf. In: pots. Out: names of the paints in them.
import { holdsPaint } from '../model/holds-paint.js';
import type { Pot } from '../model/sheets.js';

/** Paints with a pot that is not empty, in the order of the pots. A pot on its way counts. */
export function listOwned(pots: readonly Pot[]): string[] {
  return [...new Set(pots.filter(holdsPaint).map(({ paint }) => paint))];
}
