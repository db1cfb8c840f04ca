// Shopping: its English. In: results, ways to say numbers. Out: text; '' where there is nothing to say.
import type { Aim, Needed } from '../../../model/choices.js';
import type { Order, ShopBill } from '../../../model/order.js';
import type { Alike, OtherWay } from '../../../model/order-sums.js';
import type { ReorderGroup, ReorderLine, ReorderPot } from '../../reorder/view-reorder.js';
import { wordAim } from '../../words/word-aim.js';
import { wordAlike, wordPots } from '../../words/word-alike.js';
import { nameOf } from '../../words/word-name.js';
import { wordNeeded } from '../../words/word-needed.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordTimes } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  heading: 'What to buy',
  bought: 'Bought',
  /** For the page's script, which counts the ticks. */
  someBought: `${sharedWords.some('{some}', '{all}')} bought`,
  offer: 'Offer',
  inIt: 'What is in it',
  price: 'Price',
  count: 'Count',
  cost: 'Cost',
  unmet: sharedWords.noShop,
  waits: 'What can wait',
  found: 'How this order was found',
  ways: 'Other ways to buy the same, as far as they were weighed',
  way: 'Way',
  cash: 'Cash',
  compared: 'Compared',
  bothTotal: 'Army and shelf together',
};

export const shoppingWords = (say: NumberWords) => ({
  labels,
  ...groupWords(say),
  ...lineWords(say),
  ...wayWords,
});

export type ShoppingWords = ReturnType<typeof shoppingWords>;

const groupWords = (say: NumberWords) => ({
  /** Why these pots. */
  lead: ({ policy, surePercent = 0 }: Aim, pots: number) => {
    const these = `Buy ${pots === 1 ? 'this pot' : `these ${say.count(pots)} pots`}`;
    if (policy === 'sure')
      return `${these}, and in ${say.count(surePercent)} of ${say.count(100)} armies like yours nothing runs out. Some will likely be left over.`;
    const now = `${these} now, and order again when one runs low.`;
    return policy === 'goes'
      ? `${now} Each is likely to be needed, or dear to fetch later. “Of 100” counts armies like yours.`
      : now;
  },
  /** Pots run low, and the settings ask for no order for the shelf. */
  lowLeftOut: 'Low pots are not on this list; the setting restock = shelf adds them.',
  title: (whom: ReorderGroup['for'], total: string) => `${sharedWords.whom[whom]}: ${total}`,
  total: (whom: ReorderGroup['for']) => `${sharedWords.whom[whom]}, in all`,
  shelfAlone: 'Brings every low pot back to its keep level.',
  shelf: (aim: Aim) =>
    `Brings every low pot back to its keep level after what ${wordAim(aim, say)} takes. Leave it out and the army is still painted.`,
  /** Postage of the shelf's group is only what it adds. */
  together: 'Send both orders to a shop as one: postage here is what this group adds to it.',
  nothing: sharedWords.nothingToBuy,
  missing: (one: Alike) =>
    `${wordAlike(one, say)}; you ${one.isAsLikely ? 'likely ' : ''}lack ${say.aboutMl(one.ml)}`,
  moreWait: (paints: number) => `and ${countOf(say, paints, 'more paint')}: reorder.csv lists each`,
});

const lineWords = (say: NumberWords) => ({
  tick: sharedWords.bought,
  /** `2 pots of 17 ml` */
  pots: (pot: ReorderPot) => wordPots(pot, say),
  /** `you lack 1.1 ml, 11 ml to spare` */
  covers: ({ coversMl, overMl }: ReorderPot) =>
    coversMl === 0
      ? 'you lack none'
      : `you lack ${say.aboutMl(coversMl)}, ${overMl === 0 ? 'none' : say.aboutMl(overMl)} to spare`,
  /** Of several of one offer, the last. */
  needed: (needed: Needed, { policy }: Aim) =>
    policy === 'goes' ? wordNeeded(needed, say) : `needed in ${wordTimes(needed.chanceNeeded, say)}`,
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
  idle: 'What you do not lack comes with the set.',
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
