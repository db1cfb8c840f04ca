// Report view: the plan as plan.json tells it. In: the plan and the problems of its sheets. Out: every number, rounded,
// with money as decimal strings. What units share is one object, so that it is written out once.
import { exactMinor } from '../../model/money.js';
import type { Plan } from '../../model/plan.js';
import type { Problem } from '../../model/problem.js';
import type { PaintStock, ShelfPot } from '../../model/stock.js';
import type { WorkSums } from '../../model/summary.js';
import { describeAim, describeChoice } from './describe-choices.js';
import { describeColour } from './describe-colour.js';
import { describeJobs, describeUnits } from './describe-jobs.js';
import { describeAlike, describeBudget, describeOrder, describeStairs } from './describe-order.js';
import { describeCostRange, describeSure } from './describe-sure.js';
import { describeTime } from './describe-time.js';
import type { PlanDocument } from './plan-document.js';
import { planVersion } from './plan-version.js';
import { describeChance, type Money, moneyIn, roundNumber, roundNumbers } from './write-values.js';

/** plan.json before its units are spelled out one by one. */
export type PlanDescription = Omit<PlanDocument, 'units'> & {
  readonly units: Iterable<PlanDocument['units'][number]>;
};

/** Describes the whole plan. Keys stand in the order in which the file has them. */
export function describePlan(plan: Plan, problems: readonly Problem[]): PlanDescription {
  const { date, settings, estimate, ranges, summary, cautions, read, assumptions, defaults, lacking } = plan;
  const { currency, locale, surePercent, restock } = settings;
  const money = moneyIn(currency);
  const { draws, ...sure } = describeSure(plan, money);
  return {
    ...{ version: planVersion, date, currency },
    settings: { locale, surePercent: surePercent ?? null, restock },
    army: {
      figures: plan.figureCount,
      units: estimate.units.length,
      ...describeChance('chanceAllLast', ranges.chanceAllLast),
    },
    lacking,
    shelf: describeShelf(plan, money),
    draws,
    costs: describeCosts(plan, money),
    armies: describeArmies(plan, money),
    money: describeMoney(plan, money),
    units: describeUnits(plan, money),
    jobs: describeJobs(plan, money),
    work: describeWork(summary.work),
    figures: describeFigures(plan),
    paints: plan.stock.map((stock) => describePaint(stock, plan, money)),
    ...sure,
    order: { ...describeAim(plan.aim), ...describeOrder(plan.order, money) },
    choices: plan.choices.map((choice) => describeChoice(choice, money)),
    withoutShop: summary.order.alike.map((pot) => describeAlike(pot, money)),
    restock: plan.restock === undefined ? null : describeOrder(plan.restock, money),
    stairs: describeStairs(plan.stairs, money),
    budget: plan.budget === undefined ? null : describeBudget(plan.budget, money),
    ...describeColour(plan, money),
    time: describeTime(plan.time),
    ...{ cautions, problems, defaults, read, assumptions },
  };
}

function describeShelf({ summary }: Plan, { cost }: Money): PlanDocument['shelf'] {
  const { pots, paints, haveMl, worth, unpriced } = summary.shelf;
  const { exactMinor: exact, atLeast } = worth;
  return roundNumbers({ pots, paints, haveMl, worth: cost(exact), atLeast, unpriced });
}

function describeCosts({ costs, ranges }: Plan, money: Money): PlanDocument['costs'] {
  const { cash, cost, useCost } = money;
  const whole = describeCostRange(ranges.useWhole, money);
  const remaining = describeCostRange(ranges.useRemaining, money);
  return {
    use: cost(costs.useWhole.exactMinor),
    ...{ useLow: whole.low, useHigh: whole.high, useAtLeast: costs.useWhole.atLeast },
    useRemaining: cost(costs.useRemaining.exactMinor),
    ...{ useRemainingLow: remaining.low, useRemainingHigh: remaining.high },
    remainingAtLeast: costs.useRemaining.atLeast,
    extras: cost(costs.extrasWhole.exactMinor),
    cash: cash(costs.cashMinor),
    restockCash: cash(costs.restockCashMinor),
    figuresPrice: cash(costs.figuresPrice.exactMinor),
    figuresPriceAtLeast: costs.figuresPrice.atLeast,
    unpriced: costs.unpriced,
    zones: [...costs.zones].map(([zone, amount]) => ({ zone, ...useCost(amount) })),
    layers: [...costs.layers].map(([layer, amount]) => ({ layer, ...useCost(amount) })),
  };
}

