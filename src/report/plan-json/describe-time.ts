// Report view: time as plan.json tells it. In: the plan's time. Out: minutes with two digits; what units share is one object.
import type { EveningPiece, JobTime, TimePlan } from '../../model/time.js';
import { type EntryList, listEntries } from './describe-work.js';
import type { PlanDocument } from './plan-document.js';
import { roundTo } from './round-number.js';

type DocumentTime = PlanDocument['time'];
type DocumentUnit = DocumentTime['units'][number];

type OwnTime = Pick<DocumentUnit, 'unit' | 'doneOnEvening'>;
type SharedTime = Omit<DocumentUnit, keyof OwnTime>;

/** `time` before its units are spelled out one by one. */
export type TimeDescription = Omit<DocumentTime, 'units'> & {
  readonly units: EntryList<OwnTime, SharedTime>;
};

const inMinutes = (minutes: number): number => roundTo(2, minutes);

/** Units that share a job share an entry, and what is long of it stands once in `jobs`. */
export function describeTime({ units, spelledOut, brushRange, ...time }: TimePlan): TimeDescription {
  const jobs = new Map<JobTime, readonly SharedTime[]>();
  for (const { time } of units) if (!jobs.has(time)) jobs.set(time, [describeShared(time, jobs.size)]);
  return {
    brushMin: inMinutes(time.brushMin),
    brushMinLow: inMinutes(brushRange.low),
    brushMinHigh: inMinutes(brushRange.high),
    setupMin: inMinutes(time.setupMin),
    waitingMin: inMinutes(time.waitingMin),
    elapsedMin: inMinutes(time.elapsedMin),
    eveningMin: time.eveningMin,
    evenings: time.evenings,
    eveningsReckoned: time.eveningsReckoned,
    units: listEntries(units, ({ unit, doneOnEvening, time: job }) => ({
      own: { unit: unit.unit, doneOnEvening: doneOnEvening ?? null },
      shared: jobs.get(job) ?? [],
    })),
    jobs: [...jobs.keys()].map(describeJobTime),
    plan: spelledOut.map(({ minutes, pieces }) => ({
      minutes: inMinutes(minutes),
      pieces: pieces.map(describePiece),
    })),
  };
}

const describeShared = (time: JobTime, job: number): SharedTime => ({
  brushMinPerFigure: inMinutes(time.brushMinPerFigure),
  smallestBatchWithoutWaiting: time.smallestBatchWithoutWaiting.figures ?? null,
  job,
});

function describeJobTime(time: JobTime): DocumentTime['jobs'][number] {
  return {
    brushMinPerFigureLow: inMinutes(time.brushPerFigure.low),
    brushMinPerFigureHigh: inMinutes(time.brushPerFigure.high),
    brushMin: inMinutes(time.brushMin),
    setupMin: inMinutes(time.setupMin),
    waitingMin: inMinutes(time.waitingMin),
    elapsedMin: inMinutes(time.elapsedMin),
    smallestBatchBetweenLongDrying: time.smallestBatchBetweenLongDrying.figures ?? null,
    batches: time.batches.map(({ figures, batches, elapsedMin, waitingMin, atLeastMin, shortest }) => ({
      ...{ figures, batches, elapsedMin: inMinutes(elapsedMin), waitingMin: inMinutes(waitingMin) },
      ...{ atLeastMin: inMinutes(atLeastMin), shortest },
    })),
  };
}

function describePiece(piece: EveningPiece): DocumentTime['plan'][number]['pieces'][number] {
  const minutes = inMinutes(piece.minutes);
  if (piece.what === 'waiting') return { what: piece.what, minutes };
  const { what, unit, pass, figures } = piece;
  const { step, layer, coat } = pass;
  return { ...{ what, minutes, unit, step, layer, coat }, figures: roundTo(2, figures) };
}
