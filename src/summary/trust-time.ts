// Summary: how sure minutes are. In: the work left, the assumptions of time. Out: the weakest mark, the greatest doubt.
import type { Assumption } from '../model/assumption.js';
import type { Layer, Method } from '../model/words.js';
import type { Job, Trust } from '../model/work.js';
import { noDoubts, noteDoubt, trustOf } from './doubts.js';

/**
 * The weakest mark of what the work left rests on. The doubt is the method's pace or handling that most of it goes with:
 * pace weighs by the painted area, handling by the coats, each with how far it may lie off.
 */
export function trustTime(jobs: ReadonlyMap<Job, number>, assumptions: readonly Assumption[]): Trust {
  const known = new Map(assumptions.map((one) => [one.name, one]));
  const likelyOf = (name: string): number => known.get(name)?.likely ?? 0;
  const doubts = noDoubts();
  const note = (name: string, minutes: number): void => {
    const one = known.get(name);
    if (one === undefined || one.likely === 0) return;
    noteDoubt(doubts, { mark: one.mark, biggestDoubt: name }, (minutes * (one.high - one.low)) / one.likely);
  };
  for (const [method, ofLayers] of sumCoats(jobs)) {
    for (const [layer, { coats, paintedCm2 }] of ofLayers) {
      const painting = paintedCm2 * likelyOf(`${method} pace`) * likelyOf(`${layer} care`);
      note(`${method} pace`, painting);
      note(`${layer} care`, painting);
      note(`${method} handling`, coats * likelyOf(`${method} handling`));
    }
  }
  return trustOf(doubts);
}

interface CoatSum {
  coats: number;
  paintedCm2: number;
}

/** Coats still to be laid, each on one figure counted once, and what they cover; by method, then layer. */
function sumCoats(jobs: ReadonlyMap<Job, number>): ReadonlyMap<Method, ReadonlyMap<Layer, CoatSum>> {
  const sums = new Map<Method, Map<Layer, CoatSum>>();
  for (const [job, units] of jobs) {
    for (const { layer, method, coats, mixShare, figures, areaCm2, areaShare } of job.remaining) {
      const ofMethod = sums.get(method) ?? new Map<Layer, CoatSum>();
      const sum = ofMethod.get(layer) ?? { coats: 0, paintedCm2: 0 };
      const times = coats * mixShare * figures * units;
      sum.coats += times;
      sum.paintedCm2 += areaCm2 * areaShare * times;
      sums.set(method, ofMethod.set(layer, sum));
    }
  }
  return sums;
}
