// Frontier: cash against colour. In: whole needs, shelf, who may stand in for whom, market, solver. Out: a choice of
// paints and orders for every difference allowed.
import { differenceBands } from '../../model/colour.js';
import type { FewestPots, Frontier, FrontierChoice, FrontierPoint } from '../../model/frontier.js';
import type { OrderNeed } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import { type Buying, within } from '../choose-counts.js';
import type { Market } from '../open-market.js';
import { sharing } from '../share-time.js';
import type { Supply } from '../split-needs.js';
import { fewestPotsOf, leastCash, nearestWay, type Searching, type Way } from './choose-servings.js';
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

/** Colour differences that are asked for: none, and those that have words. */
const differences = [0, ...Object.values(differenceBands)];

/** A point with what the next ones build on. */
interface Reached {
  readonly dE00: number;
  readonly servings: readonly Serving[];
  readonly way: Way;
  readonly bound: number;
  readonly unmet: readonly OrderNeed[];
}

/** Pairs of a need and an offer that may serve it, in one program: beyond that even its first bound takes minutes. */
const mostPairs = 50_000;

/**
 * For every difference the least cash at which each need is served whole by one paint within it, whose supply is the
 * shelf's and what is bought; first of all, as little unmet as can be. No needs: nothing is bought at any difference.
 * Differences that bring in too many paints to search among are left out, and named.
 */
export async function drawFrontier(drawing: Drawing): Promise<Frontier> {
  const sources = measureSources(drawing.haveMl, drawing.market);
  const asked = { ...drawing, buying: sharing('frontier', drawing.buying), sources };
  const reached: Reached[] = [];
  const isDrawn = openPairCount(asked);
  const drawn = differences.filter((dE00) => dE00 === 0 || isDrawn(dE00));
  for (const dE00 of drawn) reached.push(await reach(dE00, reached.at(-1), asked));
  return {
    points: boundFromLater(reached).map(pointOf),
    notDrawn: differences.slice(drawn.length),
    fewestPots: await findFewestPots(reached.at(-1), asked),
  };
}

interface AskedFrontier extends Drawing {
  readonly sources: Supply;
}

/** Whether the program for a difference is one that can be searched at all. */
function openPairCount({ needs, candidates, sources, market }: AskedFrontier): (dE00: number) => boolean {
  const offersOf = new Map<string, number>();
  for (const { paint } of market.offers.flatMap(({ pots }) => pots))
    offersOf.set(paint, (offersOf.get(paint) ?? 0) + 1);
  const pairsOf = ({ by }: Serving): number =>
    by.reduce((sum, one) => sum + 1 + (offersOf.get(one.by) ?? 0), 0);
  return (dE00) =>
    listServings(needs, { dE00, candidates }, sources).reduce((sum, one) => sum + pairsOf(one), 0) <=
    mostPairs;
}

/** Of the time that the order may take, for each point. */
const shareOfPoint = 0.1;
const shareOfTies = 0.02;
const shareOfPots = 0.03;

async function reach(dE00: number, before: Reached | undefined, asked: AskedFrontier): Promise<Reached> {
  const { needs, candidates, sources, buying } = asked;
  const servings = listServings(needs, { dE00, candidates }, sources);
  if (before !== undefined && isSame(servings, before.servings)) return { ...before, dE00 };
  const split = await splitServings(servings, sources, within(shareOfPoint, buying));
  const searching: Searching = {
    ...asked,
    buying: within(shareOfPoint, buying),
    servings: split.within,
    known: { paints: split.paints, before: before?.way },
  };
  const { way, bound } = await leastCash(searching);
  const { unmet } = split;
  if (before !== undefined && !isGain({ unmet, way }, before)) {
    return { ...before, dE00, servings, bound: Math.min(bound, before.way.totalMinor) };
  }
  const nearest = await nearestWay({ ...searching, buying: within(shareOfTies, buying) }, way, 'cash');
  return { dE00, servings, unmet, bound, way: nearest };
}

