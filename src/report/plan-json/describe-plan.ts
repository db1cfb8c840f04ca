// Report view: the plan as plan.json tells it. In: the plan and the problems of its sheets. Out: every number, rounded,
// with money as decimal strings. What units share is one object, so that it is written out once.
import { type ExactMinor, exactMinor, toMajor } from '../../model/money.js';
import type { Plan } from '../../model/plan.js';
import type { Problem } from '../../model/problem.js';
import type { PaintStock, ShelfPot } from '../../model/stock.js';
import type { WorkSums } from '../../model/summary.js';
import { describeAim, describeChoices } from './describe-choices.js';
import { describeColour } from './describe-colour.js';
import { describeJobs, describeUnits } from './describe-jobs.js';
import { describeAlike, describeBudget, describeOrder, describeStairs } from './describe-order.js';
import { describeCostRange, describeSure } from './describe-sure.js';
import { describeTime } from './describe-time.js';
import type { PlanDocument } from './plan-document.js';
import { planVersion } from './plan-version.js';
import { roundNumber, useDigits } from './round-number.js';

/** plan.json before its units are spelled out one by one. */
export type PlanDescription = Omit<PlanDocument, 'units'> & {
  readonly units: Iterable<PlanDocument['units'][number]>;
};

/** Describes the whole plan. Keys stand in the order in which the file has them. */
export function describePlan(plan: Plan, problems: readonly Problem[]): PlanDescription {
  const { settings, estimate, order, restock, ranges, summary, cautions, assumptions, defaults, lacking } =
    plan;
  const { draws, ...sure } = describeSure(plan);
  const { currency, locale, surePercent } = settings;
  return {
    version: planVersion,
    date: plan.date,
    currency,
    settings: { locale, surePercent: surePercent ?? null, restock: settings.restock },
    army: {
      figures: plan.figureCount,
      units: estimate.units.length,
      chanceAllLast: roundNumber(ranges.chanceAllLast.chance),
      chanceAllLastError: roundNumber(ranges.chanceAllLast.error),
    },
    lacking,
    shelf: describeShelf(plan),
    draws,
    costs: describeCosts(plan),
    armies: describeArmies(plan),
    money: describeMoney(plan),
    units: describeUnits(plan),
    jobs: describeJobs(plan),
    work: describeWork(plan.summary.work),
    figures: describeFigures(plan),
    paints: plan.stock.map((stock) => describePaint(stock, plan)),
    ...sure,
    order: { ...describeAim(plan.aim), ...describeOrder(order, currency) },
    choices: describeChoices(plan.choices, currency),
    withoutShop: summary.order.alike.map((pot) => describeAlike(pot, currency)),
    restock: restock === undefined ? null : describeOrder(restock, currency),
    stairs: describeStairs(plan.stairs, currency),
    budget: describeBudget(plan.budget, currency),
    ...describeColour(plan),
    time: describeTime(plan.time),
    cautions,
    problems,
    defaults,
    read: plan.read,
    assumptions,
  };
}

function describeShelf({ summary: { shelf }, settings: { currency } }: Plan): PlanDocument['shelf'] {
  const { pots, paints, haveMl, worth, unpriced } = shelf;
  const value = toMajor(worth.exactMinor, currency, useDigits);
  return { pots, paints, haveMl: roundNumber(haveMl), worth: value, atLeast: worth.atLeast, unpriced };
}

function describeCosts({ costs, ranges, settings: { currency } }: Plan): PlanDocument['costs'] {
  const use = (amount: ExactMinor) => toMajor(amount, currency, useDigits);
  const whole = describeCostRange(ranges.useWhole, currency);
  const remaining = describeCostRange(ranges.useRemaining, currency);
  return {
    use: use(costs.useWhole.exactMinor),
    useLow: whole.low,
    useHigh: whole.high,
    useAtLeast: costs.useWhole.atLeast,
    useRemaining: use(costs.useRemaining.exactMinor),
    useRemainingLow: remaining.low,
    useRemainingHigh: remaining.high,
    remainingAtLeast: costs.useRemaining.atLeast,
    extras: use(costs.extrasWhole.exactMinor),
    cash: toMajor(costs.cashMinor, currency),
    restockCash: toMajor(costs.restockCashMinor, currency),
    figuresPrice: toMajor(costs.figuresPrice.exactMinor, currency),
    figuresPriceAtLeast: costs.figuresPrice.atLeast,
    unpriced: costs.unpriced,
    zones: [...costs.zones].map(([zone, { exactMinor, atLeast }]) => ({
      zone,
      useCost: use(exactMinor),
      atLeast,
    })),
    layers: [...costs.layers].map(([layer, { exactMinor, atLeast }]) => ({
      layer,
      useCost: use(exactMinor),
      atLeast,
    })),
  };
}

