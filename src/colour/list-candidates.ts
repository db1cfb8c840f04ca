// Colour: which paints may serve which needs. In: needed paints, paints that can be had, colours. Out: for each need the
// others of its kind in reach.
import type { Candidate } from '../model/frontier.js';
import type { Palette } from './cover-beneath.js';
import { nearByKind } from './near-by-kind.js';

/** Which needs, and what may serve them. */
export interface Reach {
  readonly needed: Iterable<string>;
  /** On the shelf or on offer. */
  readonly atHand: Iterable<string>;
  /** CIEDE2000. */
  readonly limit: number;
}

/**
 * For each need the paints at hand of the same kind within a colour difference, nearest first, itself left out. Needs
 * without any, or without a colour, are left out: what can't be compared is not swapped.
 */
export function listCandidates({ needed, atHand, limit }: Reach, palette: Palette): Map<string, Candidate[]> {
  const near = nearByKind(atHand, palette);
  const candidates = new Map<string, Candidate[]>();
  for (const paint of needed) {
    const [found, lab] = [palette.paints.get(paint), palette.colours.labOf(paint)];
    const inReach = found && lab ? (near.get(found.kind)?.(lab, limit) ?? []) : [];
    const others = inReach.filter((one) => one.paint !== paint).map(({ paint: by, dE00 }) => ({ by, dE00 }));
    if (others.length > 0) candidates.set(paint, others);
  }
  return candidates;
}
