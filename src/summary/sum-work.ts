// Summary: the army's lines summed once. In: jobs and how many units share each. Out: ml by zone and layer, and by paint.
// Units that share a job are counted, not walked.
import type { PaintWork, WorkSums, ZoneWork } from '../model/summary.js';
import type { Layer } from '../model/words.js';
import type { Estimate, Line } from '../model/work.js';
import { type Doubts, noDoubts, noteDoubt, trustOf } from './doubts.js';

/** Sums while they grow. */
interface GrowingWork {
  wholeMl: number;
  remainingMl: number;
  onFigureMl: number;
  leftoverMl: number;
  readonly doubts: Doubts;
}

export interface SummedWork extends WorkSums {
  /** Of all lines, and of those of each paint. */
  readonly doubts: Doubts;
  readonly paintDoubts: ReadonlyMap<string, Doubts>;
}

/** Sums all jobs; an army without units gives zeros and empty maps. */
export function sumWork({ jobs }: Pick<Estimate, 'jobs'>): SummedWork {
  const zones = new Map<string, Map<Layer, number>>();
  const paints = new Map<string, GrowingWork>();
  const all = startWork();
  for (const [job, units] of jobs) {
    for (const line of job.lines) {
      addWhole(all, line, units);
      addWhole(workOf(paints, line), line, units);
    }
    for (const line of job.remaining) {
      addRemaining(all, line, units);
      addRemaining(workOf(paints, line), line, units);
      addToZone(zones, line, line.putOutMl * units);
    }
  }
  return {
    wholeMl: all.wholeMl,
    remainingMl: all.remainingMl,
    onFigureShare: all.remainingMl === 0 ? 0 : Math.min(1, all.onFigureMl / all.remainingMl),
    zones: listZones(zones),
    paints: new Map([...paints].map(([paint, work]) => [paint, settleWork(work)])),
    trust: trustOf(all.doubts),
    doubts: all.doubts,
    paintDoubts: new Map([...paints].map(([paint, { doubts }]) => [paint, doubts])),
  };
}

const startWork = (): GrowingWork => ({
  wholeMl: 0,
  remainingMl: 0,
  onFigureMl: 0,
  leftoverMl: 0,
  doubts: noDoubts(),
});

function workOf(paints: Map<string, GrowingWork>, { paint }: Line): GrowingWork {
  const work = paints.get(paint) ?? startWork();
  paints.set(paint, work);
  return work;
}

function addWhole(work: GrowingWork, line: Line, units: number): void {
  const ml = line.putOutMl * units;
  work.wholeMl += ml;
  noteDoubt(work.doubts, line, ml);
}

function addRemaining(work: GrowingWork, line: Line, units: number): void {
  work.remainingMl += line.putOutMl * units;
  work.onFigureMl += line.onFigureMl * units;
  work.leftoverMl += line.leftoverMl * units;
}

function addToZone(zones: Map<string, Map<Layer, number>>, { zone, layer }: Line, ml: number): void {
  const layers = zones.get(zone) ?? new Map<Layer, number>();
  zones.set(zone, layers.set(layer, (layers.get(layer) ?? 0) + ml));
}

/** Parts that rounding left above the whole are cut to it. */
function settleWork({ wholeMl, remainingMl, doubts, ...parts }: GrowingWork): PaintWork {
  const onFigureMl = Math.min(parts.onFigureMl, remainingMl);
  const leftoverMl = Math.min(parts.leftoverMl, remainingMl - onFigureMl);
  const lostMl = remainingMl - onFigureMl - leftoverMl;
  return { wholeMl, remainingMl, onFigureMl, lostMl, leftoverMl, trust: trustOf(doubts) };
}

function listZones(zones: ReadonlyMap<string, ReadonlyMap<Layer, number>>): ZoneWork[] {
  return [...zones]
    .map(([zone, layersMl]) => ({ zone, layersMl, remainingMl: sumOf(layersMl.values()) }))
    .sort((a, b) => b.remainingMl - a.remainingMl);
}

const sumOf = (amounts: Iterable<number>): number => [...amounts].reduce((sum, one) => sum + one, 0);
