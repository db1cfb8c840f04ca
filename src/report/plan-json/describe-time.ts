// plan.json: time. In: the plan's time. Out: minutes with two digits.
import type { EveningPiece, JobTime, TimePlan } from '../../model/time.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumbers, roundTo } from './write-values.js';

type DocumentTime = PlanDocument['time'];

/** All numbers of an object with two digits; those that are whole stay so. */
const inMinutes = <Fields extends object>(fields: Fields): Fields => roundNumbers(fields, 2);

/** The army's sums and evenings; what each job takes stands with the jobs. */
export function describeTime({ spelledOut, brushRange, ...time }: TimePlan): DocumentTime {
  const { brushMin, setupMin, waitingMin, elapsedMin, eveningMin, evenings, eveningsReckoned } = time;
  const brush = { brushMin, brushMinLow: brushRange.low, brushMinHigh: brushRange.high };
  return {
    ...inMinutes({ ...brush, setupMin, waitingMin, elapsedMin }),
    ...{ eveningMin, evenings, eveningsReckoned },
    plan: spelledOut.map(({ minutes, pieces }) => ({
      ...inMinutes({ minutes }),
      pieces: pieces.map(describePiece),
    })),
  };
}

export function describeJobTime(time: JobTime): PlanDocument['jobs'][number]['time'] {
  const { brushMinPerFigure, brushPerFigure, brushMin, setupMin, waitingMin, elapsedMin } = time;
  const { low: brushMinPerFigureLow, high: brushMinPerFigureHigh } = brushPerFigure;
  return {
    ...inMinutes({ brushMinPerFigure, brushMinPerFigureLow, brushMinPerFigureHigh }),
    ...inMinutes({ brushMin, setupMin, waitingMin, elapsedMin }),
    smallestBatchWithoutWaiting: time.smallestBatchWithoutWaiting.figures ?? null,
    smallestBatchBetweenLongDrying: time.smallestBatchBetweenLongDrying.figures ?? null,
    batches: time.batches.map(({ figures, batches, shortest, ...of }) => ({
      ...{ figures, batches },
      ...inMinutes({ elapsedMin: of.elapsedMin, waitingMin: of.waitingMin, atLeastMin: of.atLeastMin }),
      shortest,
    })),
  };
}

function describePiece(piece: EveningPiece): DocumentTime['plan'][number]['pieces'][number] {
  const minutes = roundTo(2, piece.minutes);
  if (piece.what === 'waiting') return { what: piece.what, minutes };
  const { what, unit, pass, figures } = piece;
  const { step, layer, coat } = pass;
  return { ...{ what, minutes, unit, step, layer, coat }, figures: roundTo(2, figures) };
}
