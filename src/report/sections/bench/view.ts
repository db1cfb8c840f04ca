// Report view: cards for the bench. In: the plan. Out: one card or more for each unit's next batch, all numbers as text.
import type { BenchCard } from '../../../model/bench.js';
import { cardPlace } from '../../words/card-place.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordDate } from '../../words/word-numbers.js';
import { placeCards } from './place-cards.js';
import { type StepInputs, type StepView, viewStep } from './view-step.js';
import { type BenchWords, benchWords } from './words.js';

export interface BenchView extends Pick<BenchWords, 'title' | 'lead' | 'labels'> {
  readonly lang: string;
  readonly date: string;
  readonly cards: readonly CardView[];
  /** Said where everything is painted; else ''. */
  readonly nothing: string;
  /** Said where some units have no card; else ''. */
  readonly more: string;
}

interface CardView {
  /** Where a link leads; '' on a further card of its unit. */
  readonly place: string;
  readonly unit: string;
  /** Figure, which batch, how many. */
  readonly batch: string;
  readonly finished: string;
  readonly steps: readonly StepView[];
  /** '' where nothing is sprayed. */
  readonly caution: string;
  /** What writes its steps down. */
  readonly commands: readonly string[];
}

/** In the order in which units are finished. */
export function viewBench({ plan, words, lang }: ViewInputs): BenchView {
  const texts = benchWords(words);
  const { cards, more } = plan.summary.bench;
  return {
    ...{ title: texts.title, lead: texts.lead, labels: texts.labels, lang },
    date: wordDate(plan.date, lang),
    cards: cards.flatMap((card) => viewCards(card, { plan, texts })),
    nothing: cards.length === 0 ? texts.nothing : '',
    more: texts.more(more),
  };
}

/** As many as the batch's steps take. */
function viewCards(card: BenchCard, inputs: StepInputs): CardView[] {
  const { unit, bench } = card;
  const { texts } = inputs;
  const groups = placeCards(bench.steps.map((_, at) => viewStep(at, card, inputs)));
  return groups.map((steps, at) => ({
    place: at === 0 ? cardPlace(card.no) : '',
    unit: unit.unit,
    batch: texts.batch(unit.figure, bench, at > 0),
    finished: texts.finished(card),
    steps,
    caution: texts.caution(steps.flatMap(({ sprays }) => sprays)),
    commands: texts.commands(unit.unit, steps),
  }));
}
