// Reorder list: its English, in names of columns and in cells. In: sums as text. Out: text.
import type { OrderedPot } from '../../model/order.js';
import type { Container } from '../../model/words.js';
import { formOf } from '../words/form-of.js';
import { sharedWords } from '../words/words.js';

export const reorderWords = {
  /** As reorder.csv has them; worksheets begin each with a capital. */
  columns: {
    for: 'for',
    entry: 'entry',
    shop: 'shop',
    offer: 'offer',
    paint: 'paint',
    sizeMl: 'size ml',
    container: 'container',
    pots: 'pots in all',
    offers: 'how many',
    inIt: 'what is in it',
    bought: 'bought',
    price: 'price',
    cost: 'cost',
    currency: 'currency',
    code: 'code',
    coversMl: 'covers ml',
    overMl: 'left over ml',
    missingMl: 'missing ml',
    needed: 'needed',
    date: 'plan of',
    note: 'note',
  },
  whom: { army: 'army', shelf: 'shelf', both: 'both' },
  entries: {
    pot: 'pot',
    goods: 'goods',
    postage: 'postage',
    shopTotal: 'shop total',
    total: 'total',
    noShop: 'without a shop',
    waits: 'waits',
  },
  /** `Oat, 2 droppers of 17 ml` */
  inIt: ({
    paint,
    count,
    container,
    sizeMl,
  }: Pick<OrderedPot, 'paint' | 'count' | 'container' | 'sizeMl'>): string =>
    `${paint}, ${count} ${formOf(count, ...sharedWords.containers[container])} of ${sizeMl} ml`,
  container: (of: Container): string => sharedWords.containers[of][0],
  /** Where the pot of a row without a shop comes from. */
  alike: {
    yours: 'another like yours, at the price last paid; in no total',
    unpriced: 'another like yours, without a price',
    usual: 'never owned: the usual size, without a price',
  },
  /** Worksheets beside those of the shops. */
  sheets: { sums: 'sums', leftOut: 'in no order' },

  notProved: (above: string): string =>
    `not proved to be the cheapest: at most ${above} above the best possible`,
  belowLeastOrder: (least: string): string => `below this shop's least order of ${least}`,
  travelsFree: "together with the army's order the goods travel free",
};
