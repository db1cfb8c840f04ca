// Report view: numbers as text. In: the painter's locale and currency, raw amounts. Out: words, rounded once.
import { at } from '../../model/at.js';
import { type Amount, minorDigits, roundMinor, splitWhole, toMajor } from '../../model/money.js';
import type { Settings } from '../../model/sheets.js';
import { formOf } from './form-of.js';
import { sharedWords } from './words.js';

export interface Numerals {
  readonly decimal: string;
  /** The digits from 0 to 9. */
  readonly digits: string;
}

/** How CSV is written where the painter sits. */
export interface CsvMarks {
  readonly decimal: '.' | ',';
  readonly delimiter: ',' | ';';
}

/** Ways to say a number; every rounding of the report happens in one of them. */
export interface NumberWords {
  /** Whole minor units with the currency's own digits (ISO 4217, which Intl does not always follow). */
  money(minor: number): string;
  /** A sum that is no more than likely: without cents from ten on, e.g. `€0.64`, `€149`. */
  about(minor: number): string;
  /** Whole minor units in major ones, without the currency: for axes. */
  major(minor: number): string;
  /** Rounded half up, under half of the last digit `under €0.01`; "at least" where something in it had no price, "unpriced" where nothing had one. */
  amount(of: Amount): string;
  /** As `amount`, but with a rounded sum that is already known, e.g. a part of a split total. */
  priced(minor: number, atLeast: boolean): string;
  /** As `priced`, of a part whose share of the whole's cents may be none though it costs something: `under €0.01`. */
  pricedPart(minor: number, atLeast: boolean, exact: number): string;
  /** Parts of a whole, by largest remainder so that they add up to it; a part that is not there is ''. */
  split(whole: Amount, parts: readonly (Amount | undefined)[]): string[];
  /** `12.3 ml`; digits as `mlDigits` of the same volume unless told. Under the last digit: `under 0.01 ml`. */
  ml(volumeMl: number, digits?: number): string;
  /** For sentences: a digit below ten, else whole; litres from a thousand. */
  aboutMl(volumeMl: number): string;
  /** The same without the unit, for columns that name it. */
  bareMl(volumeMl: number, digits?: number): string;
  /** A whole number, grouped. */
  count(of: number): string;
  /** A share of 1 as whole percent; a trace is `under 1%`, nearly all `over 99%`. */
  percent(share: number): string;
  /** How sure a promise is asked for, in per cent as the painter wrote it: `80%`, `82.5%`. */
  sure(percent: number): string;
  /** A share of 1 as percent with one digit after the point. */
  finePercent(share: number): string;
  /** Any number, to one digit after the point. */
  tenth(value: number): string;
  /** Any number, with as many digits as it has, three after the point at most. */
  plain(value: number): string;
}

const space = '\u00a0';

export function numberWords({ locale, currency }: Pick<Settings, 'locale' | 'currency'>): NumberWords {
  const digits = minorDigits(currency);
  const moneyFormat = new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  const plainFormat = new Intl.NumberFormat(locale, { maximumFractionDigits: 3 });
  const percentFormat = new Intl.NumberFormat(locale, { style: 'percent' });
  const finePercentFormat = new Intl.NumberFormat(locale, { style: 'percent', minimumFractionDigits: 1 });
  const sureFormat = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 2 });
  const mlFormats = [0, 1, 2, 3].map((of) => fixedFormat(locale, of));

  const money = (minor: number): string => moneyFormat.format(toMajor(minor, currency) as `${number}`);
  const priced = (minor: number, atLeast: boolean): string => {
    if (!atLeast) return money(minor);
    return minor === 0 ? sharedWords.unpriced : sharedWords.atLeast(money(minor));
  };
  const pricedPart = (minor: number, atLeast: boolean, exact: number): string =>
    minor === 0 && exact > 0 ? sharedWords.under(money(1)) : priced(minor, atLeast);
  const bareMl = (volumeMl: number, of = mlDigits(volumeMl)): string => {
    const format = mlFormats[of] ?? plainFormat;
    const least = 10 ** -of;
    return volumeMl > 0 && volumeMl < least / 2
      ? sharedWords.under(format.format(least))
      : format.format(volumeMl);
  };
  return {
    money,
    about: wordAbout({ locale, currency }, money),
    major: (minor) => plainFormat.format(minor / 10 ** digits),
    priced,
    pricedPart,
    amount: ({ exactMinor, atLeast }) => pricedPart(roundMinor(exactMinor), atLeast, exactMinor.toNumber()),
    split: (whole, parts) => {
      const exact = parts.map((part) => part?.exactMinor.toNumber() ?? 0);
      const minors = splitWhole(roundMinor(whole.exactMinor), exact);
      return parts.map((part, index) =>
        part === undefined ? '' : pricedPart(at(minors, index), part.atLeast, at(exact, index)),
      );
    },
    ml: (volumeMl, of) => `${bareMl(volumeMl, of)}${space}ml`,
    aboutMl: (volumeMl) =>
      volumeMl >= 999.5
        ? `${plainFormat.format(Math.round(volumeMl / 100) / 10)}${space}l`
        : `${bareMl(volumeMl, aboutDigits(volumeMl))}${space}ml`,
    bareMl,
    count: (of) => plainFormat.format(of),
    percent: (share) => wordPercent(percentFormat, share),
    sure: (percent) => sureFormat.format(percent / 100),
    finePercent: (share) => finePercentFormat.format(share),
    tenth: (value) => plainFormat.format(Math.round(value * 10) / 10),
    plain: (value) => plainFormat.format(value),
  };
}

