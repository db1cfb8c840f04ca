// Checks: offers whose price is far from what others like them cost. In: what a millilitre costs in each. Out: nothing;
// the ones that are out of line are told.
import type { Container } from '../../model/words.js';

export interface PricedOffer {
  readonly container: Container;
  /** Of the label, in minor units; above 0. */
  readonly minorPerMl: number;
  /** Takes what is wrong in words: `30 times what is usual among your offers in a dropper`. */
  readonly tell: (outOfLine: string) => void;
}

/** Of fewer offers in one kind of container, nobody knows what is usual. */
const leastOffers = 5;

/** A lost decimal point makes a hundred, a missing nought ten; between the dearest and the cheapest paint lie ten. */
const mostTimes = 20;

/** Tells each offer that asks more than 20 times, or less than a twentieth, of the median in its kind of container. */
export function questionPrices(offers: readonly PricedOffer[]): void {
  for (const container of new Set(offers.map((offer) => offer.container))) {
    const alike = offers.filter((offer) => offer.container === container);
    if (alike.length < leastOffers) continue;
    const usual = medianOf(alike.map(({ minorPerMl }) => minorPerMl));
    for (const { minorPerMl, tell } of alike) {
      const times = minorPerMl / usual;
      const what = `what is usual among your offers in a ${container}`;
      if (times > mostTimes) tell(`${Math.round(times)} times ${what}`);
      else if (1 / times > mostTimes) tell(`1/${Math.round(1 / times)} of ${what}`);
    }
  }
}

function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const above = sorted[sorted.length >> 1] ?? 0;
  const below = sorted[(sorted.length - 1) >> 1] ?? 0;
  return (above + below) / 2;
}
