// Report view: how long it takes. In: the plan's time. Out: sums, evenings as bars, units and their batches.
import { splitWhole } from '../../../model/money.js';
import type { TimePlan } from '../../../model/time.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordMinuteRange, wordMinutes } from '../../words/word-minutes.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';
import { lowHighMeaning } from '../../words/word-sure.js';
import { type EveningsView, viewEvenings } from './view-evenings.js';
import { type UnitTimesView, viewUnitTimes } from './view-unit-times.js';

export interface TimeView extends EveningsView, UnitTimesView {
  readonly lead: string;
  readonly trust: TrustView;
  /** Sums over the army, the main ones first. */
  readonly sums: readonly TimeSum[];
  /** Said where the army's last evenings are reckoned, not spelled out; else ''. */
  readonly reckoned: string;
  /** What the plan of evenings claims and what not. */
  readonly claim: string;
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
  return {
    lead:
      `What is still to be done, by one painter in evenings of ${wordMinutes(time.eveningMin, words)}. ` +
      'Nobody has measured minutes for figures this small: they are from memory, and your own are better.',
    trust: inputs.trust.of(plan.summary.timeTrust),
    sums: wordSums(time, words),
    reckoned: time.eveningsReckoned
      ? `The first ${countOf(words, time.spelledOut.length, 'evening')} are planned; the rest is reckoned to go on at their pace.`
      : '',
    ...viewEvenings(inputs),
    claim:
      'Units come by priority. While one batch dries, the next that is dry goes on; sprays are gathered; overnight everything dries. ' +
      'This is a rule of thumb: nobody proves that fewer evenings would not do.',
    ...viewUnitTimes(inputs),
    proof: wordProof(time),
  };
}

/** Parts are rounded so that they add up to the elapsed time. */
function wordSums(time: TimePlan, words: NumberWords): TimeSum[] {
  const { brushMin, brushRange, setupMin, waitingMin, elapsedMin, evenings } = time;
  const parts = splitWhole(Math.round(elapsedMin), [brushMin, setupMin, waitingMin]);
  const [brush = 0, setup = 0, waiting = 0] = parts;
  const say = (minutes: number): string => wordMinutes(minutes, words);
  return [
    {
      title: 'Evenings',
      within: false,
      figure: `${time.eveningsReckoned ? 'about ' : ''}${countOf(words, evenings, 'evening')}`,
      says: `With batches overlapping, so that little waits. Your own evening stands in the settings sheet as evening min.`,
    },
    {
      title: 'Brush in hand',
      within: false,
      figure: say(brush),
      says: `Low to high ${wordMinuteRange(brushRange, words)} (${lowHighMeaning}).`,
    },
    {
      title: 'One batch after the other',
      within: false,
      figure: say(elapsedMin),
      says: 'Step by step without a break, nothing overlapping: brush in hand, and on top of that',
    },
    {
      title: 'setting up',
      within: true,
      figure: say(setup),
      says: 'Paint fetched, shaken and put out; rinsing.',
    },
    {
      title: 'waiting',
      within: true,
      figure: say(waiting),
      says: 'Nothing to do but wait for paint to dry. The evenings fill most of it with other batches.',
    },
  ];
}

function wordProof({ units }: TimePlan): string {
  const times = new Set(units.map(({ time }) => time));
  const kinds = new Set([...times].flatMap(({ batches }) => batches.map(({ shortest }) => shortest)));
  const meaning =
    'Step by step means: one step over the whole batch, then the next. No order of work is shorter where it says proved ' +
    '(always for two coats, for coats that are all alike, and wherever nothing waits)';
  if (!kinds.has('rule of thumb')) return `${meaning}.`;
  return `${meaning}; elsewhere it is a rule of thumb, which another order of work might beat, though never below the time given.`;
}
