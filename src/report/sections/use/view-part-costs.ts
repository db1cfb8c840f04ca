// Report view: costs of parts of a whole, rounded so that they add up. In: amounts by name. Out: words by name.
import { at } from '../../../model/at.js';
import { type Amount, roundMinor, splitWhole, sumMinor } from '../../../model/money.js';
import type { NumberWords } from '../../words/word-numbers.js';

export interface PartCosts {
  /** A part that has no amount is ''. */
  readonly of: (name: string) => string;
  readonly total: string;
}

/** Each amount in whole minor units by largest remainder, with "at least" where part of it has no price. */
export function viewPartCosts(amounts: ReadonlyMap<string, Amount>, words: NumberWords): PartCosts {
  const all = [...amounts.values()];
  const totalMinor = roundMinor(sumMinor(all.map(({ exactMinor }) => exactMinor)));
  const parts = splitWhole(
    totalMinor,
    all.map(({ exactMinor }) => exactMinor.toNumber()),
  );
  const texts = new Map(
    [...amounts].map(([name, { atLeast, exactMinor }], index) => [
      name,
      words.pricedPart(at(parts, index), atLeast, exactMinor.toNumber()),
    ]),
  );
  return {
    of: (name) => texts.get(name) ?? '',
    total: words.priced(
      totalMinor,
      all.some(({ atLeast }) => atLeast),
    ),
  };
}
