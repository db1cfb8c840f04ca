// Policy: promises from 50 to 95 % and the painter's own, with their orders. In: what all ways share. Out: one way for each.
import { type Buying, besides, within } from '../choose-counts.js';
import { placeOrder } from '../choose-order.js';
import { agreeLevels } from '../promise/agree-levels.js';
import { isManyPots } from '../promise/cut-search.js';
import { asNeeds, type FoundPromise, findPromise, mayFailOf } from '../promise/find-promise.js';
import type { Asked } from '../promise/list-asked.js';
import { countOver } from '../promise/list-steps.js';
import type { OpenPromise } from '../promise/open-promise.js';
import { orderPromise } from '../promise/order-promise.js';
import { ofMany } from '../promise/search-about.js';
import { sharingEqually, sharingInTurn } from '../share-time.js';
import { fillNeeds, isSameAim, type Needs, type Way, type Weighing } from './open-weighing.js';
import { placeChosen } from './place-chosen.js';

/** Promises that stand beside one another. */
const usualLevels = [50, 80, 90, 95];

/** Of the time that an order may take, for one program of a promise that is not the chosen one. */
const shareOfPromise = 0.3;

interface Level {
  readonly aim: { readonly policy: 'sure'; readonly surePercent: number };
  readonly isChosen: boolean;
  readonly buying: Buying;
}

/**
 * The surest first, since its order does for the others too, which start from it, each with what those before it leave. Where paints take
 * many pots a surer order is no start, and all are searched for side by side. What one finds and what bounds it holds for the others.
 */
export async function sureWays(weighing: Weighing): Promise<Way[]> {
  const { open } = weighing;
  const percents = listPercents(weighing);
  const areMany = percents.some((percent) =>
    isManyPots({ ...open, mayFail: mayFailOf(open, percent / 100) }, ofMany),
  );
  const levels = listLevels(percents, areMany ? sharingEqually : sharingInTurn, weighing);
  const found = areMany ? await findSideBySide(levels, open) : await findInTurn(levels, open);
  const agreed = agreeLevels(found, open);
  const ways = levels.map((level, at) => sureWay(level, agreed[at] as FoundPromise, weighing));
  return (await Promise.all(ways)).reverse();
}

const findSideBySide = (levels: readonly Level[], open: OpenPromise): Promise<FoundPromise[]> =>
  Promise.all(levels.map(({ aim, buying }) => findPromise(open, aim.surePercent / 100, buying)));

async function findInTurn(levels: readonly Level[], open: OpenPromise): Promise<FoundPromise[]> {
  const found: FoundPromise[] = [];
  for (const { aim, buying } of levels)
    found.push(await findPromise(open, aim.surePercent / 100, buying, found.at(-1)?.way));
  return found;
}

/** From the surest down. */
function listPercents({ aim: { surePercent } }: Weighing): number[] {
  const own = surePercent === undefined ? [] : [surePercent];
  return [...new Set([...usualLevels, ...own])].sort((a, b) => b - a);
}

function listLevels(
  percents: readonly number[],
  share: typeof sharingInTurn,
  { aim: chosen, searches, buying }: Weighing,
): Level[] {
  const others = share('levels', buying, percents.length);
  return percents.map((surePercent, at) => {
    const aim = { policy: 'sure', surePercent } as const;
    const isChosen = isSameAim(aim, chosen);
    return { aim, isChosen, buying: isChosen ? searches.own : within(shareOfPromise, others[at] as Buying) };
  });
}

async function sureWay(level: Level, found: FoundPromise, weighing: Weighing): Promise<Way> {
  const { open, wanting, lackAt, market } = weighing;
  const { aim, isChosen, buying } = level;
  const share = aim.surePercent / 100;
  const fillUp = (needs: Needs): Needs => fillNeeds(weighing, needs, (one) => lackAt(one, share));
  const order = await orderPromise(found, open, (needs) =>
    isChosen
      ? placeChosen(fillUp(needs), weighing)
      : placeOrder(asNeeds(fillUp(needs)), market, besides(buying)),
  );
  const shareOf = new Map(open.asked.map((one) => [one.paint, shareWithin(one, found.needs)]));
  const wants = wanting.at((paint) => shareOf.get(paint) ?? share, false);
  return { ...aim, needs: fillUp(found.needs), order, wants };
}

/** The quantile at which a promise takes a paint. */
const shareWithin = ({ paint, rising }: Asked, needs: Needs): number =>
  1 - countOver(rising, needs.get(paint) ?? 0) / rising.length;
