// Report view: the orders of a plan as one reorder list by shop. In: the plan. Out: a ReorderView, which the report,
// reorder.csv and reorder.xlsx draw.
import { minorDigits, toMajor } from '../../model/money.js';
import type { Order, OrderLine, ShopBill } from '../../model/order.js';
import type { Plan } from '../../model/plan.js';

export interface ReorderPot {
  readonly paint: string;
  readonly sizeMl: number;
  readonly container: string;
  /** Pots of this row in all. */
  readonly count: number;
  /** Usable ml that the needs take of all of them, and what is left over. */
  readonly coversMl: number;
  readonly overMl: number;
  /** GTIN as text; '' where none is known. */
  readonly code: string;
}

export interface ReorderLine {
  readonly offer: string;
  /** Offers bought. */
  readonly count: number;
  readonly priceMinor: number;
  readonly costMinor: number;
  readonly pots: readonly ReorderPot[];
}

export interface ReorderShop {
  readonly shop: string;
  readonly lines: readonly ReorderLine[];
  readonly goodsMinor: number;
  readonly postageMinor: number;
  readonly totalMinor: number;
  /** A remark such as a least order not reached; '' for none. */
  readonly note: string;
}

/** `army`: what the plan needs. `shelf`: what brings low pots back to their level. */
export interface ReorderGroup {
  readonly for: 'army' | 'shelf';
  readonly shops: readonly ReorderShop[];
  readonly totalMinor: number;
  /** Said where the order is not proved to be the cheapest; else ''. */
  readonly note: string;
  /** Paints no offer covers, with the usable ml that are missing. */
  readonly unmet: readonly { readonly paint: string; readonly ml: number }[];
}

export interface ReorderView {
  readonly date: string;
  readonly currency: string;
  /** ISO 4217 digits of the currency. */
  readonly minorDigits: number;
  readonly locale: string;
  readonly groups: readonly ReorderGroup[];
  readonly totalMinor: number;
}

/**
 * The reorder list. A plan with nothing to buy gives the army's group without shops; the shelf's group is
 * there only where the settings ask for it. Shops stand in the order of their bills.
 */
export function viewReorder(plan: Plan): ReorderView {
  const { currency, locale } = plan.settings;
  const groups = [viewGroup('army', plan.order, currency)];
  if (plan.restock !== undefined) groups.push(viewGroup('shelf', plan.restock, currency));
  return {
    date: plan.date,
    currency,
    minorDigits: minorDigits(currency),
    locale,
    groups,
    totalMinor: groups.reduce((sum, group) => sum + group.totalMinor, 0),
  };
}

function viewGroup(whom: ReorderGroup['for'], order: Order, currency: string): ReorderGroup {
  const linesOf = (shop: string) => order.lines.filter((line) => line.shop === shop);
  return {
    for: whom,
    shops: order.bills.map((bill) => viewShop(bill, linesOf(bill.shop), currency)),
    totalMinor: order.totalMinor,
    note: proofNoteOf(order, currency),
    unmet: order.unmet,
  };
}

const proofNoteOf = ({ aboveBestMinor }: Order, currency: string): string =>
  aboveBestMinor === 0
    ? ''
    : `not proved to be the cheapest: at most ${toMajor(aboveBestMinor, currency)} ${currency} above the best possible`;

function viewShop(bill: ShopBill, lines: readonly OrderLine[], currency: string): ReorderShop {
  const { shop, goodsMinor, postageMinor } = bill;
  return {
    shop,
    lines: lines.map(viewLine),
    goodsMinor,
    postageMinor,
    totalMinor: goodsMinor + postageMinor,
    note: noteOf(bill, currency),
  };
}

function noteOf({ postageMinor, belowLeastOrderMinor }: ShopBill, currency: string): string {
  const notes = [];
  if (belowLeastOrderMinor !== undefined)
    notes.push(`below this shop's least order of ${toMajor(belowLeastOrderMinor, currency)} ${currency}`);
  if (postageMinor < 0) notes.push("together with the army's order the goods travel free");
  return notes.join('; ');
}

function viewLine({ offer, count, priceMinor, costMinor, pots }: OrderLine): ReorderLine {
  return {
    offer,
    count,
    priceMinor,
    costMinor,
    pots: pots.map((pot) => ({
      paint: pot.paint,
      sizeMl: pot.sizeMl,
      container: pot.container,
      count: pot.count,
      coversMl: cutTrace(pot.coversMl),
      overMl: cutTrace(pot.overMl),
      code: pot.code ?? '',
    })),
  };
}

/** What subtraction leaves of nothing is nothing. */
const cutTrace = (ml: number): number => (ml < 1e-6 ? 0 : ml);
