// Report words: units' costs in whole minor units. In: exact sums. Out: parts that add up to the army's rounded sums.
import { at } from '../../model/at.js';
import type { CostSums } from '../../model/cost-sums.js';
import { roundMinor, splitWhole } from '../../model/money.js';

/** Whole minor units of one row. */
export interface RoundedUnit {
  readonly wholeMinor: number;
  readonly remainingMinor: number;
}

/**
 * Each column adds up to the army's. What is done already is split by itself, so that no unit has more left to use
 * than its whole scheme uses.
 */
export function roundUnits({ units, army }: CostSums): RoundedUnit[] {
  const remainingMinor = roundMinor(army.remaining.exactMinor);
  const doneMinor = roundMinor(army.whole.exactMinor) - remainingMinor;
  const remaining = splitWhole(
    remainingMinor,
    units.map((unit) => unit.remaining.exactMinor.toNumber()),
  );
  const done = splitWhole(
    doneMinor,
    units.map((unit) => unit.done.exactMinor.toNumber()),
  );
  return units.map((_, index) => ({
    wholeMinor: at(remaining, index) + at(done, index),
    remainingMinor: at(remaining, index),
  }));
}
