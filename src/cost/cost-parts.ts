// Cost: the cost of use by zone and by layer. In: jobs with their units, prices per ml. Out: exact amounts by name.
import { type Amount, addAmounts } from '../model/money.js';
import type { Estimate, Line } from '../model/work.js';
import { costOfPaint } from './cost-jobs.js';
import type { PaintPrice } from './price-paints.js';

/**
 * What the work still to be done costs in paint, by whatever names a line's part: its zone, its layer. Parts come in
 * the order in which they are first met, and add up to the paint of the whole. No work left gives no parts.
 */
export function costParts(
  jobs: Estimate['jobs'],
  prices: ReadonlyMap<string, PaintPrice>,
  partOf: (line: Line) => string,
): Map<string, Amount> {
  // Millilitres first: then each paint of a part is one exact product, however many lines lie behind it.
  const mlOf = new Map<string, Map<string, number>>();
  for (const [job, units] of jobs) {
    for (const line of job.remaining) {
      const paints = mlOf.get(partOf(line)) ?? new Map<string, number>();
      mlOf.set(partOf(line), paints);
      paints.set(line.paint, (paints.get(line.paint) ?? 0) + line.putOutMl * units);
    }
  }
  return new Map(
    [...mlOf].map(([part, paints]) => [
      part,
      addAmounts([...paints].map(([paint, ml]) => costOfPaint(ml, prices.get(paint)))),
    ]),
  );
}
