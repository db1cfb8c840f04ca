// Model: which pot is used first. In: pots of one paint. Out: the same in the order in which they are used up.
import type { Pot } from './sheets.js';

/** Pots opened first (oldest opening first, then those begun without a date), then unopened, then those on their way. */
export function sortPots(pots: readonly Pot[]): Pot[] {
  return [...pots].sort((a, b) => rank(a) - rank(b) || compareDays(opened(a), opened(b)) || a.row - b.row);
}

function rank(pot: Pot): number {
  if (pot.ordered) return 2;
  return isBegun(pot) ? 0 : 1;
}

/** A pot with an opening date, or from which something is missing. */
function isBegun({ openedOn, left, sizeMl }: Pot): boolean {
  if (openedOn !== undefined || left.how === 'weighed') return true;
  return left.how === 'by eye' ? left.share < 1 : left.ml < sizeMl;
}

/** A pot without a day comes after those with. */
const opened = (pot: Pot): string => pot.openedOn ?? '9999';

/** ISO dates sort as text; asking a language for the order of letters takes eight milliseconds. */
const compareDays = (a: string, b: string): number => Number(a > b) - Number(a < b);
