// Frontier: who may serve what. In: needs, candidates, shelf and market, a colour difference. Out: servings.
import type { Candidate } from '../../model/frontier.js';
import type { OrderNeed } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import type { Market } from '../open-market.js';
import { measureSupply, type Supply } from '../split-needs.js';

/** Paints that may stand in for a paint, in any order; the paint itself need not be among them. */
export type Candidates = ReadonlyMap<string, readonly Candidate[]>;

/** A need, and all paints that may serve it. */
export interface Serving {
  readonly need: OrderNeed;
  /** Never empty. The paint itself first, at 0, then the others, nearest first. */
  readonly by: readonly Candidate[];
}

/** All that can be had of each paint: usable ml on the shelf and on offer. */
export function measureSources(haveMl: ReadonlyMap<string, number>, market: Market): Supply {
  const sources = new Map(measureSupply(market));
  for (const [paint, ml] of haveMl) sources.set(paint, (sources.get(paint) ?? 0) + ml);
  return sources;
}

/** Who may serve each need within a difference; a paint of which nothing can be had serves only its own need. */
export function listServings(
  needs: readonly OrderNeed[],
  within: { readonly dE00: number; readonly candidates: Candidates },
  sources: Supply,
): Serving[] {
  return needs.map((need) => {
    const others = new Map(
      (within.candidates.get(need.paint) ?? [])
        .filter(({ by, dE00 }) => by !== need.paint && dE00 <= within.dE00 && (sources.get(by) ?? 0) > sameMl)
        .sort((a, b) => b.dE00 - a.dE00 || (a.by < b.by ? 1 : -1))
        .map((other) => [other.by, other] as const),
    );
    return { need, by: [{ by: need.paint, dE00: 0 }, ...[...others.values()].reverse()] };
  });
}

/**
 * For each serving a paint that has room for every need that it might have to serve, so that nothing stands in the way
 * of any other; undefined where there is none. Each need so settled leaves more room for the rest. No paint that is
 * named here can serve a need that is left open.
 */
export function takePlenty(
  servings: readonly Serving[],
  room: ReadonlyMap<string, number>,
): (string | undefined)[] {
  const taken: (string | undefined)[] = servings.map(() => undefined);
  for (let isChanged = true; isChanged; ) {
    const asked = mostAsked(servings, taken);
    isChanged = false;
    for (const [index, { by }] of servings.entries()) {
      if (taken[index] !== undefined) continue;
      const plenty = by.find((one) => (asked.get(one.by) ?? 0) <= (room.get(one.by) ?? 0) + sameMl);
      if (plenty === undefined) continue;
      taken[index] = plenty.by;
      isChanged = true;
    }
  }
  return taken;
}

/** The most that can be asked of each paint: by needs that it serves, and by those still open. */
export function mostAsked(
  servings: readonly Serving[],
  taken: readonly (string | undefined)[] = [],
): Map<string, number> {
  const asked = new Map<string, number>();
  for (const [index, { need, by }] of servings.entries()) {
    const takenBy = taken[index];
    for (const paint of takenBy === undefined ? by.map((one) => one.by) : [takenBy]) {
      asked.set(paint, (asked.get(paint) ?? 0) + need.ml);
    }
  }
  return asked;
}