/** Where more difference gains nothing, the nearer swaps stay. */
function isGain({ unmet, way }: Pick<Reached, 'unmet' | 'way'>, before: Reached): boolean {
  const lessMl = sumOf(before.unmet) - sumOf(unmet);
  return lessMl > sameMl || (lessMl >= -sameMl && way.totalMinor < before.way.totalMinor);
}

const isSame = (servings: readonly Serving[], before: readonly Serving[]): boolean =>
  servings.every(({ by }, index) => by.length === before[index]?.by.length);

const sumOf = (needs: readonly OrderNeed[]): number => needs.reduce((sum, { ml }) => sum + ml, 0);

/** What can't be beaten within more difference can't be within less, where the same is unmet. */
function boundFromLater(reached: readonly Reached[]): Reached[] {
  const bounded: Reached[] = [];
  for (const one of reached.toReversed()) {
    const [later] = bounded;
    const isAlike = later !== undefined && isSameUnmet(later.unmet, one.unmet);
    bounded.unshift(isAlike ? { ...one, bound: Math.max(one.bound, later.bound) } : one);
  }
  return bounded;
}

const isSameUnmet = (one: readonly OrderNeed[], other: readonly OrderNeed[]): boolean =>
  one.length === other.length &&
  one.every(({ paint, ml }, index) => {
    const needed = other[index];
    return needed?.paint === paint && Math.abs(needed.ml - ml) <= sameMl;
  });

function pointOf({ dE00, way, bound, ...known }: Reached): FrontierPoint {
  return { dE00, ...describe(way, { ...known, aboveBestMinor: Math.max(0, way.totalMinor - bound) }) };
}

interface Described extends Pick<Reached, 'servings' | 'unmet'> {
  readonly aboveBestMinor: number;
}

function describe(
  { totalMinor, bought, paintOf }: Way,
  { servings, unmet, aboveBestMinor }: Described,
): FrontierChoice {
  const pots = [...bought].flatMap(([offer, count]) => offer.pots.map((pot) => pot.count * count));
  const swaps = servings.flatMap(({ need: { paint }, by }) => {
    const chosen = by.find((one) => one.by === paintOf.get(paint));
    return chosen === undefined || chosen.by === paint ? [] : [{ paint, ...chosen }];
  });
  const proved = aboveBestMinor === 0 ? 'proved' : 'not proved';
  return {
    cashMinor: totalMinor,
    pots: pots.reduce((sum, count) => sum + count, 0),
    status: unmet.length > 0 ? "can't be met" : proved,
    aboveBestMinor,
    swaps,
    unmet,
  };
}

async function findFewestPots(last: Reached | undefined, asked: AskedFrontier): Promise<FewestPots> {
  const { needs, candidates, sources, buying } = asked;
  const dE00 = last?.dE00 ?? 0;
  const servings = listServings(needs, { dE00, candidates }, sources);
  const split = await splitServings(servings, sources, within(shareOfPots, buying));
  const searching: Searching = {
    ...asked,
    buying: within(shareOfPots, buying),
    servings: split.within,
    known: { paints: split.paints, before: last?.way },
  };
  const { way, abovePots, ...few } = await fewestPotsOf(searching);
  // Whatever the pots, no way costs less than the least cash.
  const isAlike = last !== undefined && isSameUnmet(last.unmet, split.unmet);
  const overLeast = isAlike ? Math.max(0, way.totalMinor - last.bound) : Number.POSITIVE_INFINITY;
  const aboveBestMinor = Math.min(few.aboveBestMinor, overLeast);
  const ties = { ...searching, buying: within(shareOfTies, buying) };
  const nearest = await nearestWay(ties, way, 'cash and pots');
  return { dE00, abovePots, ...describe(nearest, { servings, unmet: split.unmet, aboveBestMinor }) };
}
