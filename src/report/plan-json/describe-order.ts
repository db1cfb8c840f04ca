// Report view: orders, cash against figures and a budget as plan.json tells them. In: those of the plan. Out: the same
// with money as decimal strings.
import { toMajor } from '../../model/money.js';
import type { Budget, Order, OrderLine, Stairs } from '../../model/order.js';
import type { Alike } from '../../model/order-sums.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber } from './round-number.js';

type DocumentOrder = Omit<PlanDocument['order'], 'policy' | 'sure'>;
type Cash = (minor: number) => string;

const cashWriter =
  (currency: string): Cash =>
  (minor) =>
    toMajor(minor, currency);

/** The order, with bills and what no offer covers. An order of nothing has empty lists and a total of 0. */
export function describeOrder(order: Order, currency: string): DocumentOrder {
  const cash = cashWriter(currency);
  return {
    status: order.status,
    total: cash(order.totalMinor),
    postage: cash(order.postageMinor),
    aboveBest: cash(order.aboveBestMinor),
    tiesOpen: order.tiesOpen ?? false,
    lines: order.lines.map((line) => describeLine(line, cash)),
    bills: order.bills.map(({ shop, goodsMinor, postageMinor, belowLeastOrderMinor }) => ({
      shop,
      goods: cash(goodsMinor),
      postage: cash(postageMinor),
      belowLeastOrder: belowLeastOrderMinor === undefined ? null : cash(belowLeastOrderMinor),
    })),
    unmet: order.unmet.map(({ paint, ml }) => ({ paint, ml: roundNumber(ml) })),
    passedOver: order.passedOver.map(({ shop, offer, extraMinor }) => ({
      shop,
      offer,
      extra: cash(extraMinor),
    })),
    fromOneShop: order.fromOneShop.map(({ shop, totalMinor }) => ({ shop, total: cash(totalMinor) })),
  };
}

/** A pot without a shop. */
export const describeAlike = (
  { paint, ml, sizeMl, container, count, priceMinor, isOwned, isAsLikely }: Alike,
  currency: string,
): PlanDocument['withoutShop'][number] => ({
  ...{ paint, missingMl: roundNumber(ml), sizeMl, container, count },
  price: priceMinor === undefined ? null : toMajor(priceMinor, currency),
  cost: priceMinor === undefined ? null : toMajor(count * priceMinor, currency),
  ...{ mark: priceMinor === undefined ? null : 'yours', isOwned, isAsLikely },
});

export function describeLine(
  { shop, offer, count, priceMinor, costMinor, pots }: OrderLine,
  cash: Cash,
): DocumentOrder['lines'][number] {
  return {
    shop,
    offer,
    count,
    price: cash(priceMinor),
    cost: cash(costMinor),
    pots: pots.map((pot) => ({
      paint: pot.paint,
      sizeMl: pot.sizeMl,
      container: pot.container,
      count: pot.count,
      usableMl: roundNumber(pot.usableMl),
      coversMl: roundNumber(pot.coversMl),
      overMl: roundNumber(pot.overMl),
      cost: cash(pot.costMinor),
      code: pot.code ?? '',
    })),
  };
}

/** The steps; none for an army of nobody. */
export function describeStairs(
  { everyStep, mostFigures, steps }: Stairs,
  currency: string,
): PlanDocument['stairs'] {
  const cash = cashWriter(currency);
  return {
    everyStep,
    mostFigures,
    steps: steps.map(({ figures, cashMinor, because, proved }) => ({
      figures,
      cash: cash(cashMinor),
      because,
      proved,
    })),
  };
}

/** What the budget finishes; null without one. */
export function describeBudget(budget: Budget | undefined, currency: string): PlanDocument['budget'] {
  if (budget === undefined) return null;
  const cash = cashWriter(currency);
  return {
    budget: cash(budget.budgetMinor),
    order: describeOrder(budget.order, currency),
    units: budget.units,
    nextSteps: budget.nextSteps.map(({ unit, figures, extraMinor }) => ({
      unit,
      figures,
      extra: cash(extraMinor),
    })),
    proved: budget.proved,
    notTried: budget.notTried,
  };
}
