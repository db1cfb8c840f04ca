// Policy: ways to buy, side by side. In: what the army lacks over the draws, its work by stages, the market, which way is chosen. Out: the
// order of the chosen one; then what each costs now and in all.
import type { Aim, Choice } from '../../model/choices.js';
import type { Order } from '../../model/order.js';
import { placeOrder } from '../choose-order.js';
import { asNeeds } from '../promise/find-promise.js';
import { listWaiting, tellNeeded } from './chance-needed.js';
import type { Wants } from './list-wants.js';
import {
  fillNeeds,
  isSameAim,
  type Needs,
  openWeighing,
  type Way,
  type WeighInputs,
  type Weighing,
} from './open-weighing.js';
import { paintOnPaper } from './paint-on-paper.js';
import { placeChosen } from './place-chosen.js';
import { sumUpPaper } from './sum-up-paper.js';
import { sureWays } from './sure-ways.js';

export interface Chosen {
  readonly order: Order;
  /** What it covers of every paint that is needed, likely usable ml; below 0: so much more is there. */
  readonly toBuyMl: ReadonlyMap<string, number>;
  /** All ways, the chosen one among them. */
  readonly weighAll: () => Promise<readonly Choice[]>;
}

/** The order of the chosen way, searched for as long as an order may take, and explained. */
export async function chooseWay(inputs: WeighInputs): Promise<Chosen> {
  const weighing = await openWeighing(inputs);
  const { aim } = inputs;
  const sure = aim.policy === 'sure' ? await sureWays(weighing) : [];
  const ways = aim.policy === 'sure' ? sure : [await ofPolicy[aim.policy](weighing)];
  const { order, needs } = ways.find((way) => isSameAim(way, aim)) as Way;
  return { order, toBuyMl: needs, weighAll: () => weighAll(ways, weighing) };
}

/** Ways without a promise. */
const ofPolicy = { likely: likelyWay, goes: goesWay, wait: waitWay };
const policies = ['likely', 'goes', 'wait'] as const;

/**
 * The likely needs alone, in goes, waiting, and promises from 50 to 95 %: what each orders now, and what follows when the army is
 * painted with it. Promises are searched for while the others are painted on paper.
 */
async function weighAll(known: readonly Way[], weighing: Weighing): Promise<Choice[]> {
  const isSure = weighing.aim.policy === 'sure';
  const weighOthers = async (): Promise<Choice[]> => {
    const choices: Choice[] = [];
    for (const policy of policies) {
      const way = known.find((one) => one.policy === policy) ?? (await ofPolicy[policy](weighing));
      choices.push(await weigh(way, weighing));
    }
    return choices;
  };
  const [choices, sure] = await Promise.all([weighOthers(), isSure ? known : sureWays(weighing)]);
  for (const way of sure) choices.push(await weigh(way, weighing));
  return choices;
}

/** The order for some needs: of the chosen way with its reasons, of the others briefly. */
const place = (policy: Aim['policy'], needs: Needs, weighing: Weighing): Promise<Order> =>
  policy === weighing.aim.policy
    ? placeChosen(needs, weighing)
    : placeOrder(asNeeds(needs), weighing.market, weighing.searches.beside);

async function likelyWay(weighing: Weighing): Promise<Way> {
  const needs = weighing.likelyMl;
  const order = await place('likely', needs, weighing);
  return { policy: 'likely', needs, order, wants: weighing.wanting.likely() };
}

/** What nobody sells has no price and no threshold: it is taken as likely. */
async function goesWay(weighing: Weighing): Promise<Way> {
  const { likelyMl, thresholds, lackAt, drawn } = weighing;
  const needs = fillNeeds(weighing, weighing.goesNeeds, (one) => {
    const threshold = thresholds.get(one.paint);
    return threshold === undefined ? (likelyMl.get(one.paint) ?? 0) : lackAt(one, 1 - threshold);
  });
  const asLikely = drawn.paints.map(({ paint }) => paint).filter((paint) => !thresholds.has(paint));
  const order = await place('goes', needs, weighing);
  return { policy: 'goes', needs, order, wants: goesWants(weighing), asLikely };
}

const goesWants = ({ wanting, thresholds }: Weighing): Wants =>
  wanting.at((paint) => 1 - (thresholds.get(paint) ?? 0.5), true);

/** Nothing now; once a pot is dry, in goes. */
async function waitWay(weighing: Weighing): Promise<Way> {
  const needs: Needs = new Map();
  return { policy: 'wait', needs, order: await place('wait', needs, weighing), wants: goesWants(weighing) };
}

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
