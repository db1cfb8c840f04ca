// Report view: the reorder list in words. In: the plan and its ReorderView. Out: groups, shops, lines with prices as text,
// how good each order is, and what other ways would cost.
import { at } from '../../../model/at.js';
import type { Order } from '../../../model/order.js';
import type { OrderSums } from '../../../model/order-sums.js';
import type { Plan } from '../../../model/plan.js';
import type { ReorderGroup, ReorderShop, ReorderView } from '../../reorder/view-reorder.js';
import { hexOf } from '../../words/hex-of.js';
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordGoods } from '../../words/word-goods.js';
import { listNeeded, type NeededRow } from '../../words/word-needed.js';
import { wordMore, wordProof } from '../../words/word-proof.js';
import { type LineInputs, type ShoppingLine, viewLine } from './view-line.js';
import { type ShoppingWords, shoppingWords } from './words.js';

export interface ShoppingView {
  readonly labels: ShoppingWords['labels'];
  readonly lead: string;
  readonly groups: readonly ShoppingGroup[];
  /** Both groups together; '' where only one has anything to buy. */
  readonly bothTotal: string;
  /** Said where pots run low and no order for the shelf was asked for; else ''. */
  readonly lowLeftOut: string;
  /** How each order was found; none where nothing is bought. */
  readonly found: readonly FoundOrder[];
}

interface FoundOrder {
  /** How sure it is that nothing cheaper covers it. */
  readonly says: string;
  /** What else could be ordered, the cheapest first; none where nothing else was weighed. */
  readonly ways: readonly WayRow[];
}

interface ShoppingGroup {
  /** '' for the army's, which stands open. */
  readonly title: string;
  readonly says: string;
  readonly shops: readonly ShoppingShop[];
  /** Said where no shop has anything. */
  readonly nothing: string;
  readonly totalLabel: string;
  /** '' where only one shop is asked. */
  readonly total: string;
  readonly unmet: readonly { readonly paint: string; readonly hex: string; readonly missing: string }[];
  /** What is left out, though it may be needed. */
  readonly waits: readonly NeededRow[];
  /** Said where more wait than are listed; else ''. */
  readonly moreWait: string;
}

interface ShoppingShop {
  readonly shop: string;
  readonly lines: readonly ShoppingLine[];
  /** Goods and postage. */
  readonly sums: string;
  readonly total: string;
  readonly note: string;
}

interface WayRow {
  readonly way: string;
  readonly total: string;
  /** Compared with the order: `€0.95 more`. */
  readonly more: string;
}

/** One group for the army, one for the shelf where the settings ask for it. */
export function viewShopping({ plan, words }: ViewInputs, reorder: ReorderView): ShoppingView {
  const texts = shoppingWords(words);
  const { order, restock, stock, summary } = plan;
  const bought = reorder.groups.filter(({ shops }) => shops.length > 0);
  const isLowLeftOut = restock === undefined && stock.some(({ runningLow }) => runningLow);
  const inputs = reorder.groups.map(({ for: whom }): LineInputs => {
    const of =
      whom === 'shelf'
        ? { order: restock ?? order, sums: summary.restock ?? summary.order }
        : { order, sums: summary.order };
    return { plan, words, texts, ...of };
  });
  return {
    labels: texts.labels,
    lead: plan.lacking.includes('army')
      ? texts.shelfAlone
      : order.lines.length === 0
        ? ''
        : texts.lead(plan.aim, summary.order.pots),
    groups: reorder.groups.map((group, index) => viewGroup(group, at(inputs, index))),
    bothTotal: bought.length > 1 ? words.money(reorder.totalMinor) : '',
    lowLeftOut: isLowLeftOut ? texts.lowLeftOut : '',
    found: reorder.groups.flatMap(({ for: whom }, index) => viewFound(whom, at(inputs, index))),
  };
}

function viewFound(whom: ReorderGroup['for'], { order, sums, words, texts }: LineInputs): FoundOrder[] {
  const says = wordProof(order, whom, words);
  return says === '' ? [] : [{ says, ways: viewWays(order, sums, { words, texts }) }];
}

/** Paints that wait, named here. */
const mostWaiting = 30;

function viewGroup(group: ReorderGroup, inputs: LineInputs): ShoppingGroup {
  const { plan, words, texts } = inputs;
  const { for: whom, shops, unmet, waits } = group;
  const isAlone = plan.lacking.includes('army');
  const isTogether = whom === 'shelf' && shops.some(({ shop }) => armyPays(plan, shop));
  return {
    title: whom === 'army' || isAlone ? '' : texts.title(whom, words.money(group.totalMinor)),
    says: joinSentences(texts.shelf(plan.aim), isTogether ? texts.together : ''),
    shops: shops.map((shop) => viewShop(shop, whom, inputs)),
    nothing: texts.nothing(unmet.length > 0),
    totalLabel: texts.total(whom),
    total: shops.length > 1 ? words.money(group.totalMinor) : '',
    unmet: unmet.map((one) => ({
      paint: one.paint,
      hex: hexOf(plan, one.paint),
      missing: texts.missing(one),
    })),
    waits: listNeeded(waits.slice(0, mostWaiting), plan, words),
    moreWait: waits.length > mostWaiting ? texts.moreWait(waits.length - mostWaiting) : '',
  };
}

/** Both orders are then sent as one. */
const armyPays = ({ order }: Plan, shop: string): boolean => order.bills.some((bill) => bill.shop === shop);

function viewShop(shop: ReorderShop, whom: ReorderGroup['for'], inputs: LineInputs): ShoppingShop {
  const { plan, words } = inputs;
  const isMore = whom === 'shelf' && armyPays(plan, shop.shop);
  return {
    shop: shop.shop,
    lines: shop.lines.map((line) => viewLine(line, shop, inputs)),
    sums: wordGoods(shop, { isMore, isPostageKnown: plan.summary.isPostageKnown }, words),
    total: words.money(shop.totalMinor),
    note: shop.note,
  };
}

/** The order itself beside all from one shop and sets passed over, the cheapest first; alone it is not listed. */
function viewWays(
  { bills, totalMinor }: Order,
  { ways }: OrderSums,
  { words, texts }: Pick<LineInputs, 'words' | 'texts'>,
): WayRow[] {
  if (ways.length === 0) return [];
  const mine = { way: texts.mine(bills), total: words.money(totalMinor), more: '' };
  const others = ways.map((one) => ({
    way: texts.way(one),
    total: words.money(one.totalMinor),
    more: wordMore(one.extraMinor, words),
  }));
  return [mine, ...others];
}
