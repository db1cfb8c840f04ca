// Ranges: what the next batch takes of each paint. In: drawn army, estimate, assumptions. Out: ml by job, likely and enough for
// nine batches in ten.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { type BatchMl, listBench } from '../model/bench.js';
import type { Drawing } from '../model/draws.js';
import { lineFor } from '../model/lines-of-row.js';
import { quantileOf } from '../model/quantiles.js';
import type { Estimate, Job, Line } from '../model/work.js';
import type { DrawnArmy } from './draw-army.js';
import { drawNormals } from './draw-factors.js';
import { sumTerms, type Terms } from './list-terms.js';
import { openPutOut } from './put-out.js';

interface BatchInputs {
  readonly drawn: Pick<DrawnArmy, 'factors' | 'drawing'>;
  readonly assumptions: Assumptions;
}

/** The first of the army's draws do: nine in ten is then sure to two per cent of what is doubtful, less than a drop. */
const mostDraws = 2000;

/**
 * For the jobs of units with a card, in the order of `job.remaining`. Beside all that is in doubt of the army, one batch differs
 * from the next. Jobs of one figure and scheme share what is alike.
 */
export function drawBatches(estimate: Estimate, inputs: BatchInputs): Map<Job, readonly BatchMl[]> {
  const known = new Map<string, BatchMl>();
  const { drawn: army, assumptions } = inputs;
  const draws = Math.min(mostDraws, army.drawing.draws);
  const columnOf = (name: string) => army.factors.get(name)?.values.subarray(0, draws);
  const putOut = openPutOut({ assumptions, figures: estimate.figures, columnOf, draws });
  const differs = differencesOf({ ...army.drawing, draws }, assumptions);
  const drawLine = (job: Job, line: Line): BatchMl => {
    const figures = Math.min(job.batch, line.figures);
    const { step, zone, layer, paint } = line;
    const key = [job.figure, job.scheme, step, zone, layer, paint, figures].join('\n');
    const drawn = known.get(key) ?? drawBatch(line, { assumptions, putOut, figures, job, differs });
    known.set(key, drawn);
    return drawn;
  };
  const jobs = new Set(listBench(estimate).withCard.map(({ job }) => job));
  return new Map([...jobs].map((job) => [job, job.remaining.map((line) => drawLine(job, line))]));
}

/** How many times the usual a batch takes, in each draw. */
function differencesOf(drawing: Drawing, assumptions: Assumptions): Float64Array {
  const deviation = likely(assumptions, 'difference between batches') / 100;
  return drawNormals('difference between batches', drawing).map((z) => Math.max(0, 1 + deviation * z));
}

interface Batch extends Pick<BatchInputs, 'assumptions'> {
  readonly putOut: (terms: Terms) => Float64Array;
  readonly figures: number;
  readonly job: Job;
  readonly differs: Float64Array;
}

function drawBatch(line: Line, { putOut, assumptions, figures, job, differs }: Batch): BatchMl {
  const next = lineFor(line, { figures, sittings: 1 }, likely(assumptions, 'painter'));
  const sum = sumTerms();
  sum.add(next, job.figure, 1);
  const ml = putOut(sum.terms);
  for (let draw = 0; draw < ml.length; draw++) ml[draw] = (ml[draw] as number) * (differs[draw] as number);
  return { figures, likelyMl: next.putOutMl, highMl: Math.max(next.putOutMl, quantileOf(ml, 0.9)) };
}
