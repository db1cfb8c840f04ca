// Model: money. Prices are whole minor units (number); costs of use are exact decimals of minor units.
// In: prices, currency codes. Out: exact amounts, rounded half up only when asked.
import { Decimal as SharedDecimal } from 'decimal.js';

/** An exact number of minor units, e.g. 12.0833333 cents. */
export type ExactMinor = SharedDecimal;

/** Decimals of our own, 40 digits long: the shared ones keep their settings for others. */
const Decimal = SharedDecimal.clone({ precision: 40, rounding: SharedDecimal.ROUND_HALF_UP });

/** ISO 4217 currencies whose minor unit is not a hundredth. */
const minorDigitsByCurrency: ReadonlyMap<string, number> = new Map([
  ...'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'
    .split(' ')
    .map((code): [string, number] => [code, 0]),
  ...'BHD IQD JOD KWD LYD OMR TND'.split(' ').map((code): [string, number] => [code, 3]),
  ...'CLF UYW'.split(' ').map((code): [string, number] => [code, 4]),
]);

/** Digits after the point in a currency, by ISO 4217 (not by Intl, which differs for IQD and HUF). */
export function minorDigits(currency: string): number {
  return minorDigitsByCurrency.get(currency) ?? 2;
}

/** An exact amount from a number or a decimal string of minor units. */
export function exactMinor(value: number | string | ExactMinor): ExactMinor {
  return new Decimal(value);
}

export const zeroMinor: ExactMinor = new Decimal(0);

/** Exact sum; of nothing, zero. */
export function sumMinor(amounts: readonly ExactMinor[]): ExactMinor {
  return amounts.reduce((sum, amount) => sum.plus(amount), zeroMinor);
}

/** Rounded half up (away from zero) to whole minor units: 2478.5 gives 2479. */
export function roundMinor(amount: ExactMinor): number {
  return amount.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
}

/**
 * A written price in whole minor units, or undefined where it has more digits than the currency.
 * `priceToMinor('24.79', 'EUR')` is 2479.
 */
export function priceToMinor(price: string | number, currency: string): number | undefined {
  const minor = new Decimal(price).times(new Decimal(10).pow(minorDigits(currency)));
  return minor.isInteger() && minor.abs().lte(Number.MAX_SAFE_INTEGER) ? minor.toNumber() : undefined;
}

/**
 * Major units as a plain decimal string with `digits` after the point (the currency's own if left out), rounded
 * half up: `toMajor(1250, 'EUR')` is `12.50`.
 */
export function toMajor(
  minor: number | ExactMinor,
  currency: string,
  digits = minorDigits(currency),
): string {
  if (typeof minor === 'number' && digits === minorDigits(currency)) return placePoint(minor, digits);
  return new Decimal(minor)
    .times(minorUnits[minorDigits(currency)] as ExactMinor)
    .toFixed(digits, Decimal.ROUND_HALF_UP);
}

/** Of a major unit, by digits: powers are reckoned once, and times them no digit differs from a division. */
const minorUnits = [0, 1, 2, 3, 4].map((digits) => new Decimal(10).pow(-digits));

/** Whole minor units with the point set: nothing to round, so no decimals are needed. */
function placePoint(minor: number, digits: number): string {
  if (digits === 0) return String(minor);
  const text = String(Math.abs(minor)).padStart(digits + 1, '0');
  return `${minor < 0 ? '-' : ''}${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

/**
 * Splits a whole amount in proportion to `weights` by largest remainder (Hamilton), so that the parts add
 * up to it exactly. Ties go to the earlier part. All weights 0, or none: everything stays 0.
 * `splitWhole(1000, [1, 1, 1])` is [334, 333, 333].
 */
export function splitWhole(whole: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  if (sum <= 0) return weights.map(() => 0);
  const quotas = weights.map((weight) => (whole * weight) / sum);
  const shares = quotas.map((quota) => Math.floor(quota + 1e-9));
  const missing = whole - shares.reduce((total, share) => total + share, 0);
  const byRemainder = quotas
    .map((quota, index) => ({ index, remainder: Math.round((quota - (shares[index] ?? 0)) * 1e9) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  for (const { index } of byRemainder.slice(0, missing)) shares[index] = (shares[index] ?? 0) + 1;
  return shares;
}

/** An amount and whether something in it had no price: then the true sum is higher. */
export interface Amount {
  readonly exactMinor: ExactMinor;
  readonly atLeast: boolean;
}

/** Exact sum; `at least` where one of them is. */
export const addAmounts = (amounts: readonly Amount[]): Amount => ({
  exactMinor: sumMinor(amounts.map((amount) => amount.exactMinor)),
  atLeast: amounts.some(({ atLeast }) => atLeast),
});

export const timesAmount = ({ exactMinor: each, atLeast }: Amount, times: number): Amount => ({
  exactMinor: each.times(times),
  atLeast,
});

/** Prices in minor units added up; `at least` where one is not known. */
export const addPrices = (prices: readonly (number | undefined)[]): Amount => ({
  exactMinor: exactMinor(prices.reduce<number>((sum, price = 0) => sum + price, 0)),
  atLeast: prices.includes(undefined),
});
