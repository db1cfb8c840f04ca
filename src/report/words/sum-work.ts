// Report view: the army's lines summed once, for every section. In: jobs and how many units share each.
// Out: ml by zone and layer, by paint, and the doubts. Units that share a job are counted, not walked.
import { type Mark, weakestMark } from '../../model/assumption.js';
import type { Plan, UnitCost } from '../../model/plan.js';
import type { Line, Trust } from '../../model/work.js';

export interface PaintWork {
  wholeMl: number;
  remainingMl: number;
  /** Of `remainingMl`: what ends on the figures, and what palette, brush, cup or nozzle keep. */
  onFigureMl: number;
  leftoverMl: number;
  readonly doubts: Doubts;
}

/** Sums of the whole army. Volumes ml; `Remaining` is the work still to be done. */
export interface WorkSums {
  readonly wholeMl: number;
  readonly remainingMl: number;
  /** Zone, then layer, to remaining ml, in the order in which they are first met. */
  readonly zones: ReadonlyMap<string, ReadonlyMap<string, number>>;
  /** In the order in which they first go on. */
  readonly paints: ReadonlyMap<string, PaintWork>;
  readonly doubts: Doubts;
}

/** Which marks some lines bear, and how much (ml, or money) each named doubt stands behind. */
export interface Doubts {
  readonly marks: Set<Mark>;
  readonly weights: Map<string, number>;
}

export const noDoubts = (): Doubts => ({ marks: new Set(), weights: new Map() });

/** Sums all jobs; an army without units gives zeros and empty maps. */
export function sumWork(plan: Plan): WorkSums {
  const zones = new Map<string, Map<string, number>>();
  const paints = new Map<string, PaintWork>();
  const doubts = noDoubts();
  const sums = { wholeMl: 0, remainingMl: 0 };
  for (const [job, units] of plan.estimate.jobs) {
    for (const line of job.lines) {
      const ml = line.putOutMl * units;
      sums.wholeMl += ml;
      addWhole(workOf(paints, line), line, ml);
      noteDoubt(doubts, line, ml);
    }
    for (const line of job.remaining) {
      sums.remainingMl += line.putOutMl * units;
      addRemaining(workOf(paints, line), line, units);
      addToZone(zones, line, line.putOutMl * units);
    }
  }
  return { zones, paints, doubts, ...sums };
}

/** Whether work is still to be done with a paint. */
export const isNeeded = ({ paints }: WorkSums, paint: string): boolean =>
  (paints.get(paint)?.remainingMl ?? 0) > 0;

/** For an army that needs no paint: whether all of its work is done, or there never was any. */
export const wordNoNeed = ({ wholeMl }: WorkSums): string =>
  wholeMl > 0 ? 'Everything is painted: no paint is needed any more.' : 'This army needs no paint.';

function workOf(paints: Map<string, PaintWork>, { paint }: Line): PaintWork {
  const work = paints.get(paint) ?? {
    wholeMl: 0,
    remainingMl: 0,
    onFigureMl: 0,
    leftoverMl: 0,
    doubts: noDoubts(),
  };
  paints.set(paint, work);
  return work;
}

function addWhole(work: PaintWork, line: Line, ml: number): void {
  work.wholeMl += ml;
  noteDoubt(work.doubts, line, ml);
}

function addRemaining(work: PaintWork, line: Line, units: number): void {
  work.remainingMl += line.putOutMl * units;
  work.onFigureMl += line.onFigureMl * units;
  work.leftoverMl += line.leftoverMl * units;
}

function addToZone(zones: Map<string, Map<string, number>>, { zone, layer }: Line, ml: number): void {
  const layers = zones.get(zone) ?? new Map<string, number>();
  zones.set(zone, layers.set(layer, (layers.get(layer) ?? 0) + ml));
}

/** Adds a line's mark and doubt; `weight` is the ml or the money that hangs on it. */
export function noteDoubt(doubts: Doubts, { mark, biggestDoubt }: Trust, weight: number): void {
  doubts.marks.add(mark);
  if (biggestDoubt === '') return;
  doubts.weights.set(biggestDoubt, (doubts.weights.get(biggestDoubt) ?? 0) + weight);
}

/** What a unit's cost is doubted for, weighed by the money that hangs on it. */
export function doubtCost(
  { job, use }: Pick<UnitCost, 'job' | 'use'>,
  doubts = noDoubts(),
  units = 1,
): Doubts {
  job.lines.forEach((line, index) => {
    noteDoubt(doubts, line, (use.lines[index]?.exactMinor.toNumber() ?? 0) * units);
  });
  return doubts;
}

/** The doubts of several results as one. */
export function mergeDoubts(all: readonly Doubts[]): Doubts {
  const merged = noDoubts();
  for (const { marks, weights } of all) {
    for (const mark of marks) merged.marks.add(mark);
    for (const [name, weight] of weights) merged.weights.set(name, (merged.weights.get(name) ?? 0) + weight);
  }
  return merged;
}

/** The weakest mark among the doubts and others; of nothing, the strongest there is. */
export function markOf(doubts: Doubts, ...others: readonly Mark[]): Mark {
  return weakestMark([...doubts.marks, ...others]);
}

/** Doubts by what hangs on them, the greatest first; ties keep their order. */
export function rankDoubts({ weights }: Doubts): { readonly name: string; readonly weight: number }[] {
  return [...weights].map(([name, weight]) => ({ name, weight })).sort((a, b) => b.weight - a.weight);
}
