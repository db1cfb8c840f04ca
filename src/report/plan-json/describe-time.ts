// plan.json: time. In: the plan's time. Out: minutes with two digits.
import type { EveningPiece, JobTime, TimePlan } from '../../model/time.js';
import type { PlanDocument } from './plan-document.js';
import { roundTo } from './write-values.js';

type DocumentTime = PlanDocument['time'];

const inMinutes = (minutes: number): number => roundTo(2, minutes);

/** The army's sums and evenings; what each job takes stands with the jobs. */
export function describeTime({ spelledOut, brushRange, ...time }: TimePlan): DocumentTime {
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
    plan: spelledOut.map(({ minutes, pieces }) => ({
      minutes: inMinutes(minutes),
      pieces: pieces.map(describePiece),
    })),
  };
}

export function describeJobTime(time: JobTime): PlanDocument['jobs'][number]['time'] {
  return {
    brushMinPerFigure: inMinutes(time.brushMinPerFigure),
    brushMinPerFigureLow: inMinutes(time.brushPerFigure.low),
    brushMinPerFigureHigh: inMinutes(time.brushPerFigure.high),
    brushMin: inMinutes(time.brushMin),
    setupMin: inMinutes(time.setupMin),
    waitingMin: inMinutes(time.waitingMin),
    elapsedMin: inMinutes(time.elapsedMin),
    smallestBatchWithoutWaiting: time.smallestBatchWithoutWaiting.figures ?? null,
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
