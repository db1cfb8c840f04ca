// Comparing: offers and shops as rows of facts. In: a market. Out: rows by name; money in minor units, '' where a cell is blank.
import type { Offer } from '../model/sheets.js';
import type { Compared } from './pick-plan.js';

export type Fact = string | number;
/** Columns of a row. */
export type Facts = Readonly<Record<string, Fact>>;
export type Rows = ReadonlyMap<string, Facts>;

type Market = NonNullable<Compared['market']>;

/** What is money in these sheets. */
export const moneyColumns: ReadonlySet<string> = new Set(['price', 'postage', 'free from', 'least order']);

/** By shop and offer. */
export const listOffers = ({ offers }: Market): Rows =>
  new Map(
    offers.map((offer) => [
      `${offer.shop}, ${offer.offer}`,
      { price: offer.priceMinor, available: offer.available ?? '', pots: wordHeld(offer) },
    ]),
  );

/** `2 x 17 ml Oat (dropper)`, and what else is in a set, by name. */
const wordHeld = ({ pots }: Offer): string =>
  pots
    .map(({ count, sizeMl, paint, container }) => `${count} x ${sizeMl} ml ${paint} (${container})`)
    .sort()
    .join(', ');

export const listShops = ({ shops }: Market): Rows =>
  new Map(
    [...shops.values()].map(({ shop, postageMinor, freeFromMinor, leastOrderMinor }) => [
      shop,
      { postage: postageMinor, 'free from': freeFromMinor ?? '', 'least order': leastOrderMinor ?? '' },
    ]),
  );
