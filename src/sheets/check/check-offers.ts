// Checks: the offers sheet. In: its rows, the paints. Out: offers, the rows of a set under one price.

import { groupBy } from '../../model/group-by.js';
import type { Offer, OfferPot, Paint } from '../../model/sheets.js';
import type { Container } from '../../model/words.js';
import { foldName } from './fold-name.js';
import type { NameBook } from './keep-names.js';
import { pickContainer } from './pick-container.js';
import { type PricedOffer, questionPrices } from './question-prices.js';
import { rightCheckDigit } from './read-cell/read-code.js';
import type { RowIn, SheetOf } from './read-rows.js';
import { whatIsKnown } from './what-is-known.js';

export type OfferSheet = SheetOf<'offers'>;
type Row = RowIn<'offers'>;

interface Beside {
  readonly paintBook: NameBook;
  readonly shopBook: NameBook;
  readonly paints: ReadonlyMap<string, Paint>;
}

/** One offer for each shop and offer name, in the order of their first rows. */
export function checkOffers(sheet: OfferSheet, beside: Beside): readonly Offer[] {
  const isNew = firstByCells();
  for (const row of sheet.rows) if (isNew(row)) checkRow(sheet, row);
  const sets = groupSets(sheet.rows);
  const isNewInSet = firstByCells();
  for (const rows of sets) if (rows.filter((row) => isNewInSet(row)).length > 0) checkSet(sheet, rows);
  const unlimited = sets.filter((rows) =>
    rows.every((row) => row.available === undefined && !row.bad.includes('available')),
  );
  sheet.useBlank('available', unlimited.length);
  const offers = sets.map((rows) => ({ rows, offer: offerOf(rows, beside) }));
  const isNewPrice = firstByCells();
  const priced = offers.filter(({ rows, offer }) => isNewPrice(rows[0], offer?.pots[0]?.container));
  questionPrices(priced.flatMap(({ rows, offer }) => pricedOffer(sheet, rows, offer) ?? []));
  return offers.flatMap(({ offer }) => offer ?? []);
}

/** Whether a row is the first of those that come from one written row, which a range makes several of; or the first in its container. */
function firstByCells(): (row: Row | undefined, container?: Container) => boolean {
  const seen = new Map<unknown, Set<Container | undefined>>();
  return (row, container) => {
    const before = seen.get(row?.cells) ?? new Set();
    seen.set(row?.cells, before);
    return before.size < before.add(container).size;
  };
}

/** Undefined for a set of several kinds of container, and for one of which not all could be read. */
function pricedOffer(
  sheet: OfferSheet,
  rows: readonly Row[],
  offer: Offer | undefined,
): PricedOffer | undefined {
  const priced = rows.find(({ price }) => price !== undefined);
  const [first, ...others] = offer?.pots ?? [];
  if (offer === undefined || first === undefined || priced === undefined) return undefined;
  const isAlike = others.every(({ container }) => container === first.container);
  if (!isAlike || offer.priceMinor === 0 || offer.pots.length < rows.length) return undefined;
  const ml = offer.pots.reduce((sum, { sizeMl, count }) => sum + sizeMl * count, 0);
  return {
    container: first.container,
    minorPerMl: offer.priceMinor / ml,
    tell: (expected) => sheet.blame('price-out-of-line', priced, 'price', { expected }),
  };
}

function checkRow(sheet: OfferSheet, row: Row): void {
  const right = row.code === undefined ? undefined : rightCheckDigit(row.code);
  if (right !== undefined) sheet.blame('wrong-check-digit', row, 'code', { expected: String(right) });
  if (row.price === 0) sheet.blame('offer-for-nothing', row, 'price');
}

/** Rows without a shop or an offer name are told already and belong to no set. */
function groupSets(rows: readonly Row[]): Row[][] {
  const sets = groupBy(rows, ({ shop, offer }) =>
    shop === undefined || offer === undefined ? undefined : `${foldName(shop)}\n${foldName(offer)}`,
  );
  return [...sets.values()];
}

function checkSet(sheet: OfferSheet, rows: readonly Row[]): void {
  const [first] = rows;
  const priced = rows.filter(({ price }) => price !== undefined);
  const unread = rows.some(({ bad }) => bad.includes('price'));
  if (priced.length === 0 && first !== undefined && !unread && sheet.has('price')) {
    sheet.blame('offer-without-price', first, 'price', { found: sheet.text(first, 'offer') });
  }
  const [firstPriced, ...again] = priced;
  for (const row of again) {
    if (firstPriced === undefined) break;
    const before = sheet.rowName(firstPriced);
    if (row.price === firstPriced.price)
      sheet.blame('offer-price-repeated', row, 'price', { expected: before });
    else {
      const expected = `"${sheet.text(firstPriced, 'price')}" in ${before}`;
      sheet.blame('offer-two-prices', row, 'price', { expected });
    }
  }
  const [limit, ...limits] = rows.filter(({ available }) => available !== undefined);
  for (const row of limits) {
    if (limit === undefined || row.available === limit.available) continue;
    const expected = `"${limit.available}" in ${sheet.rowName(limit)}`;
    sheet.blame('offer-two-limits', row, 'available', { expected });
  }
}

function offerOf(rows: readonly Row[], beside: Beside): Offer | undefined {
  const [first] = rows;
  const priceMinor = rows.find(({ price }) => price !== undefined)?.price;
  const available = rows.find((row) => row.available !== undefined)?.available;
  if (first?.shop === undefined || first.offer === undefined || priceMinor === undefined) return undefined;
  return {
    row: first.row,
    shop: beside.shopBook.find(first.shop) ?? first.shop,
    offer: first.offer,
    priceMinor,
    ...whatIsKnown({ available }),
    pots: rows.flatMap((row) => potOf(row, beside) ?? []),
  };
}

function potOf(row: Row, { paintBook, paints }: Beside): OfferPot | undefined {
  const { sizeMl, pots, container, code } = row;
  const paint = row.paint === undefined ? undefined : paintBook.find(row.paint);
  if (paint === undefined || sizeMl === undefined || pots === undefined) return undefined;
  return {
    paint,
    sizeMl,
    count: pots,
    container: container ?? pickContainer(sizeMl, paints.get(paint)?.kind),
    ...whatIsKnown({ code }),
  };
}
