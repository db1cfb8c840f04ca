// Report view: orders, cash against figures and a budget as plan.json tells them. In: those of the plan. Out: the same
// with money as decimal strings.
import type { Budget, Order, OrderLine, Stairs } from '../../model/order.js';
import type { Alike } from '../../model/order-sums.js';
import type { PlanDocument } from './plan-document.js';
import { type Money, roundNumber, roundNumbers } from './write-values.js';

type DocumentOrder = Omit<PlanDocument['order'], 'policy' | 'sure'>;

/** The order, with bills and what no offer covers. An order of nothing has empty lists and a total of 0. */
export function describeOrder(order: Order, money: Money): DocumentOrder {
  const { cash, maybeCash } = money;
  return {
    status: order.status,
    total: cash(order.totalMinor),
    postage: cash(order.postageMinor),
    aboveBest: cash(order.aboveBestMinor),
    tiesOpen: order.tiesOpen ?? false,
    lines: order.lines.map((line) => describeLine(line, money)),
    bills: order.bills.map(({ shop, goodsMinor, postageMinor, belowLeastOrderMinor }) => ({
      ...{ shop, goods: cash(goodsMinor), postage: cash(postageMinor) },
      belowLeastOrder: maybeCash(belowLeastOrderMinor),
    })),
    unmet: order.unmet.map(({ paint, ml }) => roundNumbers({ paint, ml })),
    passedOver: order.passedOver.map(({ extraMinor, shop, offer }) => ({
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
  { maybeCash }: Money,
): PlanDocument['withoutShop'][number] => ({
  ...{ paint, missingMl: roundNumber(ml), sizeMl, container, count },
  price: maybeCash(priceMinor),
  cost: maybeCash(priceMinor === undefined ? undefined : count * priceMinor),
  ...{ mark: priceMinor === undefined ? null : 'yours', isOwned, isAsLikely },
});

export const describeLine = (
  { shop, offer, count, priceMinor, costMinor, pots }: OrderLine,
  { cash }: Money,
): DocumentOrder['lines'][number] => ({
  ...{ shop, offer, count, price: cash(priceMinor), cost: cash(costMinor) },
  pots: pots.map((pot) => ({
    ...{ paint: pot.paint, sizeMl: pot.sizeMl, container: pot.container, count: pot.count },
    ...roundNumbers({ usableMl: pot.usableMl, coversMl: pot.coversMl, overMl: pot.overMl }),
    ...{ cost: cash(pot.costMinor), code: pot.code ?? '' },
  })),
});

/** The steps; none for an army of nobody. */
export const describeStairs = (
  { everyStep, mostFigures, steps }: Stairs,
  { cash }: Money,
): PlanDocument['stairs'] => ({
  ...{ everyStep, mostFigures },
  steps: steps.map(({ figures, cashMinor, because, proved }) => ({
    figures,
    cash: cash(cashMinor),
    because,
    proved,
  })),
});

/** What the budget finishes. */
export const describeBudget = (budget: Budget, money: Money): PlanDocument['budget'] => ({
  budget: money.cash(budget.budgetMinor),
  order: describeOrder(budget.order, money),
  units: budget.units,
  nextSteps: budget.nextSteps.map(({ unit, figures, extraMinor }) => ({
    unit,
    figures,
    extra: money.cash(extraMinor),
  })),
  proved: budget.proved,
  notTried: budget.notTried,
});
