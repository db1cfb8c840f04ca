// Report view: how long it takes. In: the plan's time. Out: sums, evenings as bars, units and their batches.
import { splitWhole } from '../../../model/money.js';
import type { TimePlan } from '../../../model/time.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordMinutes } from '../../words/word-minutes.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { type EveningsView, viewEvenings } from './view-evenings.js';
import { type UnitTimesView, viewUnitTimes } from './view-unit-times.js';
import { type TimeWords, timeWords } from './words.js';

export interface TimeView extends EveningsView, UnitTimesView, Pick<TimeWords, 'labels'> {
  readonly lead: string;
  readonly trust: TrustView;
  /** Sums over the army, the main ones first. */
  readonly sums: readonly TimeSum[];
  /** Said where the army's last evenings are reckoned, not spelled out; else ''. */
  readonly reckoned: string;
  /** Where step by step is proved shortest. */
  readonly proof: string;
}

interface TimeSum {
  readonly title: string;
  /** True for a part of the sum above. */
  readonly within: boolean;
  readonly figure: string;
  readonly says: string;
}

/** Undefined where nothing is left to be painted. */
export function viewTime(inputs: ViewInputs): TimeView | undefined {
  const { plan, words } = inputs;
  const { time } = plan;
  if (time.evenings === 0) return undefined;
  const texts = timeWords(words);
  return {
    labels: texts.labels,
    lead: texts.lead(time),
    trust: inputs.trust.of(plan.summary.timeTrust),
    sums: listSums(time, texts.sums, words),
    reckoned: time.eveningsReckoned ? texts.reckoned(time.spelledOut.length) : '',
    ...viewEvenings(inputs, texts),
    ...viewUnitTimes(inputs, texts),
    proof: texts.proof(isAllProved(time)),
  };
}

/** Parts are rounded so that they add up to the elapsed time. */
function listSums(time: TimePlan, texts: TimeWords['sums'], words: NumberWords): TimeSum[] {
  const { brushMin, brushRange, setupMin, waitingMin, elapsedMin } = time;
  const parts = splitWhole(Math.round(elapsedMin), [brushMin, setupMin, waitingMin]);
  const [brush = '', setup = '', waiting = ''] = parts.map((minutes) => wordMinutes(minutes, words));
  return [
    { title: texts.brush.title, within: false, figure: brush, says: texts.brush.says(brushRange) },
    { ...texts.elapsed, within: false, figure: wordMinutes(elapsedMin, words) },
    { ...texts.setup, within: true, figure: setup },
    { ...texts.waiting, within: true, figure: waiting },
  ];
}

const isAllProved = ({ units }: TimePlan): boolean =>
  units.every(({ time }) => time.batches.every(({ shortest }) => shortest === 'proved'));
