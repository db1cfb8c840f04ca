// Report view: how sure minutes are. In: the work left, the assumptions of time. Out: a trust tag.
import { noDoubts, noteDoubt } from './sum-work.js';
import type { TrustView } from './trust-view.js';
import type { ViewInputs } from './view-inputs.js';

/**
 * The weakest mark of what the work left rests on. The doubt is the method's pace or handling that most of it goes with:
 * pace weighs by the painted area, handling by the coats, each with how far it may lie off.
 */
export function trustTime({ plan, sums, trust }: ViewInputs): TrustView {
  const known = new Map(plan.assumptions.map((one) => [one.name, one]));
  const likelyOf = (name: string): number => known.get(name)?.likely ?? 0;
  const doubts = noDoubts();
  const note = (name: string, minutes: number): void => {
    const one = known.get(name);
    if (one === undefined || one.likely === 0) return;
    noteDoubt(doubts, { mark: one.mark, biggestDoubt: name }, (minutes * (one.high - one.low)) / one.likely);
  };
  for (const [job, units] of sums.jobs) {
    for (const { layer, method, coats, mixShare, figures, areaCm2, areaShare } of job.remaining) {
      const times = coats * mixShare * figures * units;
      const painting = areaCm2 * areaShare * likelyOf(`${method} pace`) * likelyOf(`${layer} care`) * times;
      note(`${method} pace`, painting);
      note(`${layer} care`, painting);
      note(`${method} handling`, likelyOf(`${method} handling`) * times);
    }
  }
  return trust.of(doubts);
}
