// Time: the batches of the whole army in painting order, drawn one by one, since a club's army has millions of them.
// In: units with their batches. Out: the next batch to begin, by brush or by spray.
import type { Unit } from '../model/sheets.js';
import type { AlikeBatches, BatchRound } from './time-job.js';

/** A unit's work, units in painting order. */
export interface UnitWork {
  readonly unit: Unit;
  readonly alike: readonly AlikeBatches[];
}

/** A batch under way: what it has before it, and when it may go on. */
export interface OpenBatch {
  readonly unit: Unit;
  /** How many batches the unit has to begin with. */
  readonly batchesOfUnit: number;
  /** Place of the unit, then of the batch within it: lower is painted first. */
  readonly place: readonly [unit: number, batch: number];
  readonly rounds: readonly BatchRound[];
  /** Which of `rounds` comes next. */
  next: number;
  /** Figures that still need it. */
  left: number;
  /** Minute of the evening at which it may go on without waiting in between. */
  readyAt: number;
  /** Paint that is out for it this evening. */
  paintOut: string;
}

/** Lower is painted first. */
export const comparePlaces = (a: OpenBatch, b: OpenBatch): number =>
  a.place[0] - b.place[0] || a.place[1] - b.place[1];

/** The round that comes next; undefined when all is done. */
export const nextRound = ({ rounds, next }: OpenBatch): BatchRound | undefined => rounds[next];

/** Batches not begun yet, first things first: a look at the next one, and taking it. */
export interface Queue {
  readonly peek: () => OpenBatch | undefined;
  readonly take: () => void;
}

/** The queue of batches that begin with a spray, or of those that do not. */
export function queueBatches(works: readonly UnitWork[], spray: boolean): Queue {
  const batches = drawBatches(works, spray);
  let current = batches.next();
  return {
    peek: () => (current.done === true ? undefined : current.value),
    take: () => {
      current = batches.next();
    },
  };
}

function* drawBatches(works: readonly UnitWork[], spray: boolean): Generator<OpenBatch, undefined> {
  for (const [unitPlace, { unit, alike }] of works.entries()) {
    let first = 0;
    for (const { batches, rounds } of alike) {
      const [round] = rounds;
      const last = first + batches;
      if (round !== undefined && round.pass.spray === spray) {
        const batchesOfUnit = alike.reduce((sum, one) => sum + one.batches, 0);
        for (let batch = first; batch < last; batch++) {
          const begin = { next: 0, left: round.figures, readyAt: 0, paintOut: '' };
          yield { unit, batchesOfUnit, place: [unitPlace, batch], rounds, ...begin };
        }
      }
      first = last;
    }
  }
  return undefined;
}
