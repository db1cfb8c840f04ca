// Policy: ways to buy, side by side. In: what the army lacks over the draws, its work by stages, the market, which way is chosen. Out: what
// each costs now and in all, and the order of the chosen one.
import type { Aim, Choice } from '../../model/choices.js';
import type { DrawnLack, LackingPaint, StagedWork } from '../../model/draws.js';
import type { Order } from '../../model/order.js';
import { quantileOf } from '../../model/quantiles.js';
import type { Chance } from '../../model/ranges.js';
import { type Buying, besides, within } from '../choose-counts.js';
import { chooseOrder, placeOrder } from '../choose-order.js';
import type { Market } from '../open-market.js';
import { containersOnOffer } from '../price-buying.js';
import { asNeeds, type FoundPromise, findPromise } from '../promise/find-promise.js';
import type { Asked } from '../promise/list-asked.js';
import { countOver } from '../promise/list-steps.js';
import { type OpenPromise, openPromise } from '../promise/open-promise.js';
import { orderPromise } from '../promise/order-promise.js';
import { sharing } from '../share-time.js';
import { searchAlone } from '../solver/search-first.js';
import { buyInGoes } from './buy-in-goes.js';
import { listWaiting, type Telling, tellNeeded } from './chance-needed.js';
import { listGoods } from './list-goods.js';
import { type OpenWants, openWants, type Wants } from './list-wants.js';
import { openRefill } from './open-refill.js';
import { type Paper, paintOnPaper } from './paint-on-paper.js';
import { sumUpPaper } from './sum-up-paper.js';

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

export interface Weighed {
  /** Of the chosen way. */
  readonly order: Order;
  /** What it covers of every paint that is needed, likely usable ml; below 0: so much more is there. */
  readonly toBuyMl: ReadonlyMap<string, number>;
  /** The chosen one among them. */
  readonly choices: readonly Choice[];
}

/** Promises that stand beside one another. */
const usualLevels = [50, 80, 90, 95];

/** Of the time that all ways beside the chosen one may take, for one program of a promise. */
const shareOfPromise = 0.3;

/** For one order on paper: of drawn markets of 36 paints nine in ten are proved in it. */
const secondsOnPaper = 0.005;

/** One way, with its order. */
interface Way extends Aim {
  readonly needs: Needs;
  readonly order: Order;
  /** What should stand on the shelf as the work goes on. */
  readonly wants: Wants;
  /** Taken as likely, since nothing on offer tells a threshold. */
  readonly asLikely?: readonly string[];
}

/** Likely usable ml by paint; below 0: so much more is there. */
type Needs = ReadonlyMap<string, number>;

/** What is worked out once for all ways. */
interface Weighing extends WeighInputs, Telling {
  readonly searches: Searches;
  readonly open: OpenPromise;
  readonly goesNeeds: Needs;
  readonly wanting: OpenWants;
  readonly paper: Paper;
  /** What of a paint that no promise asks for is lacking in a share of draws, 0 to 1. */
  readonly lackAt: (paint: LackingPaint, share: number) => number;
}

/**
 * The likely needs alone, in goes, waiting, and promises from 50 to 95 %: what each orders now, and what follows when the army is
 * painted with it. The chosen one is searched for as long as an order may take, and explained; the others briefly.
 */
export async function weighChoices(inputs: WeighInputs): Promise<Weighed> {
  const weighing = await openWeighing(inputs);
  const ways = [
    await likelyWay(weighing),
    await goesWay(weighing),
    await waitWay(weighing),
    ...(await sureWays(weighing)),
  ];
  const choices: Choice[] = [];
  for (const way of ways) choices.push(await weigh(way, weighing));
  const chosen = ways.find((way) => isSame(way, inputs.aim)) as Way;
  return { order: chosen.order, toBuyMl: chosen.needs, choices };
}

const isSame = (one: Aim, other: Aim): boolean =>
  one.policy === other.policy && one.surePercent === other.surePercent;

/** For the chosen way and its reasons, for promises beside it, for the other ways, and for orders on paper. */
type Searches = Record<'own' | 'reasons' | 'promises' | 'beside' | 'paper', Buying>;

function openSearches(buying: Buying): Searches {
  const { limits } = buying;
  // Our own search alone, which takes what it has found by then.
  const onPaper = sharing('paper', { solve: searchAlone, limits });
  const others = sharing('levels', buying);
  return {
    own: sharing('order', buying),
    reasons: sharing('reasons', buying),
    promises: within(shareOfPromise, others),
    beside: besides(others),
    paper: { ...onPaper, limits: { ...limits, seconds: secondsOnPaper } },
  };
}

