// Ranges: the work unit by unit over some draws. In: estimate, stock, beliefs, seed. Out: columns of ml for each paint and stage.
import type { Drawing, StagedPaint, StagedWork } from '../model/draws.js';
import type { CountedStock } from '../model/stock.js';
import type { Estimate, Job } from '../model/work.js';
import { type DrawInputs, openArmy } from './draw-army.js';
import { drawShelf } from './draw-shelf.js';
import { sumTerms, type TermSum } from './list-terms.js';

/** Draws of the painted armies, and where chance begins: neither of the seeds of the orders. */
const usualDrawing: Drawing = { draws: 400, seed: 3 };

/** Numbers drawn at the most, so that time and memory stay bounded: paints times stages times draws. */
const mostDrawn = 1_000_000;

/** Past so many, several units are one stage. */
const mostStages = 40;

/** Fewer draws where very many paints are needed: what is said is then less sure, and says so. */
export function stagesDrawing(paints: number): Drawing {
  const draws = Math.floor(mostDrawn / Math.max(1, paints) / 4);
  return { ...usualDrawing, draws: Math.max(25, Math.min(usualDrawing.draws, draws)) };
}

/** The units that have work left, in the order in which they are painted, and what each takes. */
export function drawStages(inputs: DrawInputs, drawing: Drawing): StagedWork {
  const { estimate, stock } = inputs;
  const { putOut, shelf, gainOf } = openArmy(inputs, drawing);
  const needed = stock.filter(({ needMl }) => needMl > 0);
  const most = Math.floor(mostDrawn / Math.max(1, drawing.draws * needed.length));
  const stages = listStages(estimate, Math.max(1, Math.min(mostStages, most)));
  const work = stages.map(({ jobs }) => workOf(jobs));
  const none = new Float64Array(drawing.draws);
  const paints = needed.map((one: CountedStock): StagedPaint => {
    const terms = work.map((sums) => sums.get(one.paint));
    return {
      paint: one.paint,
      needMl: terms.map((sum) => (sum === undefined ? none : putOut(sum.terms.terms))),
      likelyMl: terms.map((sum) => sum?.likelyMl ?? 0),
      haveMl: drawShelf(one, shelf).haveMl,
    };
  });
  return { drawing, units: stages.map(({ unit }) => unit), paints, gainOf };
}

interface Stage {
  /** Its first unit. */
  readonly unit: string;
  /** How many units of each job. */
  readonly jobs: ReadonlyMap<Job, number>;
}

function listStages({ units }: Estimate, most: number): Stage[] {
  const left = units
    .filter(({ job }) => job.remaining.length > 0)
    .sort((a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row);
  const each = Math.ceil(left.length / most);
  return Array.from({ length: Math.ceil(left.length / Math.max(1, each)) }, (_, at) => {
    const together = left.slice(at * each, (at + 1) * each);
    const jobs = new Map<Job, number>();
    for (const { job } of together) jobs.set(job, (jobs.get(job) ?? 0) + 1);
    return { unit: together[0]?.unit.unit ?? '', jobs };
  });
}

interface PaintWork {
  readonly terms: TermSum;
  likelyMl: number;
}

function workOf(jobs: Stage['jobs']): Map<string, PaintWork> {
  const sums = new Map<string, PaintWork>();
  for (const [job, units] of jobs) {
    for (const line of job.remaining) {
      const sum = sums.get(line.paint) ?? { terms: sumTerms(), likelyMl: 0 };
      sums.set(line.paint, sum);
      sum.terms.add(line, job.figure, units);
      sum.likelyMl += line.putOutMl * units;
    }
  }
  return sums;
}
