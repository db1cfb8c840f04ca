// Report view: the orders of a plan as one reorder list by shop. In: the plan. Out: a ReorderView, which the report,
// reorder.csv and reorder.xlsx draw.
import { minorDigits, toMajor } from '../../model/money.js';
import type { Order, OrderLine, ShopBill } from '../../model/order.js';
import type { Plan } from '../../model/plan.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './reorder-view.js';
import { csvMarks, numberWords } from './word-numbers.js';

/**
 * The reorder list. A plan with nothing to buy gives the army's group without shops; the shelf's group is
 * there only where the settings ask for it. Shops stand in the order of their bills.
 */
export function viewReorder(plan: Plan): ReorderView {
  const { currency } = plan.settings;
  const csv = csvMarks(numberWords(plan.settings));
  const sumOf = (minor: number): string =>
    `${toMajor(minor, currency).replace('.', csv.decimal)} ${currency}`;
  const groups = [viewGroup('army', plan.order, sumOf)];
  if (plan.restock !== undefined) groups.push(viewGroup('shelf', plan.restock, sumOf));
  return {
    date: plan.date,
    currency,
    minorDigits: minorDigits(currency),
    csv,
    groups,
    totalMinor: groups.reduce((sum, group) => sum + group.totalMinor, 0),
  };
}

/** Whole minor units as text of a note. */
type SumOf = (minor: number) => string;

function viewGroup(whom: ReorderGroup['for'], order: Order, sumOf: SumOf): ReorderGroup {
  const linesOf = (shop: string) => order.lines.filter((line) => line.shop === shop);
  return {
    for: whom,
    shops: order.bills.map((bill) => viewShop(bill, linesOf(bill.shop), sumOf)),
    totalMinor: order.totalMinor,
    note: proofNoteOf(order, sumOf),
    unmet: order.unmet,
  };
}

const proofNoteOf = ({ aboveBestMinor }: Order, sumOf: SumOf): string =>
  aboveBestMinor === 0
    ? ''
    : `not proved to be the cheapest: at most ${sumOf(aboveBestMinor)} above the best possible`;

function viewShop(bill: ShopBill, lines: readonly OrderLine[], sumOf: SumOf): ReorderShop {
  const { shop, goodsMinor, postageMinor } = bill;
  return {
    shop,
    lines: lines.map(viewLine),
    goodsMinor,
    postageMinor,
    totalMinor: goodsMinor + postageMinor,
    note: noteOf(bill, sumOf),
  };
}

function noteOf({ postageMinor, belowLeastOrderMinor }: ShopBill, sumOf: SumOf): string {
  const notes = [];
  if (belowLeastOrderMinor !== undefined)
    notes.push(`below this shop's least order of ${sumOf(belowLeastOrderMinor)}`);
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
