// Report view: the reorder list in words. In: the plan and its ReorderView. Out: groups, shops, lines with prices as text,
// how good each order is, and what other ways would cost.
import type { Order } from '../../model/order.js';
import type { Plan } from '../../model/plan.js';
import type { ReorderGroup, ReorderShop, ReorderView } from './reorder-view.js';
import type { OtherWay, ShoppingGroup, ShoppingShop, ShoppingView } from './shopping-view.js';
import type { ViewInputs } from './view-inputs.js';
import { hexOf } from './view-palette.js';
import { type LineInputs, viewLine } from './view-shopping-line.js';
import { wordList } from './word-aim.js';
import { nameOf } from './word-name.js';
import { listOf, type NumberWords } from './word-numbers.js';
import { wordMore, wordProof } from './word-proof.js';

const titles: Record<
  ReorderGroup['for'],
  { readonly title: string; readonly says: (plan: Plan, words: NumberWords) => string }
> = {
  army: {
    title: 'For this army',
    says: wordList,
  },
  shelf: {
    title: 'For the shelf',
    says: () => 'Brings every low pot back to its keep level. Leave it out and the army is still painted.',
  },
};

/** One group for the army, one for the shelf where the settings ask for it. */
export function viewShopping({ plan, words, supplyTrust }: ViewInputs, reorder: ReorderView): ShoppingView {
  const isBoth = reorder.groups.filter(({ shops }) => shops.length > 0).length > 1;
  return {
    lead: wordLead(plan, reorder),
    trust: supplyTrust,
    groups: reorder.groups.map((group) => {
      const order = group.for === 'shelf' ? (plan.restock ?? plan.order) : plan.order;
      return viewGroup(group, { plan, order, words });
    }),
    bothTotal: isBoth ? words.money(reorder.totalMinor) : '',
  };
}

function wordLead({ restock, stock }: Plan, { groups }: ReorderView): string {
  const low = restock === undefined && stock.some(({ runningLow }) => runningLow);
  const shelf = low
    ? 'Low pots are not on this list; the setting restock = shelf adds them in a group of their own.'
    : '';
  const codes = groups.some(({ shops }) => shops.length > 0)
    ? 'The same list is in reorder.csv and reorder.xlsx. '
    : '';
  return `${codes}${shelf}`.trim();
}

function viewGroup(group: ReorderGroup, inputs: LineInputs): ShoppingGroup {
  const { plan, order, words } = inputs;
  const { title, says } = titles[group.for];
  return {
    title,
    says: `${says(plan, words)}${group.for === 'shelf' ? wordTogether(group, plan) : ''}`,
    proof: wordProof(order, group.for, words),
    shops: group.shops.map((shop) => viewShop(shop, group.for, inputs)),
    total: words.money(group.totalMinor),
    unmet: group.unmet.map(({ paint, ml }) => ({ paint, hex: hexOf(plan, paint), missing: words.ml(ml) })),
    ways: viewWays(order, words),
  };
}

const armyPays = ({ order }: Plan, shop: string): boolean => order.bills.some((bill) => bill.shop === shop);

/** Postage of the shelf's group is only what it adds, so both orders must be sent as one. */
function wordTogether({ shops }: ReorderGroup, plan: Plan): string {
  return shops.some(({ shop }) => armyPays(plan, shop))
    ? ' Send both orders to a shop as one: postage here is what this group adds to it.'
    : '';
}

/** False where no shops sheet says what shops ask for sending. */
export const isPostageKnown = ({ defaults }: Plan): boolean =>
  !defaults.some(({ sheet, column }) => sheet === 'shops' && column === 'postage');

function viewShop(shop: ReorderShop, whom: ReorderGroup['for'], inputs: LineInputs): ShoppingShop {
  const { plan, words } = inputs;
  const { postageMinor } = shop;
  const free = isPostageKnown(plan) ? 'free' : 'not known';
  const none = whom === 'shelf' && armyPays(plan, shop.shop) ? 'none more' : free;
  return {
    shop: shop.shop,
    lines: shop.lines.map((line) => viewLine(line, shop, inputs)),
    goods: words.money(shop.goodsMinor),
    postageLabel: postageMinor < 0 ? 'Postage back' : 'Postage',
    postage: postageMinor === 0 ? none : words.money(postageMinor),
    total: words.money(shop.totalMinor),
    note: shop.note,
  };
}

/** The order itself beside all from one shop and sets passed over, the cheapest first; alone it is not listed. */
function viewWays(order: Order, words: NumberWords): OtherWay[] {
  const { bills, totalMinor, fromOneShop, passedOver } = order;
  const shops = bills.map(({ shop }) => nameOf(shop));
  const isFromOne = bills.length === 1 ? bills[0]?.shop : undefined;
  const others = [
    ...fromOneShop
      .filter(({ shop, totalMinor: all }) => shop !== isFromOne || all !== totalMinor)
      .map(({ shop, totalMinor: all }) => ({ way: `All from ${nameOf(shop)}`, minor: all })),
    ...passedOver.map(({ shop, offer, extraMinor }) => ({
      way: `With ${nameOf(offer)} from ${nameOf(shop)}`,
      minor: totalMinor + extraMinor,
    })),
  ].sort((a, b) => a.minor - b.minor);
  if (others.length === 0) return [];
  const mine = { way: `This order, from ${listOf(shops)}`, total: words.money(totalMinor), more: '' };
  return [
    mine,
    ...others.map(({ way, minor }) => ({
      way,
      total: words.money(minor),
      more: wordMore(minor - totalMinor, words),
    })),
  ];
}
