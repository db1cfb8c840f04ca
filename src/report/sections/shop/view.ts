import { codeOfSet } from '../../reorder/code-of-set.js';
import type { ReorderGroup, ReorderLine, ReorderShop, ReorderView } from '../../reorder/view-reorder.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs, Worded } from '../../words/view-inputs.js';
import { wordGoods } from '../../words/word-goods.js';
import { wordDate } from '../../words/word-numbers.js';
import { type ShopWords, shopWords } from './words.js';

export interface ShopView extends Pick<ShopWords, 'title' | 'labels' | 'potWords'> {
  readonly lang: string;
  readonly date: string;
  /** How the page's script writes sums. */
  readonly money: { readonly locale: string; readonly currency: string; readonly digits: number };
  /** Before anything is ticked; '' where no shop has anything. */
  readonly toPay: string;
  readonly pots: string;
  readonly groups: readonly ShopGroup[];
}

interface ShopGroup {
  /** '' for the army's. */
  readonly title: string;
  readonly shops: readonly ShopBlock[];
  /** Said where no shop has anything. */
  readonly nothing: string;
  readonly unmet: readonly { readonly paint: string; readonly hex: string; readonly says: string }[];
}

interface ShopBlock extends Pick<ReorderShop, 'shop' | 'postageMinor' | 'note'> {
  /** Goods and postage. */
  readonly sums: string;
  readonly lines: readonly ShopLine[];
}

interface ShopLine {
  /** '' where it is called as its only paint. */
  readonly offer: string;
  /** Of the whole set, where its pots have one code. */
  readonly code: string;
  /** Several paints in one offer. */
  readonly isSet: boolean;
  readonly tick: string;
  readonly minor: number;
  readonly cost: string;
  /** Of several of the offer, how many at which price; else ''. */
  readonly apiece: string;
  readonly pots: readonly {
    readonly paint: string;
    readonly hex: string;
    /** `2 pots of 17 ml` */
    readonly what: string;
    readonly code: string;
    readonly count: number;
  }[];
}

/** The same lines in the same order as the report's list, so that both share their ticks. */
export function viewShop({ plan, words, lang }: ViewInputs, reorder: ReorderView): ShopView {
  const texts = shopWords(words);
  const { summary, settings, date } = plan;
  return {
    lang,
    ...{ title: texts.title, labels: texts.labels, potWords: texts.potWords },
    date: wordDate(date, lang),
    money: { locale: settings.locale, currency: reorder.currency, digits: reorder.minorDigits },
    toPay: summary.pots === 0 ? '' : words.money(summary.cashMinor),
    pots: texts.pots(summary.pots),
    groups: reorder.groups.map((group) => viewGroup(group, { plan, words, texts })),
  };
}

function viewGroup({ for: whom, shops, unmet }: ReorderGroup, inputs: Worded<ShopWords>): ShopGroup {
  const { plan, texts } = inputs;
  return {
    title: whom === 'army' ? '' : texts.group[whom],
    shops: shops.map((shop) => viewBlock(shop, whom, inputs)),
    nothing: texts.nothing(unmet.length > 0),
    unmet: unmet.map((one) => ({ paint: one.paint, hex: hexOf(plan, one.paint), says: texts.alike(one) })),
  };
}

function viewBlock(of: ReorderShop, whom: ReorderGroup['for'], inputs: Worded<ShopWords>): ShopBlock {
  const { shop, postageMinor, note, lines } = of;
  const { plan, words } = inputs;
  const isMore = whom === 'shelf' && plan.order.bills.some((bill) => bill.shop === shop);
  return {
    ...{ shop, postageMinor, note },
    sums: wordGoods(of, { isMore, isPostageKnown: plan.summary.isPostageKnown }, words),
    lines: lines.map((line) => viewLine(line, inputs)),
  };
}

function viewLine(line: ReorderLine, { plan, words, texts }: Worded<ShopWords>): ShopLine {
  const { offer, count, priceMinor, costMinor, pots } = line;
  const [first] = pots;
  const isSet = pots.length > 1;
  const code = codeOfSet(line);
  return {
    offer: isSet || offer !== first?.paint ? offer : '',
    isSet,
    code,
    tick: texts.tick(offer),
    minor: costMinor,
    cost: words.money(costMinor),
    apiece: count > 1 ? texts.apiece(count, priceMinor) : '',
    pots: pots.map((pot) => ({
      ...{ paint: pot.paint, hex: hexOf(plan, pot.paint), what: texts.what(pot) },
      ...{ code: code === '' ? pot.code : '', count: pot.count },
    })),
  };
}
