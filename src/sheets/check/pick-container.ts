// Checks: what a blank container means. In: size, kind of paint. Out: a container.
import type { Container, PaintKind } from '../../model/words.js';

/** Primer and varnish of this volume or more come in cans. */
export const canFromMl = 150;

/** A can for a primer or varnish of that much, else a pot. */
export function pickContainer(sizeMl: number, kind: PaintKind | undefined): Container {
  return (kind === 'primer' || kind === 'varnish') && sizeMl >= canFromMl ? 'can' : 'pot';
}
