// Report view: how plan.json writes numbers, chances and money. In: those of the plan. Out: at most six digits after the point,
// money as decimal strings.
import { type Amount, type ExactMinor, toMajor } from '../../model/money.js';
import type { Chance } from '../../model/ranges.js';

/** Digits after the point of volumes and areas, of costs of use and of what is given per figure or per ml. */
const useDigits = 6;

/** So many digits after the point. */
export const roundTo = (digits: number, value: number): number =>
  Math.round(value * 10 ** digits) / 10 ** digits;

/** Six digits after the point, which is far below what any area or volume means. */
export const roundNumber = (value: number): number => roundTo(useDigits, value);

/** The same for each number of an object; all else stays. */
export const roundNumbers = <Fields extends object>(fields: Fields, digits = useDigits): Fields => {
  const rounded = Object.entries(fields).map(([key, value]) => [
    key,
    typeof value === 'number' ? roundTo(digits, value) : value,
  ]);
  return Object.fromEntries(rounded) as Fields;
};

/** A chance by its name, and its standard error behind it. */
export const describeChance = <Name extends string>(name: Name, { chance, error }: Chance) =>
  ({ [name]: roundNumber(chance), [`${name}Error`]: roundNumber(error) }) as Record<
    Name | `${Name}Error`,
    number
  >;

/** How money of a currency is written. */
export interface Money {
  /** What is paid, from minor units. */
  readonly cash: (minor: number | ExactMinor) => string;
  /** The same; null where there is none. */
  readonly maybeCash: (minor: number | undefined) => string | null;
  /** A cost of use, from an exact amount of minor units. */
  readonly cost: (amount: ExactMinor) => string;
  /** The same, and whether something in it has no price. */
  readonly useCost: (of: Amount) => { readonly useCost: string; readonly atLeast: boolean };
}

export const moneyIn = (currency: string): Money => {
  const cash = (minor: number | ExactMinor): string => toMajor(minor, currency);
  const cost = (amount: ExactMinor): string => toMajor(amount, currency, useDigits);
  return {
    ...{ cash, cost },
    maybeCash: (minor) => (minor === undefined ? null : cash(minor)),
    useCost: ({ exactMinor, atLeast }) => ({ useCost: cost(exactMinor), atLeast }),
  };
};
