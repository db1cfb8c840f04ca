// Bench: which steps share a card. In: the steps of a batch. Out: the same in groups that fit on A6.
import type { BenchStep } from '../../../model/bench.js';

/** Paints on one card: a step takes two or three lines of print, and so does each further paint of a mix. */
const mostRows = 12;

/** In order; a mix stays together. */
export function placeCards(steps: readonly BenchStep[]): BenchStep[][] {
  const cards: BenchStep[][] = [];
  let rows = mostRows;
  for (const step of steps) {
    if (rows + step.paints.length > mostRows) {
      cards.push([]);
      rows = 0;
    }
    cards.at(-1)?.push(step);
    rows += step.paints.length;
  }
  return cards;
}
