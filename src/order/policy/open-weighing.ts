// Policy: what all ways to buy share. In: what the army lacks over the draws, its work by stages, the market. Out: what each of them
// is worked out from, and who may search how long.
import type { Aim } from '../../model/choices.js';
import type { DrawnLack, LackingPaint, StagedWork } from '../../model/draws.js';
import type { Order } from '../../model/order.js';
import { quantileOf } from '../../model/quantiles.js';
import type { Chance } from '../../model/ranges.js';
import { type Buying, besides } from '../choose-counts.js';
import { placeOrder } from '../choose-order.js';
import type { Market } from '../open-market.js';
import { containersOnOffer } from '../price-buying.js';
import { asNeeds } from '../promise/find-promise.js';
import { type OpenPromise, openPromise } from '../promise/open-promise.js';
import { sharing } from '../share-time.js';
import { searchAlone } from '../solver/search-first.js';
import { buyInGoes } from './buy-in-goes.js';
import type { Telling } from './chance-needed.js';
import { listGoods } from './list-goods.js';
import { type OpenWants, openWants, type Wants } from './list-wants.js';
import { openRefill } from './open-refill.js';
import type { Paper } from './paint-on-paper.js';

export interface WeighInputs {
  readonly aim: Aim;
  readonly drawn: DrawnLack;
  readonly work: StagedWork;
  /** Likely need less the shelf, by paint; below 0 where that lasts. */
  readonly likelyMl: ReadonlyMap<string, number>;
  readonly againMinor: number | undefined;
  readonly market: Market;
  readonly buying: Buying;
  /** How often nothing on offer runs out with an order, on draws that it has not seen. */
  readonly metBy: (order: Pick<Order, 'lines'>) => Chance;
}

/** Likely usable ml by paint; below 0: so much more is there. */
export type Needs = ReadonlyMap<string, number>;

/** One way, with its order. */
export interface Way extends Aim {
  readonly needs: Needs;
  readonly order: Order;
  /** What should stand on the shelf as the work goes on. */
  readonly wants: Wants;
  /** Taken as likely, since nothing on offer tells a threshold. */
  readonly asLikely?: readonly string[];
}

/** For the chosen way and its reasons, for the ways without a promise, and for orders on paper. */
type Searches = Record<'own' | 'reasons' | 'beside' | 'paper', Buying>;

/** What is worked out once for all ways. */
export interface Weighing extends WeighInputs, Telling {
  readonly searches: Searches;
  readonly open: OpenPromise;
  readonly goesNeeds: Needs;
  readonly wanting: OpenWants;
  readonly paper: Paper;
  /** What of a paint that no promise asks for is lacking in a share of draws, 0 to 1. */
  readonly lackAt: (paint: LackingPaint, share: number) => number;
}

/** For one order on paper: of drawn markets of 36 paints nine in ten are proved in it. */
const secondsOnPaper = 0.005;

function openSearches(buying: Buying): Searches {
  return {
    own: sharing('order', buying),
    reasons: sharing('reasons', buying),
    beside: besides(sharing('beside', buying)),
    // Our own search alone, which takes what it has found by then.
    paper: { ...sharing('paper', { ...buying, solve: searchAlone }), limits: { seconds: secondsOnPaper } },
  };
}

export async function openWeighing(inputs: WeighInputs): Promise<Weighing> {
  const { drawn, work, market, againMinor, buying } = inputs;
  const searches = openSearches(buying);
  const open = openPromise(drawn, market);
  const wanting = openWants(work, containersOnOffer(market));
  const goesInputs = { asked: open.asked, market, againMinor, floors: wanting.nextMissing() };
  const { needs: goesNeeds, thresholds } = await buyInGoes(goesInputs, async (needs) => {
    const { lines } = await placeOrder(asNeeds(needs), market, searches.beside);
    return lines;
  });
  const names = work.paints.map(({ paint }) => paint);
  const goods = listGoods(names, market);
  const refill = openRefill(goods, searches.paper);
  const paper = { work, goods, refill };
  const lackAt = openLacks(drawn);
  return { ...inputs, ...open, open, searches, wanting, goesNeeds, thresholds, paper, lackAt };
}

function openLacks({ gainOf }: DrawnLack): Weighing['lackAt'] {
  const known = new Map<string, Float64Array>();
  return ({ paint, lackMl, container }, share) => {
    const gain = gainOf(container);
    const ml =
      known.get(paint) ?? (gain === undefined ? lackMl : lackMl.map((one, draw) => one / (gain[draw] ?? 1)));
    known.set(paint, ml);
    return quantileOf(ml, share);
  };
}

/** Every paint that is needed: what a way asks for, else by another rule. */
export const fillNeeds = (
  { drawn }: Weighing,
  needs: Needs,
  otherwise: (paint: LackingPaint) => number,
): Needs => new Map(drawn.paints.map((one) => [one.paint, needs.get(one.paint) ?? otherwise(one)]));

export const isSameAim = (one: Aim, other: Aim): boolean =>
  one.policy === other.policy && one.surePercent === other.surePercent;
