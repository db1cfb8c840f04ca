// Report view: the reorder list in words. In: the plan and its ReorderView. Out: groups, shops, lines with prices as text,
// how good each order is, and what other ways would cost.
import type { Order } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { OrderSums } from '../../../model/summary.js';
import type { ReorderGroup, ReorderShop, ReorderView } from '../../reorder/view-reorder.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordList } from '../../words/word-aim.js';
import { nameOf } from '../../words/word-name.js';
import { listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordMore, wordProof } from '../../words/word-proof.js';
import { type LineInputs, type ShoppingLine, viewLine } from './view-line.js';

export interface ShoppingView {
  readonly lead: string;
  /** Of the amounts to buy; prices are the painter's own. */
  readonly trust: TrustView;
  readonly groups: readonly ShoppingGroup[];
  /** Both groups together; '' where only one has anything to buy. */
  readonly bothTotal: string;
}

interface ShoppingGroup {
  readonly title: string;
  readonly says: string;
  /** How sure it is that nothing cheaper covers it; '' where nothing is bought. */
  readonly proof: string;
  readonly shops: readonly ShoppingShop[];
  readonly total: string;
  /** What else could be ordered, the cheapest first; none where nothing else was weighed. */
  readonly ways: readonly WayRow[];
  readonly unmet: readonly { readonly paint: string; readonly hex: string; readonly missing: string }[];
}

interface ShoppingShop {
  readonly shop: string;
  readonly lines: readonly ShoppingLine[];
  readonly goods: string;
  /** `Postage`, or `Postage back` where goods of this group make those of the army travel free. */
  readonly postageLabel: string;
  readonly postage: string;
  readonly total: string;
  readonly note: string;
}

interface WayRow {
  readonly way: string;
  readonly total: string;
  /** Compared with the order: `€0.95 more`. */
  readonly more: string;
}

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
export function viewShopping({ plan, words, trust }: ViewInputs, reorder: ReorderView): ShoppingView {
  const isBoth = reorder.groups.filter(({ shops }) => shops.length > 0).length > 1;
  return {
    lead: wordLead(plan, reorder),
    trust: trust.of(plan.summary.lasting.trust),
    groups: reorder.groups.map((group) => {
      const { order, restock, summary } = plan;
      return group.for === 'shelf'
        ? viewGroup(group, { plan, order: restock ?? order, sums: summary.restock ?? summary.order, words })
        : viewGroup(group, { plan, order, sums: summary.order, words });
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
  const { plan, order, sums, words } = inputs;
  const { title, says } = titles[group.for];
  return {
    title,
    says: `${says(plan, words)}${group.for === 'shelf' ? wordTogether(group, plan) : ''}`,
    proof: wordProof(order, group.for, words),
    shops: group.shops.map((shop) => viewShop(shop, group.for, inputs)),
    total: words.money(group.totalMinor),
    unmet: group.unmet.map(({ paint, ml }) => ({ paint, hex: hexOf(plan, paint), missing: words.ml(ml) })),
    ways: viewWays(order, sums, words),
  };
}

const armyPays = ({ order }: Plan, shop: string): boolean => order.bills.some((bill) => bill.shop === shop);

/** Postage of the shelf's group is only what it adds, so both orders must be sent as one. */
function wordTogether({ shops }: ReorderGroup, plan: Plan): string {
  return shops.some(({ shop }) => armyPays(plan, shop))
    ? ' Send both orders to a shop as one: postage here is what this group adds to it.'
    : '';
}

function viewShop(shop: ReorderShop, whom: ReorderGroup['for'], inputs: LineInputs): ShoppingShop {
  const { plan, words } = inputs;
  const { postageMinor } = shop;
  const free = plan.summary.isPostageKnown ? 'free' : 'not known';
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
function viewWays({ bills, totalMinor }: Order, { ways }: OrderSums, words: NumberWords): WayRow[] {
  if (ways.length === 0) return [];
  const shops = listOf(bills.map(({ shop }) => nameOf(shop)));
  const mine = { way: `This order, from ${shops}`, total: words.money(totalMinor), more: '' };
  const others = ways.map((one) => ({
    way:
      one.way === 'one shop'
        ? `All from ${nameOf(one.shop)}`
        : `With ${nameOf(one.set.offer)} from ${nameOf(one.set.shop)}`,
    total: words.money(one.totalMinor),
    more: wordMore(one.extraMinor, words),
  }));
  return [mine, ...others];
}
