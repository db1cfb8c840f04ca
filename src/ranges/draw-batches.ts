// Ranges: what the next batch takes of each paint. In: drawn army, estimate, assumptions. Out: ml by job, likely and enough for
// nine batches in ten.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { type BatchMl, listBench } from '../model/bench.js';
import { rangeAbout } from '../model/quantiles.js';
import type { Estimate, Job, Line } from '../model/work.js';
import type { DrawnArmy } from './draw-army.js';
import { drawNormals } from './draw-factors.js';
import { lineFor, sumTerms } from './list-terms.js';

interface BatchInputs {
  readonly drawn: Pick<DrawnArmy, 'putOut' | 'drawing'>;
  readonly assumptions: Assumptions;
}

/**
 * For the jobs of units with a card, in the order of `job.remaining`. Beside all that is in doubt of the army, one batch differs
 * from the next. Jobs of one figure and scheme share what is alike.
 */
export function drawBatches(estimate: Estimate, inputs: BatchInputs): Map<Job, readonly BatchMl[]> {
  const known = new Map<string, BatchMl>();
  const differs = differencesOf(inputs);
  const drawLine = (job: Job, line: Line): BatchMl => {
    const figures = Math.min(job.batch, line.figures);
    const { step, zone, layer, paint } = line;
    const key = [job.figure, job.scheme, step, zone, layer, paint, figures].join('\n');
    const drawn = known.get(key) ?? drawBatch(line, { ...inputs, figures, job, differs });
    known.set(key, drawn);
    return drawn;
  };
  const jobs = new Set(listBench(estimate).withCard.map(({ job }) => job));
  return new Map([...jobs].map((job) => [job, job.remaining.map((line) => drawLine(job, line))]));
}

/** How many times the usual a batch takes, in each draw. */
function differencesOf({ drawn: { drawing }, assumptions }: BatchInputs): Float64Array {
  const deviation = likely(assumptions, 'difference between batches') / 100;
  return drawNormals('difference between batches', drawing).map((z) => Math.max(0, 1 + deviation * z));
}

interface Batch extends BatchInputs {
  readonly figures: number;
  readonly job: Job;
  readonly differs: Float64Array;
}

function drawBatch(line: Line, { drawn, assumptions, figures, job, differs }: Batch): BatchMl {
  const kept = line.leftoverMl * likely(assumptions, 'painter');
  const likelyMl = ((line.putOutMl - kept) / line.figures) * figures + kept / line.sittings;
  const sum = sumTerms();
  sum.add(lineFor(line, { figures, sittings: 1 }), job.figure, 1);
  const ml = drawn.putOut(sum.terms);
  for (let draw = 0; draw < ml.length; draw++) ml[draw] = (ml[draw] as number) * (differs[draw] as number);
  return { figures, likelyMl, highMl: rangeAbout(likelyMl, ml).high };
}