function describeMoney({ money, summary }: Plan, { cash, cost }: Money): PlanDocument['money'] {
  const { done } = summary.costs.army;
  return {
    spent: money.spent.map(({ month, shop, minor }) => ({ month, shop, cash: cash(minor) })),
    begunWith: cost(money.begunWith),
    bought: cash(money.boughtMinor),
    standing: cost(money.standing),
    onTheWay: cost(money.onWay),
    used: cost(money.used),
    usedByEstimate: cost(done.exactMinor),
    usedByEstimateAtLeast: done.atLeast,
    finishedFigures: summary.money.finished.map(({ estimated, really, ...figure }) => ({
      ...figure,
      estimated: cost(estimated.exactMinor),
      really: cost(really.exactMinor),
      atLeast: really.atLeast,
    })),
    unpricedPots: money.unpricedPots,
  };
}

const describeArmies = ({ summary }: Plan, { cash, cost }: Money): PlanDocument['armies'] =>
  summary.armies.map(({ cashMinor, whole, remaining, ...army }) => ({
    ...army,
    cash: cash(cashMinor),
    ...{ use: cost(whole.exactMinor), useAtLeast: whole.atLeast, useRemaining: cost(remaining.exactMinor) },
  }));

const describeWork = ({ wholeMl, remainingMl, zones, paints }: WorkSums): PlanDocument['work'] => ({
  ...roundNumbers({ putOutMl: wholeMl, putOutRemainingMl: remainingMl }),
  zones: zones.map(({ zone, remainingMl: ml, layersMl }) => ({
    ...roundNumbers({ zone, putOutMl: ml }),
    layers: roundNumbers(Object.fromEntries(layersMl)),
  })),
  paints: [...paints].map(([paint, { trust, onFigureMl, lostMl, leftoverMl, ...of }]) => ({
    paint,
    ...roundNumbers({ putOutMl: of.wholeMl, putOutRemainingMl: of.remainingMl }),
    ...roundNumbers({ onFigureMl, lostMl, leftoverMl }),
    ...{ mark: trust.mark, biggestDoubt: trust.biggestDoubt },
  })),
});

const describeFigures = ({ estimate }: Plan): PlanDocument['figures'] =>
  [...estimate.figures.values()].map(({ figure, wholeCm2, withBaseCm2, parts, mark, biggestDoubt }) => ({
    ...roundNumbers({ figure: figure.figure, wholeCm2, withBaseCm2 }),
    ...{ parts: roundNumbers(Object.fromEntries(parts)), mark, biggestDoubt },
  }));

function describePaint(stock: PaintStock, plan: Plan, money: Money): PlanDocument['paints'][number] {
  const { paint, needMl, haveMl, orderedMl, leftAfterMl, toBuyMl, keepMl } = stock;
  const price = plan.costs.paints.get(paint);
  const range = plan.ranges.paints.get(paint);
  const reach = plan.summary.lasting.reach.get(paint);
  const useCost = price?.useCost.exactMinor ?? exactMinor(0);
  const { low = 0, high = 0 } = range?.needMl ?? {};
  const costOf = (ml: number) => money.cost(needMl > 0 ? useCost.times(ml).div(needMl) : exactMinor(0));
  return {
    paint,
    needMl: roundNumbers({ low, likely: needMl, high }),
    haveMl: roundNumber(haveMl),
    // A paint that the army does not need is not drawn.
    haveLowMl: roundNumber(range?.haveMl.low ?? haveMl),
    haveHighMl: roundNumber(range?.haveMl.high ?? haveMl),
    orderedMl: roundNumber(orderedMl),
    isEstimated: stock.unmeasured !== undefined,
    ...roundNumbers({ leftAfterMl, toBuyMl, keepMl }),
    ...{ state: stock.state, runningLow: stock.runningLow },
    ...describeChance('chanceShort', range?.chanceShort ?? { chance: 0, error: 0 }),
    lasts: { likely: reach?.likely ?? null, low: reach?.low ?? null },
    doubts: (range?.doubts ?? []).map(({ name, share }) => roundNumbers({ name, share })),
    pricePerMl: price?.perMl === undefined ? null : money.cost(price.perMl),
    useCost: money.cost(useCost),
    ...{ useCostLow: costOf(low), useCostHigh: costOf(high) },
    atLeast: price?.useCost.atLeast ?? false,
    mark: stock.mark,
    pots: stock.pots.map((pot) => describePot(pot, money)),
  };
}

const describePot = (
  { fromLog, row, sizeMl, container, usableMl, priceMinor, ordered, mark }: ShelfPot,
  { maybeCash }: Money,
): PlanDocument['paints'][number]['pots'][number] => ({
  ...{ sheet: fromLog ? 'log' : 'pots', row, sizeMl, container, usableMl: roundNumber(usableMl) },
  ...{ price: maybeCash(priceMinor), ordered, mark },
});