/** Without cents from ten major units on. */
function wordAbout(
  { locale, currency }: Pick<Settings, 'locale' | 'currency'>,
  money: NumberWords['money'],
): NumberWords['about'] {
  const digits = minorDigits(currency);
  const whole = new Intl.NumberFormat(locale, { style: 'currency', currency, maximumFractionDigits: 0 });
  return (minor) => {
    const isLarge = Math.round(minor) >= 10 ** (digits + 1);
    return isLarge ? whole.format(minor / 10 ** digits) : money(Math.round(minor));
  };
}

function fixedFormat(locale: string, digits: number): Intl.NumberFormat {
  return new Intl.NumberFormat(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits });
}

function wordPercent(format: Intl.NumberFormat, share: number): string {
  if (share > 0 && share < 0.005) return sharedWords.under(format.format(0.01));
  if (share < 1 && share >= 0.995) return sharedWords.over(format.format(0.99));
  return format.format(share);
}

/** The decimal mark and the digits of the painter's locale. */
export function wordNumerals({ plain }: NumberWords): Numerals {
  const digits = Array.from({ length: 10 }, (_, digit) => plain(digit)).join('');
  const mark = [...plain(1.5)].find((letter) => !digits.includes(letter));
  return { decimal: mark ?? '.', digits };
}

/** As spreadsheet programs there write CSV: where the decimal mark is a comma, semicolons part the cells. Digits stay 0 to 9. */
export function csvMarks(words: NumberWords): CsvMarks {
  return wordNumerals(words).decimal === ','
    ? { decimal: ',', delimiter: ';' }
    : { decimal: '.', delimiter: ',' };
}

/** Digits after the point for a volume: 0 from a litre on, 1 from a millilitre, else 2. */
export function mlDigits(volumeMl: number): number {
  if (volumeMl >= 1000) return 0;
  return volumeMl >= 1 || volumeMl === 0 ? 1 : 2;
}

/** Digits after the point for a volume in a sentence: 0 from ten on, 1 below, 2 for a trace. */
export function aboutDigits(volumeMl: number): number {
  if (volumeMl >= 9.95) return 0;
  return volumeMl >= 0.095 || volumeMl === 0 ? 1 : 2;
}

/** So little that it is not said. */
export const isTraceMl = (volumeMl: number): boolean => Math.abs(volumeMl) < 0.005;

/** `1 paint`, `3 paints`; the number is worded by the caller's locale. */
export const countOf = (words: NumberWords, count: number, one: string, many = `${one}s`): string =>
  `${words.count(count)} ${formOf(count, one, many)}`;

const lists = {
  and: new Intl.ListFormat('en-GB'),
  or: new Intl.ListFormat('en-GB', { type: 'disjunction' }),
};

/** Names of a list; the rest is counted. */
const mostNamed = 5;

/** `a`, `a and b`, `a, b and c`; more than `most` names end in "and 4 more". Of none: ''. */
export const listOf = (names: readonly string[], most = mostNamed): string =>
  lists.and.format(cutTo(names, most));

/** The same after a "no": `a`, `a or b`, `a, b or c`. */
export const listOr = (names: readonly string[]): string => lists.or.format(cutTo(names, mostNamed));

const cutTo = (names: readonly string[], most: number): readonly string[] =>
  names.length > most ? [...names.slice(0, most), sharedWords.rest(names.length - most)] : names;

/** Splits `2026-10-05` into words of the page's language: `5 October 2026`. The clock is not asked. */
export function wordDate(iso: string, lang: string): string {
  const date = new Date(`${iso}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return iso;
  return new Intl.DateTimeFormat(lang, { dateStyle: 'long', timeZone: 'UTC' }).format(date);
}
