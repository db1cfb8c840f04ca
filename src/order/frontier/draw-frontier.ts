// Frontier: cash against colour. In: whole needs, shelf, who may stand in for whom, market, solver. Out: a choice of
// paints and orders for every difference allowed.
import type { FewestPots, Frontier, FrontierChoice, FrontierPoint } from '../../model/frontier.js';
import type { OrderNeed } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import { type Buying, besides } from '../choose-counts.js';
import type { Market } from '../list-wares.js';
import type { Supply } from '../split-needs.js';
import { fewestPotsOf, leastCash, nearestAtCash, type Searching, type Way } from './choose-servings.js';
import { type Candidates, listServings, measureSources, type Serving } from './list-servings.js';
import { splitServings } from './split-servings.js';

/** What a frontier is drawn from. */
export interface Drawing {
  /** What the army needs of each paint in all, the shelf not taken off; each paint once. */
  readonly needs: readonly OrderNeed[];
  /** Usable ml on the shelf; of a paint left out, none. */
  readonly haveMl: ReadonlyMap<string, number>;
  /** By paint, others of the same kind that are on the shelf or on offer. */
  readonly candidates: Candidates;
  readonly market: Market;
  readonly buying: Buying;
}

/** Colour differences drawn (CIEDE2000): to 10, where two paints are plainly two colours. */
const differences = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];

/** The largest of them. */
export const farthestDrawn = 10;

/** A point with what the next ones build on. */
interface Reached {
  readonly dE00: number;
  readonly servings: readonly Serving[];
  readonly way: Way;
  readonly bound: number;
  readonly unmet: readonly OrderNeed[];
}

/**
 * For every difference the least cash at which each need is served whole by one paint within it, whose supply is the
 * shelf's and what is bought; first of all, as little unmet as can be. No needs: nothing is bought at any difference.
 */
export async function drawFrontier({ buying: whole, ...drawing }: Drawing): Promise<Frontier> {
  const asked = {
    ...drawing,
    buying: besides(whole),
    sources: measureSources(drawing.haveMl, drawing.market),
  };
  const reached: Reached[] = [];
  for (const dE00 of differences) reached.push(await reach(dE00, reached.at(-1), asked));
  const points = boundFromLater(reached).map((one) => pointOf(one, drawing));
  return { points, fewestPots: await findFewestPots(reached.at(-1), asked) };
}

interface AskedFrontier extends Drawing {
  readonly sources: Supply;
}

async function reach(dE00: number, before: Reached | undefined, asked: AskedFrontier): Promise<Reached> {
  const { needs, candidates, sources, buying } = asked;
  const servings = listServings(needs, { dE00, candidates }, sources);
  if (before !== undefined && isSame(servings, before.servings)) return { ...before, dE00 };
  const { within, paints, unmet } = await splitServings(servings, sources, buying);
  const isMore = before !== undefined && sumOf(unmet) > sumOf(before.unmet) - sameMl;
  const searching: Searching = { ...asked, servings: within, known: { paints, before: before?.way } };
  const { way, bound } = await leastCash(searching);
  if (before !== undefined && isMore && way.totalMinor >= before.way.totalMinor) {
    // At no gain the nearer swaps stay.
    return { ...before, dE00, servings, bound: Math.min(bound, before.way.totalMinor) };
  }
  return { dE00, servings, unmet, bound, way: await nearestAtCash(searching, way) };
}

const isSame = (servings: readonly Serving[], before: readonly Serving[]): boolean =>
  servings.every(({ by }, index) => by.length === before[index]?.by.length);

const sumOf = (needs: readonly OrderNeed[]): number => needs.reduce((sum, { ml }) => sum + ml, 0);

/** What can't be beaten within more difference can't be within less, where as much is unmet. */
function boundFromLater(reached: readonly Reached[]): Reached[] {
  const bounded: Reached[] = [];
  for (const one of reached.toReversed()) {
    const later = bounded[0];
    const isAlike = later !== undefined && Math.abs(sumOf(later.unmet) - sumOf(one.unmet)) <= sameMl;
    bounded.unshift(isAlike ? { ...one, bound: Math.max(one.bound, later.bound) } : one);
  }
  return bounded;
}

function pointOf(
  { dE00, way, bound, unmet, servings }: Reached,
  { needs }: Pick<Drawing, 'needs'>,
): FrontierPoint {
  const aboveBestMinor = Math.max(0, way.totalMinor - bound);
  return { dE00, ...describe(way, { servings, unmet, aboveBestMinor, needs }) };
}

function describe(
  { totalMinor, bought, paintOf }: Way,
  known: Pick<Reached, 'servings' | 'unmet'> & { aboveBestMinor: number; needs: readonly OrderNeed[] },
): FrontierChoice {
  const { servings, unmet, aboveBestMinor } = known;
  return {
    cashMinor: totalMinor,
    pots: [...bought].reduce(
      (sum, [{ pots }, count]) => sum + count * pots.reduce((held, pot) => held + pot.count, 0),
      0,
    ),
    status: unmet.length > 0 ? "can't be met" : aboveBestMinor === 0 ? 'proved' : 'not proved',
    aboveBestMinor,
    swaps: servings.flatMap(({ need: { paint }, by }) => {
      const chosen = by.find((one) => one.by === paintOf.get(paint));
      return chosen === undefined || chosen.by === paint ? [] : [{ paint, ...chosen }];
    }),
    unmet,
  };
}

async function findFewestPots(last: Reached | undefined, asked: AskedFrontier): Promise<FewestPots> {
  const { needs, candidates, sources, buying } = asked;
  const dE00 = differences.at(-1) ?? 0;
  const servings = listServings(needs, { dE00, candidates }, sources);
  const { within, paints, unmet } = await splitServings(servings, sources, buying);
  const searching: Searching = { ...asked, servings: within, known: { paints, before: last?.way } };
  const { way, abovePots, aboveBestMinor } = await fewestPotsOf(searching);
  return { dE00, abovePots, ...describe(way, { servings, unmet, aboveBestMinor, needs }) };
}