async function openWeighing(inputs: WeighInputs): Promise<Weighing> {
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
  const refill = openRefill(names, goods, searches.paper);
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
const fill = ({ drawn }: Weighing, needs: Needs, otherwise: (paint: LackingPaint) => number): Needs =>
  new Map(drawn.paints.map((one) => [one.paint, needs.get(one.paint) ?? otherwise(one)]));

/** The order for some needs: of the chosen way with its reasons, of the others briefly. */
async function place(aim: Aim, needs: Needs, { aim: chosen, market, searches }: Weighing): Promise<Order> {
  const { own, reasons, beside } = searches;
  return isSame(aim, chosen)
    ? chooseOrder(asNeeds(needs), market, own, reasons)
    : placeOrder(asNeeds(needs), market, beside);
}

async function likelyWay(weighing: Weighing): Promise<Way> {
  const aim: Aim = { policy: 'likely' };
  const needs = weighing.likelyMl;
  return { ...aim, needs, order: await place(aim, needs, weighing), wants: weighing.wanting.likely() };
}

/** What nobody sells has no price and no threshold: it is taken as likely. */
async function goesWay(weighing: Weighing): Promise<Way> {
  const { likelyMl, thresholds, lackAt, drawn } = weighing;
  const aim: Aim = { policy: 'goes' };
  const needs = fill(weighing, weighing.goesNeeds, (one) => {
    const threshold = thresholds.get(one.paint);
    return threshold === undefined ? (likelyMl.get(one.paint) ?? 0) : lackAt(one, 1 - threshold);
  });
  const asLikely = drawn.paints.map(({ paint }) => paint).filter((paint) => !thresholds.has(paint));
  return { ...aim, needs, order: await place(aim, needs, weighing), wants: goesWants(weighing), asLikely };
}

const goesWants = ({ wanting, thresholds }: Weighing): Wants =>
  wanting.at((paint) => 1 - (thresholds.get(paint) ?? 0.5), true);

/** Nothing now; once a pot is dry, in goes. */
async function waitWay(weighing: Weighing): Promise<Way> {
  const aim: Aim = { policy: 'wait' };
  return {
    ...aim,
    needs: new Map(),
    order: await place(aim, new Map(), weighing),
    wants: goesWants(weighing),
  };
}

/** The usual promises and the painter's own; from the surest down, since its order does for the others too. */
async function sureWays(weighing: Weighing): Promise<Way[]> {
  const { aim, searches, open } = weighing;
  const own = aim.surePercent === undefined ? [] : [aim.surePercent];
  const levels = [...new Set([...usualLevels, ...own])].sort((a, b) => b - a);
  const ways: Way[] = [];
  let surer: FoundPromise | undefined;
  for (const surePercent of levels) {
    const searching = surePercent === aim.surePercent ? searches.own : searches.promises;
    surer = await findPromise(open, surePercent / 100, searching, surer?.way);
    ways.unshift(await sureWay(surePercent, surer, weighing));
  }
  return ways;
}

async function sureWay(surePercent: number, found: FoundPromise, weighing: Weighing): Promise<Way> {
  const { open, wanting, lackAt } = weighing;
  const aim: Aim = { policy: 'sure', surePercent };
  const fillUp = (needs: Needs): Needs => fill(weighing, needs, (one) => lackAt(one, surePercent / 100));
  const order = await orderPromise(found, open, (needs) => place(aim, fillUp(needs), weighing));
  const shareOf = new Map(open.asked.map((one) => [one.paint, shareWithin(one, found.needs)]));
  const wants = wanting.at((paint) => shareOf.get(paint) ?? surePercent / 100, false);
  return { ...aim, needs: fillUp(found.needs), order, wants };
}

/** The quantile at which a promise takes a paint. */
const shareWithin = ({ paint, rising }: Asked, needs: Needs): number =>
  1 - countOver(rising, needs.get(paint) ?? 0) / rising.length;

async function weigh(
  { policy, surePercent, order, wants, asLikely = [] }: Way,
  weighing: Weighing,
): Promise<Choice> {
  const { paper, metBy } = weighing;
  const painted = await paintOnPaper(paper, { first: order, wants });
  return {
    policy,
    ...(surePercent === undefined ? {} : { surePercent }),
    cashNowMinor: order.totalMinor,
    aboveBestMinor: order.aboveBestMinor,
    lines: tellNeeded(order.lines, weighing),
    bills: order.bills,
    waiting: listWaiting(order.lines, weighing),
    asLikely,
    met: metBy(order),
    follows: sumUpPaper(painted, paper.work.units),
  };
}
