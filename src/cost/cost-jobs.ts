// Cost: the cost of use of each job. In: a job, prices per ml, extras. Out: exact amounts per line, figure and job.
import { type ExactMinor, exactMinor, sumMinor, zeroMinor } from '../model/money.js';
import type { Amount, JobCost } from '../model/plan.js';
import type { Extra } from '../model/sheets.js';
import type { Job, Line } from '../model/work.js';
import type { PaintPrice } from './price-paints.js';

export const nothing: Amount = { exactMinor: zeroMinor, atLeast: false };

/** Exact sum of amounts; `at least` where one of them is. */
export function addAmounts(amounts: readonly Amount[]): Amount {
  return {
    exactMinor: sumMinor(amounts.map((amount) => amount.exactMinor)),
    atLeast: amounts.some(({ atLeast }) => atLeast),
  };
}

export const timesAmount = ({ exactMinor: each, atLeast }: Amount, times: number): Amount => ({
  exactMinor: each.times(times),
  atLeast,
});

/** What the extras cost per figure: the price of each over the figures that one serves. */
export function extrasPerFigure(extras: readonly Extra[]): ExactMinor {
  return sumMinor(extras.map(({ priceMinor, serves }) => exactMinor(priceMinor).div(serves)));
}

/** Cost of paint put out at a paint's price; what has no price counts nothing and makes the amount `at least`. */
export function costOfPaint(ml: number, price: PaintPrice | undefined): Amount {
  const perMl = price?.perMl;
  const pricedShare = price?.pricedShare ?? 0;
  const exact = perMl === undefined ? zeroMinor : perMl.times(ml).times(pricedShare);
  return { exactMinor: exact, atLeast: ml > 0 && pricedShare < 1 };
}

/** Every line, one figure, the whole job and what is still to be done; extras while a step remains. */
export function costJob(job: Job, prices: ReadonlyMap<string, PaintPrice>, extras: ExactMinor): JobCost {
  const known = new Map<Line, Amount>();
  const costOf = (line: Line): Amount => {
    const cost = known.get(line) ?? costOfPaint(line.putOutMl, prices.get(line.paint));
    known.set(line, cost);
    return cost;
  };
  const lines = job.lines.map(costOf);
  const extrasEach: Amount = { exactMinor: extras, atLeast: false };
  const extrasAll = timesAmount(extrasEach, job.count);
  const whole = addAmounts([...lines, extrasAll]);
  const remainingLines = job.remaining.map(costOf);
  return {
    lines,
    remainingLines,
    extrasPerFigure: extrasEach,
    whole,
    perFigure: { exactMinor: whole.exactMinor.div(job.count), atLeast: whole.atLeast },
    remaining: addAmounts(job.unfinished ? [...remainingLines, extrasAll] : remainingLines),
  };
}
