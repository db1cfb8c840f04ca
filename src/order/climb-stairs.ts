// Order: cash against number of figures. In: needs beyond the shelf for n figures, market, solver. Out: steps.
import type { OrderNeed, Stair, Stairs } from '../model/plan.js';
import { type Buying, cheapestCounts } from './choose-counts.js';
import { splitNeeds } from './choose-order.js';
import type { Market } from './list-wares.js';
import type { Chosen } from './write-order.js';

/** Steps drawn at the most; past them the staircase takes wider strides and says so. */
const mostSteps = 60;

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
 * cover, named by the paints that run out there. Without figures there are no steps.
 */
export async function climbStairs({ toBuyAt, figures, market, buying }: Climb): Promise<Stairs> {
  const most = 2 * figures;
  const stride = Math.ceil(most / mostSteps);
  const steps: Stair[] = [];
  let at = figures === 0 ? 1 : 0;
  let before: Chosen | undefined;
  let strode = false;
  while (at <= most) {
    const { within } = splitNeeds(toBuyAt(at), market);
    const chosen = await cheapestCounts(within, market, buying);
    steps.push({
      figures: at,
      cashMinor: Math.max(chosen.totalMinor, steps.at(-1)?.cashMinor ?? 0),
      because: before === undefined ? [] : uncovered(within, before),
      proved: chosen.aboveBestMinor === 0,
    });
    before = chosen;
    const next =
      1 + lastCovered(at, most, (n) => uncovered(splitNeeds(toBuyAt(n), market).within, chosen).length === 0);
    const isCrowded = steps.length > mostSteps / 2 && next < at + stride;
    strode ||= isCrowded;
    at = isCrowded ? at + stride : next;
  }
  return { steps, mostFigures: most, everyStep: !strode };
}

/** Paints of which an order does not hold enough. */
function uncovered(needs: readonly OrderNeed[], { wares, counts }: Chosen): string[] {
  return needs
    .filter(({ paint, ml }) => {
      const got = wares.reduce(
        (sum, { mlOf }, index) => sum + (counts[index] ?? 0) * (mlOf.get(paint) ?? 0),
        0,
      );
      return ml - got > 1e-6;
    })
    .map(({ paint }) => paint);
}

/** The last number from `low` to `high` that is covered, where `low` is and no number past an uncovered one is. */
function lastCovered(low: number, high: number, isCovered: (figures: number) => boolean): number {
  let [from, to] = [low, high];
  while (from < to) {
    const middle = Math.ceil((from + to) / 2);
    if (isCovered(middle)) from = middle;
    else to = middle - 1;
  }
  return from;
}

/** The least cash for a number of figures: the last step at or below it. */
export function cashAt({ steps }: Stairs, figures: number): number {
  return steps.findLast((step) => step.figures <= figures)?.cashMinor ?? 0;
}
