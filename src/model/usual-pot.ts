// Model: the pot that stands for a paint nobody has a pot of. In: a kind of paint. Out: its usual size and container.
import type { Container, PaintKind } from './words.js';

/** The size of a pot that no sheet names, ml: common practice. */
export const usualPotMl = 17;

/** The size of a can that no sheet names, ml: from memory, the can most sold. */
const usualCanMl = 400;

/** Primer and varnish come in cans, all else in pots. */
export const usualPot = (
  kind: PaintKind | undefined,
): { readonly sizeMl: number; readonly container: Container } =>
  kind === 'primer' || kind === 'varnish'
    ? { sizeMl: usualCanMl, container: 'can' }
    : { sizeMl: usualPotMl, container: 'pot' };
