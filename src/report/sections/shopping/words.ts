// Shopping: its English. In: results, ways to say numbers. Out: text; '' where there is nothing to say.
import type { Aim, Needed } from '../../../model/choices.js';
import type { Order, ShopBill } from '../../../model/order.js';
import type { Alike, OtherWay } from '../../../model/order-sums.js';
import type { ReorderGroup, ReorderLine, ReorderPot } from '../../reorder/view-reorder.js';
import { joinSentences } from '../../words/join-sentences.js';
import { wordAlike } from '../../words/word-alike.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { wordChance } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  heading: 'What to buy',
  yours: 'Prices and codes are yours, from the offers sheet.',
  follows: 'How much is bought follows from',
  howSure: 'the way you buy',
  bought: 'Bought',
  /** For the page's script, which counts the ticks. */
  someBought: `${sharedWords.some('{some}', '{all}')} bought`,
  offer: 'Offer',
  inIt: 'What is in it',
  price: 'Price',
  count: 'Count',
  cost: 'Cost',
  goods: 'Goods',
  shopTotal: 'To',
  unmet: 'Without a shop: no offer covers it',
  waits: 'What waits',
  ways: 'Other ways to buy the same, as far as they were weighed',
  way: 'Way',
  cash: 'Cash',
  compared: 'Compared',
  bothTotal: 'Army and shelf together',
};

export const shoppingWords = (say: NumberWords) => ({
  labels,
  ...groupWords(say),
  ...shopWords,
  ...lineWords(say),
  ...wayWords,
});

export type ShoppingWords = ReturnType<typeof shoppingWords>;

const titles: Record<ReorderGroup['for'], string> = { army: 'For this army', shelf: 'For the shelf' };

const likelyList = 'What your likely needs take beyond your shelf.';
const goesList =
  'Each pot that is likely enough to be needed to be worth its price now, and what the next two units take.';

const groupWords = (say: NumberWords) => ({
  /** `isLowLeftOut`: pots run low, and the settings ask for no order for the shelf. */
  lead: (isBought: boolean, isLowLeftOut: boolean) =>
    joinSentences(
      isBought ? 'The same list is in reorder.csv and reorder.xlsx.' : '',
      isLowLeftOut
        ? 'Low pots are not on this list; the setting restock = shelf adds them in a group of their own.'
        : '',
    ),
  title: (whom: ReorderGroup['for']) => titles[whom],
  total: (whom: ReorderGroup['for']) => `${titles[whom]}, in all`,
  army: ({ policy, surePercent = 0 }: Aim) => {
    if (policy === 'sure')
      return `What it takes beyond your shelf to be ${say.sure(surePercent)} sure that nothing runs out. What is likely takes less, so some of it will likely be left.`;
    const what = policy === 'likely' ? likelyList : goesList;
    return `${what} When a pot runs dry, order again.`;
  },
  shelf: (isAlone: boolean) =>
    joinSentences(
      'Brings every low pot back to its keep level.',
      isAlone ? '' : 'Leave it out and the army is still painted.',
    ),
  /** Postage of the shelf's group is only what it adds. */
  together: 'Send both orders to a shop as one: postage here is what this group adds to it.',
  nothing: (isUnmet: boolean) =>
    isUnmet ? 'The offers hold nothing of what is missing.' : 'Nothing to buy.',
  missing: (one: Alike) => `${wordAlike(one, say)}; ${say.ml(one.ml)} missing`,
  moreWait: (paints: number) => `and ${countOf(say, paints, 'more paint')}: reorder.csv lists each`,
});

const shopWords = {
  /** Goods of the shelf's group may make those of the army travel free. */
  postage: ({ postageMinor }: Pick<ShopBill, 'postageMinor'>) =>
    postageMinor < 0 ? 'Postage back' : 'Postage',
  noPostage: { more: 'none more', free: 'free', unknown: 'not known' },
};

const lineWords = (say: NumberWords) => ({
  tick: (offer: string) => `Bought: ${offer}`,
  /** `2 pots of 17 ml` */
  pots: ({ count, container, sizeMl }: ReorderPot) =>
    `${countOf(say, count, ...sharedWords.containers[container])} of ${say.plain(sizeMl)}\u00a0ml`,
  /** `covers 1.1 ml, leaves 10.5 ml`: both with as many digits as what is covered. */
  covers: ({ coversMl, overMl }: ReorderPot) => {
    if (coversMl === 0) return 'covers nothing';
    const digits = mlDigits(coversMl);
    return `covers ${say.ml(coversMl, digits)}, leaves ${overMl === 0 ? 'nothing' : say.ml(overMl, digits)}`;
  },
  /** Of several of one offer, the last. */
  needed: ({ chanceNeeded, threshold }: Needed, { policy }: Aim) => {
    const worth = policy === 'goes' ? `, worth buying now from ${say.percent(threshold)}` : '';
    return `Needed in ${wordChance(chanceNeeded, say)} of cases${worth}.`;
  },
  /** Only a proved order is known to hold nothing without reason. */
  spare: (
    { spare, count }: ReorderLine,
    isProved: boolean,
    { postageMinor }: Pick<ShopBill, 'postageMinor'>,
  ) => {
    const who = spare === count ? 'This' : sharedWords.some(say.count(spare), say.count(count));
    if (!isProved) return `${who} may not be needed: the order is not proved.`;
    const fills = spare > 1 && spare !== count ? 'fill' : 'fills';
    return `${who} only ${fills} the order up to ${goalOf(postageMinor)}.`;
  },
  idle: 'What covers nothing comes with the set.',
});

/** Where postage is paid none was saved, so it is the least order that had to be reached. */
const goalOf = (postageMinor: number): string => {
  if (postageMinor > 0) return 'the least order';
  return postageMinor < 0 ? 'free postage' : 'free postage or the least order';
};

const wayWords = {
  mine: (bills: Order['bills']) => `This order, from ${listOf(bills.map(({ shop }) => nameOf(shop)))}`,
  way: (one: OtherWay) =>
    one.way === 'one shop'
      ? `All from ${nameOf(one.shop)}`
      : `With ${nameOf(one.set.offer)} from ${nameOf(one.set.shop)}`,
};
