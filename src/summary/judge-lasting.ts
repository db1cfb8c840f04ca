// Summary: whether today's pots last. In: stock, ranges, the work left. Out: a verdict and the paints that decide it.

import type { PlanResults } from '../model/plan.js';
import type { Chance, Doubt, Ranges } from '../model/ranges.js';
import type { PaintStock, StockState } from '../model/stock.js';
import { isNeeded, type Lasting, type Verdict } from '../model/summary.js';
import type { Trust } from '../model/work.js';
import { type Doubts, mergeDoubts, noDoubts, trustOf } from './doubts.js';
import type { SummedWork } from './sum-work.js';
import { tellReach } from './tell-reach.js';

interface Inputs extends Pick<PlanResults, 'stock' | 'ranges' | 'demands' | 'reachMl'> {
  readonly work: SummedWork;
}

const statesByNeed: readonly StockState[] = ['none owned', 'short', 'tight', 'enough'];

export function judgeLasting({ stock, ranges, work, demands, reachMl }: Inputs): Lasting {
  const needed = stock.filter(({ paint }) => isNeeded(work, paint));
  const worstFirst = needed.toSorted(byChance(ranges));
  const byState = statesByNeed.map((state) => ({
    state,
    paints: worstFirst.filter((one) => one.state === state),
  }));
  const onWay = needed.filter(({ orderedMl }) => orderedMl > 0);
  return {
    verdict: needed.some(({ state }) => state === 'none owned') ? 'no' : verdictOf(ranges.chanceAllLast),
    states: byState.filter(({ paints }) => paints.length > 0),
    risky: listRisky(needed, ranges),
    onWayMl: onWay.reduce((sum, { orderedMl }) => sum + orderedMl, 0),
    onWayPaints: onWay.length,
    unusedLow: stock.filter(({ paint, runningLow }) => runningLow && !isNeeded(work, paint)),
    trust: trustSupply({ stock, ranges, work }, needed.length > 0 ? needed : stock),
    paintTrust: new Map(stock.map((one) => [one.paint, trustPaint(one, { ranges, work })])),
    reach: new Map(
      needed.map((one) => [one.paint, tellReach(one, demands, reachMl.get(one.paint) ?? one.haveMl)]),
    ),
  };
}

/** The doubt that the draws found greatest; without one that of its lines. */
function trustPaint({ paint, mark }: PaintStock, { ranges, work }: Pick<Inputs, 'ranges' | 'work'>): Trust {
  const doubts = isNeeded(work, paint) ? work.paintDoubts.get(paint) : undefined;
  return leadBy(ranges.paints.get(paint)?.doubts[0], trustOf(doubts ?? noDoubts(), mark));
}

const leadBy = (found: Doubt | undefined, trust: Trust): Trust =>
  found === undefined ? trust : { ...trust, biggestDoubt: found.name };

/** Certain enough from nine in ten, as a paint is `enough`; below one in ten not worth hoping for. */
function verdictOf({ chance }: Chance): Verdict {
  if (chance >= 0.9) return 'yes';
  if (chance >= 0.5) return 'likely';
  return chance >= 0.1 ? 'hardly' : 'no';
}

const cover = ({ haveMl, needMl }: PaintStock): number => (needMl === 0 ? Infinity : haveMl / needMl);

/** The most likely to run short first; of those alike the least covered. */
const byChance =
  ({ paints }: Ranges) =>
  (a: PaintStock, b: PaintStock): number => {
    const chanceOf = ({ paint }: PaintStock): number => paints.get(paint)?.chanceShort.chance ?? 0;
    const byCover = cover(a) === cover(b) ? 0 : cover(a) - cover(b);
    return chanceOf(b) - chanceOf(a) || byCover;
  };

/** Under this chance of running short a paint decides nothing. */
const leastChance = 0.01;

function listRisky(needed: readonly PaintStock[], { paints }: Ranges): Lasting['risky'] {
  return needed
    .filter(({ state }) => state !== 'none owned')
    .flatMap(({ paint }) => {
      const chanceShort = paints.get(paint)?.chanceShort;
      return chanceShort === undefined || chanceShort.chance < leastChance ? [] : [{ paint, chanceShort }];
    })
    .sort((a, b) => b.chanceShort.chance - a.chanceShort.chance);
}

/** The doubt that the draws found greatest; without one that of the paints on which the verdict hangs. */
function trustSupply(
  { stock, ranges, work }: Pick<Inputs, 'stock' | 'ranges' | 'work'>,
  needed: readonly PaintStock[],
): Trust {
  const marks = needed.map(({ mark }) => mark);
  return leadBy(ranges.doubts[0], trustOf(doubtSupply(stock, work), ...marks));
}

/** The paints that are missing; else those that are tight; else all. */
function doubtSupply(stock: readonly PaintStock[], { doubts, paintDoubts }: SummedWork): Doubts {
  const missing = stock.filter(({ toBuyMl }) => toBuyMl > 0);
  const deciding = missing.length > 0 ? missing : stock.filter(({ state }) => state === 'tight');
  const theirs = deciding.flatMap(({ paint }) => paintDoubts.get(paint) ?? []);
  return theirs.length > 0 ? mergeDoubts(theirs) : doubts;
}
