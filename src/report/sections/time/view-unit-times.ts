// Report view: minutes of units and their batches. In: the plan's time. Out: rows; what units share is worded once.
import type { BatchTime, JobTime, UnitTime } from '../../../model/time.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinuteRange, wordMinutes } from '../../words/word-minutes.js';
import type { NumberWords } from '../../words/word-numbers.js';
import type { TimeWords } from './words.js';

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
export function viewUnitTimes({ plan, words }: ViewInputs, texts: TimeWords): UnitTimesView {
  const { units } = plan.time;
  const shown = units.slice(0, unitRows);
  return {
    units: shown.map((one) => viewUnit(one, texts, words)),
    batches: shown.flatMap(({ unit, time }) =>
      time.batches.map((batch) => ({ unit: unit.unit, ...viewBatch(batch, time, { texts, words }) })),
    ),
    moreUnits: units.length > unitRows ? texts.moreUnits(unitRows) : '',
  };
}

function viewUnit(
  { unit, time, doneOnEvening }: UnitTime,
  texts: TimeWords,
  words: NumberWords,
): UnitTimeRow {
  const isFinished = time.passes.length === 0;
  return {
    unit: unit.unit,
    figures: words.count(unit.count),
    perFigure: wordMinutes(time.brushMinPerFigure, words),
    perFigureRange: wordMinuteRange(time.brushPerFigure, words),
    brush: isFinished ? '' : wordMinutes(time.brushMin, words),
    setup: isFinished ? '' : wordMinutes(time.setupMin, words),
    done: isFinished ? texts.unitFinished : texts.doneOn(doneOnEvening),
  };
}

interface Wording {
  readonly texts: TimeWords;
  readonly words: NumberWords;
}

function viewBatch(batch: BatchTime, time: JobTime, { texts, words }: Wording): Omit<BatchRow, 'unit'> {
  const { elapsedMin, waitingMin, atLeastMin, shortest } = batch;
  return {
    batches: texts.batches(batch),
    elapsed: wordMinutes(elapsedMin, words),
    waiting: wordMinutes(waitingMin, words),
    atLeast: wordMinutes(atLeastMin, words),
    shortest: texts.shortest[shortest],
    noWaiting: texts.smallest(time.smallestBatchWithoutWaiting),
    betweenLong: texts.smallest(time.smallestBatchBetweenLongDrying),
  };
}
