// Report view: the reorder list in words. In: the plan and its ReorderView. Out: groups, shops, lines with prices as text.
import type { Plan } from '../../model/plan.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from './reorder-view.js';
import type { ShoppingGroup, ShoppingLine, ShoppingShop, ShoppingView } from './report-view.js';
import type { ViewInputs } from './view-inputs.js';
import { hexOf } from './view-palette.js';
import { countOf, type NumberWords } from './word-numbers.js';

const titles: Record<ReorderGroup['for'], { readonly title: string; readonly says: string }> = {
  army: { title: 'For this army', says: 'What the work still to be done needs beyond your shelf.' },
  shelf: {
    title: 'For the shelf',
    says: 'Brings every low pot back to its keep level. Leave it out and the army is still painted.',
  },
};

/** One group for the army, one for the shelf where the settings ask for it. */
export function viewShopping({ plan, words, supplyTrust }: ViewInputs, reorder: ReorderView): ShoppingView {
  const isBoth = reorder.groups.filter(({ shops }) => shops.length > 0).length > 1;
  return {
    lead: wordLead(plan, reorder),
    trust: supplyTrust,
    groups: reorder.groups.map((group) => viewGroup(group, plan, words)),
    bothTotal: isBoth ? words.money(reorder.totalMinor) : '',
  };
}

function wordLead({ order, restock, stock }: Plan, { groups }: ReorderView): string {
  const how =
    order.status === 'proved'
      ? 'No order that covers the army costs less: every mix of pots, sets and shops was weighed, postage included. '
      : '';
  const low = restock === undefined && stock.some(({ runningLow }) => runningLow);
  const shelf = low
    ? 'Low pots are not on this list; the setting restock = shelf adds them in a group of their own.'
    : '';
  const codes = groups.some(({ shops }) => shops.length > 0)
    ? 'The same list is in reorder.csv and reorder.xlsx. '
    : '';
  return `${how}${codes}${shelf}`.trim();
}

function viewGroup(group: ReorderGroup, plan: Plan, words: NumberWords): ShoppingGroup {
  return {
    ...titles[group.for],
    shops: group.shops.map((shop) => viewShop(shop, plan, words)),
    total: words.money(group.totalMinor),
    unmet: group.unmet.map(({ paint, ml }) => ({ paint, hex: hexOf(plan, paint), missing: words.ml(ml) })),
  };
}

function viewShop(shop: ReorderShop, plan: Plan, words: NumberWords): ShoppingShop {
  return {
    shop: shop.shop,
    lines: shop.lines.map((line) => viewLine(line, plan, words)),
    goods: words.money(shop.goodsMinor),
    postage: shop.postageMinor === 0 ? 'free' : words.money(shop.postageMinor),
    total: words.money(shop.totalMinor),
    note: shop.note,
  };
}

function viewLine(line: ReorderLine, plan: Plan, words: NumberWords): ShoppingLine {
  return {
    offer: line.offer,
    count: words.count(line.count),
    price: words.money(line.priceMinor),
    cost: words.money(line.costMinor),
    pots: line.pots.map(({ paint, sizeMl, container, count, code }) => ({
      paint,
      hex: hexOf(plan, paint),
      what: `${countOf(words, count, container)} of ${words.plain(sizeMl)}\u00a0ml`,
      code,
    })),
  };
}
