// Checks: prices. In: a cell, the currency of the settings sheet. Out: whole minor units, or a mistake.
import { minorDigits, priceToMinor } from '../../../model/money.js';
import { giftWords } from '../../columns/choice-words.js';
import { headerKey } from '../../match-header.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { decimalOf } from './parse-number.js';

/** In minor units: a million of a currency with cents. */
const dearestMinor = 100_000_000;
const sign = '([^\\d.,+\\-\\u2212\\s]{0,6})';
const shape = new RegExp(
  `^${sign}\\s*([+\\-\\u2212]?)\\s*${sign}\\s*([\\d.,'’\\u2009\\u00a0\\u202f ]+?)\\s*${sign}$`,
);
const longest = 40;

/** How prices are read; without a currency (its setting is wrong) any number of digits passes. */
export interface PriceTerms {
  readonly currency: string | undefined;
  readonly locale: string;
}

/** What every price of a run is read by; each part is made when the first price asks for it. */
interface Reading {
  readonly currency: string | undefined;
  readonly ownSigns: () => ReadonlySet<string>;
  /** What the locale puts between thousands. */
  readonly groupMark: () => string;
}

/**
 * A price of 0 or more in whole minor units. Its sign may stand before or after the number: the code, or a sign
 * by which English or the locale of the settings knows the currency (`$` for every dollar). Any other currency is a
 * mistake, as is a price with more digits than the currency has. In a currency of three digits `2.942` is no thousands,
 * unless the locale writes those so.
 */
export function priceKind({ currency, locale }: PriceTerms): CellKind<number> {
  const ownSigns = once(() => signsOf({ currency, locale }));
  const reading: Reading = { currency, ownSigns, groupMark: once(() => groupMarkIn(locale)) };
  return {
    noun: 'a price',
    takesUnit: true,
    read: (cell) => readPrice(cell, reading),
    ...(currency === undefined ? {} : { money: { currency, isOwn: (sign) => ownSigns().has(sign) } }),
  };
}

/** Until the settings are read nobody knows a currency. */
export const anyPrice = priceKind({ currency: undefined, locale: 'en' });

const gifts: ReadonlySet<string> = new Set(giftWords.split(', ').map(headerKey));

/** What was paid: a price, or `gift`, of which nobody knows the worth. */
export const paidKind = (price: CellKind<number>): CellKind<number | 'gift'> => ({
  ...price,
  read: (cell) => {
    const isGift = typeof cell === 'string' && cell.length <= longest && gifts.has(headerKey(cell));
    return isGift ? 'gift' : price.read(cell);
  },
});

function readPrice(cell: Written, reading: Reading): number | Mistake {
  const { currency } = reading;
  const text = typeof cell === 'string' ? partPrice(cell, reading) : cell;
  if (text instanceof Mistake) return text;
  const decimal = threeDecimals(text, reading) ?? decimalOf(text);
  if (decimal === undefined) return notAPrice(currency);
  if (decimal instanceof Mistake) return decimal;
  const value = Number(decimal);
  if (value < 0) return new Mistake('negative', 'a price');
  if (value >= dearestMinor) return tooDear();
  if (currency === undefined) return asIfInCents(value);
  const minor = priceToMinor(decimal, currency);
  if (minor === undefined) return new Mistake('too-fine', currency);
  return minor > dearestMinor ? tooDear() : minor;
}

/** The number of `2.942` in a currency of as many digits; undefined where it may be thousands. */
function threeDecimals(text: Written, { currency, groupMark }: Reading): string | undefined {
  if (currency === undefined || minorDigits(currency) !== 3 || typeof text !== 'string') return undefined;
  const [, whole, mark, fraction] = /^(-?\d+)([.,])(\d{3})$/.exec(text) ?? [];
  return whole === undefined || mark === groupMark() ? undefined : `${whole}.${fraction}`;
}

const groupMarkIn = (locale: string): string =>
  new Intl.NumberFormat(locale).formatToParts(1_234_567).find(({ type }) => type === 'group')?.value ?? '';

/** Of no known currency: only its order among other prices, and whether it is 0, can be told. */
const asIfInCents = (value: number): number => (value === 0 ? 0 : Math.max(1, Math.round(value * 100)));

const tooDear = (): Mistake => new Mistake('too-much', 'any price in this trade');
const notAPrice = (currency: string | undefined): Mistake =>
  new Mistake(
    'not-a-price',
    currency !== undefined && priceToMinor('3.5', currency) === undefined ? '350' : '3.50',
  );

/** The number of a price without its currency sign. */
function partPrice(written: string, { currency, ownSigns }: Reading): string | Mistake {
  const [, before = '', minus = '', between = '', digits, after = ''] =
    (written.length <= longest && shape.exec(written)) || [];
  if (digits === undefined) return notAPrice(currency);
  const signs = [before, between, after].filter((one) => one !== '').map((one) => one.toLowerCase());
  const foreign = currency === undefined ? undefined : signs.find((one) => !ownSigns().has(one));
  if (foreign === undefined) return minus + digits;
  return isCurrencySign(foreign) ? new Mistake('other-currency', currency) : notAPrice(currency);
}

function signsOf({ currency, locale }: PriceTerms): ReadonlySet<string> {
  if (currency === undefined) return new Set();
  const shown = ['en', locale].flatMap((tag) => [
    signIn(tag, currency, 'symbol'),
    signIn(tag, currency, 'narrowSymbol'),
  ]);
  return new Set([currency, ...shown].map((one) => one.toLowerCase()));
}

function signIn(locale: string, currency: string, currencyDisplay: 'symbol' | 'narrowSymbol'): string {
  const parts = new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay }).formatToParts(
    1,
  );
  return parts.find(({ type }) => type === 'currency')?.value ?? currency;
}

const everySign = once(
  () =>
    new Set(
      Intl.supportedValuesOf('currency').flatMap((code) =>
        [code, signIn('en', code, 'narrowSymbol')].map((one) => one.toLowerCase()),
      ),
    ),
);

/** Whether any currency has that code or sign, in small letters. */
export const isCurrencySign = (text: string): boolean => /^\p{Sc}$/u.test(text) || everySign().has(text);

/** Intl is slow to start, and most sheets name no currency beside a price. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
