// Report view: minutes of units and their batches. In: the plan's time. Out: rows; what units share is worded once.
import type { BatchTime, JobTime, SmallestBatch, UnitTime } from '../../../model/time.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinuteRange, wordMinutes } from '../../words/word-minutes.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';

interface UnitTimeRow {
  readonly unit: string;
  readonly figures: string;
  readonly perFigure: string;
  readonly perFigureRange: string;
  /** Still to be done; '' where the unit is finished. */
  readonly brush: string;
  readonly setup: string;
  readonly done: string;
}

interface BatchRow {
  readonly unit: string;
  /** `2 batches of 12` */
  readonly batches: string;
  /** Of one such batch. */
  readonly elapsed: string;
  readonly waiting: string;
  readonly atLeast: string;
  readonly shortest: string;
  readonly noWaiting: string;
  readonly betweenLong: string;
}

/** Units that get rows of their own, as in the costs. */
const unitRows = 1000;

export interface UnitTimesView {
  readonly units: readonly UnitTimeRow[];
  readonly batches: readonly BatchRow[];
  /** Said where more units are there than listed; else ''. */
  readonly moreUnits: string;
}

/** In the army sheet's order. Finished units have no batches. */
export function viewUnitTimes({ plan, words }: ViewInputs): UnitTimesView {
  const { units } = plan.time;
  const shown = units.slice(0, unitRows);
  return {
    units: shown.map((one) => viewUnit(one, words)),
    batches: shown.flatMap(({ unit, time }) =>
      time.batches.map((batch) => ({ unit: unit.unit, ...viewBatch(batch, time, words) })),
    ),
    moreUnits:
      units.length > unitRows
        ? `The first ${words.count(unitRows)} units are listed; plan.json tells the time of each.`
        : '',
  };
}

function viewUnit({ unit, time, doneOnEvening }: UnitTime, words: NumberWords): UnitTimeRow {
  const isFinished = time.passes.length === 0;
  return {
    unit: unit.unit,
    figures: words.count(unit.count),
    perFigure: wordMinutes(time.brushMinPerFigure, words),
    perFigureRange: wordMinuteRange(time.brushPerFigure, words),
    brush: isFinished ? '' : wordMinutes(time.brushMin, words),
    setup: isFinished ? '' : wordMinutes(time.setupMin, words),
    done: wordDone(isFinished, doneOnEvening, words),
  };
}

function wordDone(isFinished: boolean, evening: number | undefined, words: NumberWords): string {
  if (isFinished) return 'finished';
  return evening === undefined ? 'later' : `evening ${words.count(evening)}`;
}

function viewBatch(batch: BatchTime, time: JobTime, words: NumberWords): Omit<BatchRow, 'unit'> {
  const { batches, figures, elapsedMin, waitingMin, atLeastMin, shortest } = batch;
  return {
    batches: `${countOf(words, batches, 'batch', 'batches')} of ${words.count(figures)}`,
    elapsed: wordMinutes(elapsedMin, words),
    waiting: wordMinutes(waitingMin, words),
    atLeast: wordMinutes(atLeastMin, words),
    shortest,
    noWaiting: wordSmallest(time.smallestBatchWithoutWaiting, words),
    betweenLong: wordSmallest(time.smallestBatchBetweenLongDrying, words),
  };
}

/** `78 (step 12 varnish dries 30 min)`. */
function wordSmallest({ figures, becauseOf }: SmallestBatch, words: NumberWords): string {
  if (figures === undefined) return 'none is large enough';
  if (becauseOf === undefined) return words.count(figures);
  const { step, layer, driesMin } = becauseOf;
  return `${words.count(figures)} (step ${words.count(step)} ${layer} dries ${wordMinutes(driesMin, words)})`;
}