function describeMoney({ money, summary, settings: { currency } }: Plan): PlanDocument['money'] {
  const worth = (amount: ExactMinor) => toMajor(amount, currency, useDigits);
  const { done } = summary.costs.army;
  return {
    spent: money.spent.map(({ month, shop, minor }) => ({ month, shop, cash: toMajor(minor, currency) })),
    begunWith: worth(money.begunWith),
    bought: toMajor(money.boughtMinor, currency),
    standing: worth(money.standing),
    onTheWay: worth(money.onWay),
    used: worth(money.used),
    usedByEstimate: worth(done.exactMinor),
    usedByEstimateAtLeast: done.atLeast,
    finishedFigures: summary.money.finished.map(({ estimated, really, ...figure }) => ({
      ...figure,
      estimated: worth(estimated.exactMinor),
      really: worth(really.exactMinor),
      atLeast: really.atLeast,
    })),
    unpricedPots: money.unpricedPots,
  };
}

function describeArmies({ summary, settings: { currency } }: Plan): PlanDocument['armies'] {
  return summary.armies.map(({ cashMinor, whole, remaining, ...army }) => ({
    ...army,
    cash: toMajor(cashMinor, currency),
    use: toMajor(whole.exactMinor, currency, useDigits),
    useAtLeast: whole.atLeast,
    useRemaining: toMajor(remaining.exactMinor, currency, useDigits),
  }));
}

function describeWork({ wholeMl, remainingMl, zones, paints }: WorkSums): PlanDocument['work'] {
  return {
    putOutMl: roundNumber(wholeMl),
    putOutRemainingMl: roundNumber(remainingMl),
    zones: zones.map(({ zone, remainingMl: ml, layersMl }) => ({
      zone,
      putOutMl: roundNumber(ml),
      layers: Object.fromEntries([...layersMl].map(([layer, of]) => [layer, roundNumber(of)])),
    })),
    paints: [...paints].map(([paint, of]) => ({
      paint,
      putOutMl: roundNumber(of.wholeMl),
      putOutRemainingMl: roundNumber(of.remainingMl),
      onFigureMl: roundNumber(of.onFigureMl),
      lostMl: roundNumber(of.lostMl),
      leftoverMl: roundNumber(of.leftoverMl),
      mark: of.trust.mark,
      biggestDoubt: of.trust.biggestDoubt,
    })),
  };
}

function describeFigures({ estimate }: Plan): PlanDocument['figures'] {
  return [...estimate.figures.values()].map((area) => ({
    figure: area.figure.figure,
    wholeCm2: roundNumber(area.wholeCm2),
    withBaseCm2: roundNumber(area.withBaseCm2),
    parts: Object.fromEntries([...area.parts].map(([part, cm2]) => [part, roundNumber(cm2)])),
    mark: area.mark,
    biggestDoubt: area.biggestDoubt,
  }));
}

function describePaint(stock: PaintStock, plan: Plan): PlanDocument['paints'][number] {
  const { currency } = plan.settings;
  const price = plan.costs.paints.get(stock.paint);
  const range = plan.ranges.paints.get(stock.paint);
  const reach = plan.summary.lasting.reach.get(stock.paint);
  const cost = (amount: ExactMinor) => toMajor(amount, currency, useDigits);
  const useCost = price?.useCost.exactMinor ?? exactMinor(0);
  const { low = 0, high = 0 } = range?.needMl ?? {};
  const costOf = (ml: number) => cost(stock.needMl > 0 ? useCost.times(ml).div(stock.needMl) : exactMinor(0));
  return {
    paint: stock.paint,
    needMl: { low: roundNumber(low), likely: roundNumber(stock.needMl), high: roundNumber(high) },
    haveMl: roundNumber(stock.haveMl),
    // A paint that the army does not need is not drawn.
    haveLowMl: roundNumber(range?.haveMl.low ?? stock.haveMl),
    haveHighMl: roundNumber(range?.haveMl.high ?? stock.haveMl),
    orderedMl: roundNumber(stock.orderedMl),
    isEstimated: stock.unmeasured !== undefined,
    leftAfterMl: roundNumber(stock.leftAfterMl),
    toBuyMl: roundNumber(stock.toBuyMl),
    keepMl: roundNumber(stock.keepMl),
    state: stock.state,
    runningLow: stock.runningLow,
    chanceShort: roundNumber(range?.chanceShort.chance ?? 0),
    chanceShortError: roundNumber(range?.chanceShort.error ?? 0),
    lasts: { likely: reach?.likely ?? null, low: reach?.low ?? null },
    doubts: (range?.doubts ?? []).map(({ name, share }) => ({ name, share: roundNumber(share) })),
    pricePerMl: price?.perMl === undefined ? null : cost(price.perMl),
    useCost: cost(useCost),
    useCostLow: costOf(low),
    useCostHigh: costOf(high),
    atLeast: price?.useCost.atLeast ?? false,
    mark: stock.mark,
    pots: stock.pots.map((pot) => describePot(pot, currency)),
  };
}

function describePot(pot: ShelfPot, currency: string): PlanDocument['paints'][number]['pots'][number] {
  return {
    sheet: pot.fromLog ? 'log' : 'pots',
    row: pot.row,
    sizeMl: pot.sizeMl,
    container: pot.container,
    usableMl: roundNumber(pot.usableMl),
    price: pot.priceMinor === undefined ? null : toMajor(pot.priceMinor, currency),
    ordered: pot.ordered,
    mark: pot.mark,
  };
}
