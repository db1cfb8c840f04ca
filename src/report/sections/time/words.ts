// Time: its English. In: results, ways to say numbers. Out: text.
import type { BatchTime, EveningPiece, MinuteRange, SmallestBatch, TimePlan } from '../../../model/time.js';
import { wordMinuteRange, wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { lowHighMeaning } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  heading: 'How many evenings',
  claim:
    'Each piece is a step on so many figures. Units come by priority. While one batch dries, the next that is dry goes on; sprays are gathered; overnight everything dries. ' +
    'This is a rule of thumb: nobody proves that fewer evenings would not do.',
  waiting: 'waiting',
  firstCaption: 'The first evenings, step by step',
  folded: 'The evenings after these',
  evening: 'Evening',
  finished: 'Finished:',
  drawn: 'What is painted',
  inAll: 'in all',
  byUnit: 'Hours, unit by unit',
  unitsCaption: 'Brush time of one figure, the whole scheme; and what is still to be done on the unit',
  unit: 'Unit',
  figures: 'figures',
  perFigure: 'a figure',
  range: 'low to high',
  remaining: 'still to be done',
  setup: 'setting up',
  done: 'done on',
  batches: 'How large a batch',
  batchMeaning:
    'A batch is large enough when the first figure is dry by the time the last one is done. What dries long is best left for the end of an evening; the last column leaves it out.',
  batchesCaption: 'One batch by itself, and the smallest batch at which nothing waits',
  inBatches: 'in batches',
  elapsed: 'a batch takes',
  ofThatWaiting: 'of that waiting',
  atLeast: 'no order under',
  stepByStep: 'step by step',
  noWaiting: 'nothing waits from',
  betweenLong: 'long drying overnight',
};

export const timeWords = (say: NumberWords) => ({
  labels,
  lead: ({ evenings, eveningMin, eveningsReckoned }: TimePlan): string => {
    const about = eveningsReckoned ? 'About ' : '';
    return `${about}${countOf(say, evenings, 'evening')} of ${wordMinutes(eveningMin, say)}, if you paint one batch while another dries.`;
  },
  reckoned: (spelledOut: number): string =>
    `The first ${countOf(say, spelledOut, 'evening')} are planned; the rest is reckoned to go on at their pace.`,
  sums: sumWords(say),
  /** `isAllProved`: no batch goes by the rule of thumb. */
  proof: (isAllProved: boolean): string => (isAllProved ? `${proved}.` : `${proved}; ${notProved}`),
  more: (shown: number, evenings: number): string =>
    `The first ${say.count(shown)} evenings are listed; plan.json holds ${say.count(evenings)}.`,
  ...pieceWords(say),
  ...unitWords(say),
});
export type TimeWords = ReturnType<typeof timeWords>;

const proved =
  'Step by step means: one step over the whole batch, then the next. No order of work is shorter where it says proved ' +
  '(always for two coats, for coats that are all alike, and wherever nothing waits)';

const notProved =
  'elsewhere it is a rule of thumb, which another order of work might beat, though never below the time given.';

const sumWords = (say: NumberWords) => ({
  brush: {
    title: 'Brush in hand',
    says: (range: MinuteRange): string => `Low to high ${wordMinuteRange(range, say)} (${lowHighMeaning}).`,
  },
  elapsed: {
    title: 'One batch after the other',
    says: 'Step by step without a break, nothing overlapping: brush in hand, and on top of that',
  },
  setup: { title: 'setting up', says: 'Paint fetched, shaken and put out; rinsing.' },
  waiting: {
    title: 'waiting',
    says: 'Nothing to do but wait for paint to dry. The evenings fill most of it with other batches.',
  },
});

/** A stretch of an evening, beside the name of its unit. */
const pieceWords = (say: NumberWords) => ({
  /** As one would say it: `tunic, Hawser tan, base coat, second coat, on 10 figures`. */
  piece: (piece: EveningPiece): string =>
    piece.what === 'waiting' ? wordWait(piece.minutes, say) : wordWork(piece, say),
  /** By its step: `9 highlight on 12`, `spray 12 varnish on 24`, `15 base coat, coat 2, on 12`. */
  shortPiece: (piece: EveningPiece): string =>
    piece.what === 'waiting' ? wordWait(piece.minutes, say) : wordStep(piece, say),
});

const wordWait = (minutes: number, say: NumberWords): string => `wait ${wordMinutes(minutes, say)}`;

type Work = Exclude<EveningPiece, { what: 'waiting' }>;

function wordStep({ what, pass, figures }: Work, say: NumberWords): string {
  const coat = pass.coat > 1 ? `, coat ${pass.coat},` : '';
  const spray = what === 'spraying' ? 'spray ' : '';
  return `${spray}${pass.step} ${sharedWords.layers[pass.layer]}${coat} on ${say.tenth(figures)}`;
}

const ordinals = ['', '', 'second coat', 'third coat', 'fourth coat'];

function wordWork({ what, pass, figures }: Work, say: NumberWords): string {
  const { zones, paints, layer, coat } = pass;
  return [
    `${what === 'spraying' ? 'spray ' : ''}${listOf(zones.map(nameOf), 2)}`,
    listOf(paints.map(nameOf), 2),
    sharedWords.layers[layer],
    ...(coat > 1 ? [ordinals[coat] ?? `coat ${say.count(coat)}`] : []),
    `on\u00a0${say.tenth(figures)}`,
  ].join(', ');
}

const unitWords = (say: NumberWords) => ({
  unitFinished: 'finished',
  /** Undefined: on an evening that is not spelled out. */
  doneOn: (evening: number | undefined): string =>
    evening === undefined ? 'later' : `evening ${say.count(evening)}`,
  moreUnits: (shown: number): string =>
    `The first ${say.count(shown)} units are listed; plan.json tells the time of each.`,
  batches: ({ batches, figures }: BatchTime): string =>
    `${countOf(say, batches, 'batch', 'batches')} of ${say.count(figures)}`,
  shortest: { proved: 'proved', 'rule of thumb': 'rule of thumb' } satisfies Record<
    BatchTime['shortest'],
    string
  >,
  /** `78 (step 12 varnish dries 30 min)`. */
  smallest: ({ figures, becauseOf }: SmallestBatch): string => {
    if (figures === undefined) return 'none is large enough';
    if (becauseOf === undefined) return say.count(figures);
    const { step, layer, driesMin } = becauseOf;
    return `${say.count(figures)} (step ${say.count(step)} ${sharedWords.layers[layer]} dries ${wordMinutes(driesMin, say)})`;
  },
});
