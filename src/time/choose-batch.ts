// Time: what to take up next. In: batches begun and not begun, the time of the evening. Out: a batch, or how long to wait.
import type { Unit } from '../model/sheets.js';
import { type Clock, fitRound, setupOf } from './paint-round.js';
import {
  comparePlaces,
  nextRound,
  type OpenBatch,
  type Queue,
  queueBatches,
  type UnitWork,
} from './queue-batches.js';

/** Everything under way. */
export interface Bench {
  /** Batches begun, in painting order. */
  readonly open: OpenBatch[];
  readonly waiting: { readonly brush: Queue; readonly spray: Queue };
  /** Batches of each unit begun that are not finished yet. */
  readonly unfinished: Map<Unit, number>;
  /** The palette that is being sprayed; undefined while brushes are in use. */
  spraying: string | undefined;
}

/** A bench with nothing begun. */
export function openBench(works: readonly UnitWork[]): Bench {
  const waiting = { brush: queueBatches(works, false), spray: queueBatches(works, true) };
  return { open: [], waiting, unfinished: new Map(), spraying: undefined };
}

/**
 * The next batch to work on, opened if it was not yet; undefined where nothing that is dry fits. While a spray is in
 * hand, everything that awaits it; else the first that a brush can go on with, unless an earlier unit waits for nothing
 * but its spray.
 */
export function chooseBatch(bench: Bench, clock: Clock): OpenBatch | undefined {
  const again = bench.spraying === undefined ? undefined : findFirst(bench, clock, { spray: bench.spraying });
  const batch = again ?? chooseAnew(bench, clock);
  if (batch === undefined) return undefined;
  const pass = nextRound(batch)?.pass;
  bench.spraying = pass?.spray === true ? pass.palette : undefined;
  if (!bench.open.includes(batch)) begin(bench, batch);
  return batch;
}

function chooseAnew(bench: Bench, clock: Clock): OpenBatch | undefined {
  const brush = findFirst(bench, clock, { spray: false });
  const spray = findFirst(bench, clock, { spray: true });
  if (spray === undefined) return brush;
  if (brush !== undefined) return comesBefore(spray, brush) && isGathered(bench, spray) ? spray : brush;
  // A spray is not set up for a wait that is shorter than setting it up.
  const soonest = soonestReady(bench, clock, { spray: false });
  return soonest !== undefined && soonest - clock.now <= setupOf(spray, clock) ? undefined : spray;
}

const comesBefore = (a: OpenBatch, b: OpenBatch): boolean => a.unit.priority < b.unit.priority;

/** True where every batch of that priority has come to a spray, or is finished. */
function isGathered({ open, waiting }: Bench, { unit: { priority } }: OpenBatch): boolean {
  const isPainted = open.some(
    (one) => one.unit.priority === priority && nextRound(one)?.pass.spray === false,
  );
  return !isPainted && waiting.brush.peek()?.unit.priority !== priority;
}

interface Wanted {
  /** Only sprays, no sprays, or one palette of them. */
  readonly spray: boolean | string;
}

function isWanted(batch: OpenBatch, { spray }: Wanted): boolean {
  const pass = nextRound(batch)?.pass;
  if (typeof spray === 'string') return pass?.spray === true && pass.palette === spray;
  return pass?.spray === spray;
}

/** The first wanted batch, begun or not, that is dry and fits. */
function findFirst(bench: Bench, clock: Clock, wanted: Wanted): OpenBatch | undefined {
  const canGoOn = (batch: OpenBatch): boolean =>
    isWanted(batch, wanted) && batch.readyAt <= clock.now + 1e-9 && fitRound(batch, clock) !== undefined;
  const begun = bench.open.find(canGoOn);
  const fresh = (wanted.spray === false ? bench.waiting.brush : bench.waiting.spray).peek();
  if (fresh === undefined || !canGoOn(fresh)) return begun;
  return begun === undefined || comparePlaces(fresh, begun) < 0 ? fresh : begun;
}

/** The first minute after `now` at which a batch is dry and then fits; undefined: none this evening. */
export function soonestReady(bench: Bench, clock: Clock, wanted?: Wanted): number | undefined {
  let soonest: number | undefined;
  for (const batch of bench.open) {
    const { readyAt } = batch;
    if (readyAt <= clock.now + 1e-9 || (soonest !== undefined && readyAt >= soonest)) continue;
    if (wanted !== undefined && !isWanted(batch, wanted)) continue;
    if (fitRound(batch, { ...clock, now: readyAt }) !== undefined) soonest = readyAt;
  }
  return soonest;
}

/** Takes a batch out of its queue and among those begun. */
function begin({ open, waiting, unfinished }: Bench, batch: OpenBatch): void {
  (nextRound(batch)?.pass.spray === true ? waiting.spray : waiting.brush).take();
  if (!unfinished.has(batch.unit)) unfinished.set(batch.unit, batch.batchesOfUnit);
  const after = open.findIndex((one) => comparePlaces(batch, one) < 0);
  open.splice(after < 0 ? open.length : after, 0, batch);
}

/** Puts a finished batch away; true where it was the last of its unit. */
export function closeBatch({ open, unfinished }: Bench, batch: OpenBatch): boolean {
  open.splice(open.indexOf(batch), 1);
  const left = (unfinished.get(batch.unit) ?? 0) - 1;
  unfinished.set(batch.unit, left);
  return left === 0;
}
