// Report view: an order as plan.json tells it. In: an order of the plan. Out: the same with money as decimal strings.
import { toMajor } from '../../model/money.js';
import type { Order } from '../../model/plan.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber } from './round-number.js';

type DocumentOrder = PlanDocument['order'];

/** The order, with bills and what no offer covers. An order of nothing has empty lists and a total of 0. */
export function describeOrder(order: Order, currency: string): DocumentOrder {
  const cash = (minor: number) => toMajor(minor, currency);
  return {
    status: order.status,
    total: cash(order.totalMinor),
    postage: cash(order.postageMinor),
    lines: describeLines(order, cash),
    bills: order.bills.map(({ shop, goodsMinor, postageMinor, belowLeastOrderMinor }) => ({
      shop,
      goods: cash(goodsMinor),
      postage: cash(postageMinor),
      belowLeastOrder: belowLeastOrderMinor === undefined ? null : cash(belowLeastOrderMinor),
    })),
    unmet: order.unmet.map(({ paint, ml }) => ({ paint, ml: roundNumber(ml) })),
  };
}

function describeLines({ lines }: Order, cash: (minor: number) => string): DocumentOrder['lines'] {
  return lines.map(({ shop, offer, count, priceMinor, costMinor, pots }) => ({
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
      cost: cash(pot.costMinor),
      code: pot.code ?? '',
    })),
  }));
}
