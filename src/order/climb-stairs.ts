// Order: cash against number of figures. In: needs beyond the shelf for n figures, market, solver. Out: steps.
import { at } from '../model/at.js';
import { lastWhere } from '../model/last-where.js';
import type { OrderNeed, Stair, Stairs } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import { type Buying, besides, cheapestCounts } from './choose-counts.js';
import { findHolders, heldMl } from './list-wares.js';
import type { Market } from './open-market.js';
import { sharing } from './share-time.js';
import { measureSupply, splitNeeds } from './split-needs.js';
import type { Chosen } from './write-order.js';

/** Steps drawn at the most, but for the one right after the army; past three quarters of them the staircase takes strides that reach the end, and says so. */
const mostSteps = 24;

/** Among so many figures a single pot no longer shows, and steps that can't be proved take long: fewer, in strides. */
const manyFigures = 5000;
const fewSteps = 12;

/** What a climb needs to know. */
export interface Climb {
  /** To be bought for the first so many figures. */
  readonly toBuyAt: (figures: number) => readonly OrderNeed[];
  readonly figures: number;
  readonly market: Market;
  readonly buying: Buying;
}

/**
 * The least cash for every number of figures from none to twice the army. An order stays the cheapest for as many
 * figures as it covers, since more figures never cost less; the next step comes with the first one that it does not
 * cover, named by the paints that run out there. What comes right after the army is a step of its own however crowded they are.
 * Without figures there are no steps.
 */
export async function climbStairs({ toBuyAt, figures, market, buying }: Climb): Promise<Stairs> {
  const most = 2 * figures;
  const supply = measureSupply(market);
  const withinAt = (count: number): readonly OrderNeed[] => splitNeeds(toBuyAt(count), supply).within;
  const asking = besides(sharing('stairs', buying));
  const ask = (count: number): Promise<Chosen> => cheapestCounts(withinAt(count), market, asking);
  // The army and one figure more come first, while there is time.
  const known = new Map<number, Chosen>();
  for (const count of figures === 0 ? [] : [figures, figures + 1]) known.set(count, await ask(count));
  const steps: Stair[] = [];
  let missingAt = (_count: number): string[] => [];
  let everyStep = true;
  let isCoarse = figures > manyFigures;
  for (let at = figures === 0 ? 1 : 0; at <= most; ) {
    const chosen = known.get(at) ?? (await ask(at));
    steps.push({
      figures: at,
      cashMinor: chosen.totalMinor,
      because: missingAt(at),
      proved: chosen.aboveBestMinor === 0,
    });
    const holders = findHolders(chosen.wares);
    missingAt = (count) => uncovered(withinAt(count), (paint) => heldOf(holders, paint, chosen));
    const next = 1 + lastWhere(at, most, (count) => missingAt(count).length === 0);
    isCoarse ||= chosen.aboveBestMinor > 0;
    const stepsLeft = Math.max(1, (isCoarse ? fewSteps : mostSteps) - steps.length);
    const widest = at + Math.ceil((most - at) / stepsLeft);
    const isCrowded = (isCoarse || steps.length > 0.75 * mostSteps) && next < widest && at !== figures;
    everyStep &&= !isCrowded;
    // The army's own size is never strode over: there the staircase meets the order.
    const stride = at < figures ? Math.min(widest, Math.max(next, figures)) : widest;
    at = isCrowded ? stride : next;
  }
  return { steps: lowerToLater(steps), mostFigures: most, everyStep };
}

/** An order for more figures also does for fewer: a step that was not proved costs no more than any after it. */
function lowerToLater(steps: readonly Stair[]): Stair[] {
  let least = Number.POSITIVE_INFINITY;
  const lowered = steps.toReversed().map((step) => {
    least = Math.min(least, step.cashMinor);
    return { ...step, cashMinor: least };
  });
  return lowered.toReversed();
}

const heldOf = (holders: ReturnType<typeof findHolders>, paint: string, { counts }: Chosen): number =>
  heldMl(holders, paint, (column) => at(counts, column));

/** Paints of which an order does not hold enough. */
function uncovered(needs: readonly OrderNeed[], held: (paint: string) => number): string[] {
  return needs.filter(({ paint, ml }) => ml - held(paint) > sameMl).map(({ paint }) => paint);
}
