// Order: who may search how long. In: the time of one order. Out: a solver for each kind of question that keeps to its share.
import type { Buying } from './choose-counts.js';
import { shareInTurn, shareSeconds } from './solver/share-seconds.js';

/**
 * What all searches of one kind may take together, in the time that one search for an order may take. For a promise the army's order
 * is searched for twice: what it takes, and the order for that. `levels`: promises beside the chosen way; `beside`: other ways to buy;
 * `paper`: later orders of all ways.
 */
const shares = {
  order: 1.25,
  levels: 1.2,
  beside: 0.3,
  paper: 0.25,
  reasons: 0.25,
  shelf: 0.25,
  stairs: 0.3,
  budget: 0.3,
  again: 0.15,
  primers: 0.1,
  frontier: 0.4,
} as const;

/** The time of a whole plan over that of one order. */
export const wholeOverOrder = Object.values(shares).reduce((sum, share) => sum + share, 0);

/**
 * For questions of one kind: however many are asked with what this gives, all searches together keep to their share.
 * They are asked one after the other, so that each has the same time left whatever goes on beside. Of the army's order alone is told
 * how far it is.
 */
export function sharing(kind: keyof typeof shares, { onProgress, ...buying }: Buying): Buying {
  const solve = shareSeconds(buying.solve, shares[kind] * buying.limits.seconds);
  return { ...buying, solve, ...(kind === 'order' && onProgress !== undefined ? { onProgress } : {}) };
}

/** What each of the questions that follow is left at the least, of the time of all: enough for a bound. */
const leastPart = 0.1;

/** For so many questions of one kind, asked one after the other. */
export function sharingInTurn(kind: keyof typeof shares, buying: Buying, questions: number): Buying[] {
  const { onProgress: _, ...silent } = buying;
  const seconds = shares[kind] * buying.limits.seconds;
  const kept = Array.from({ length: questions }, (_, at) => (questions - 1 - at) * leastPart * seconds);
  return shareInTurn(buying.solve, seconds, kept).map((solve) => ({ ...silent, solve }));
}

/** For so many questions of one kind side by side, each its part. */
export function sharingEqually(kind: keyof typeof shares, buying: Buying, questions: number): Buying[] {
  const { onProgress: _, ...silent } = buying;
  const seconds = (shares[kind] * buying.limits.seconds) / questions;
  return Array.from({ length: questions }, () => ({ ...silent, solve: shareSeconds(buying.solve, seconds) }));
}
