// Report view: cards for the bench. In: the plan. Out: one card or more for each unit's next batch, all numbers as text.
import type { BenchCard, BenchStep } from '../../../model/bench.js';
import type { Plan } from '../../../model/plan.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordDate } from '../../words/word-numbers.js';
import { placeCards } from './place-cards.js';
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
  readonly unit: string;
  /** Figure, which batch, how many. */
  readonly batch: string;
  readonly finished: string;
  readonly steps: readonly StepView[];
  /** '' where nothing is sprayed. */
  readonly caution: string;
  /** The command that writes its steps down. */
  readonly log: string;
}

interface StepView {
  readonly no: number;
  /** Beside its box, for who can't see the card. */
  readonly tick: string;
  /** Which batch: a tick is for that one alone. */
  readonly batch: number;
  readonly zone: string;
  readonly layer: string;
  readonly coats: string;
  readonly dries: string;
  readonly paints: readonly {
    readonly paint: string;
    readonly hex: string;
    readonly isSwap: boolean;
    readonly amount: string;
  }[];
}

/** In the order in which units are finished. */
export function viewBench({ plan, words, lang }: ViewInputs): BenchView {
  const texts = benchWords(words);
  const { cards, more } = plan.summary.bench;
  return {
    ...{ title: texts.title, lead: texts.lead, labels: texts.labels, lang },
    date: wordDate(plan.date, lang),
    cards: cards.flatMap((card) =>
      placeCards(card.bench.steps).map((steps) => viewCard(card, steps, { plan, texts })),
    ),
    nothing: cards.length === 0 ? texts.nothing : '',
    more: texts.more(more),
  };
}

interface CardInputs {
  readonly plan: Plan;
  readonly texts: BenchWords;
}

function viewCard(card: BenchCard, steps: readonly BenchStep[], inputs: CardInputs): CardView {
  const { unit, bench } = card;
  const { texts } = inputs;
  const sprays = steps.flatMap(({ method }) =>
    method === 'spray can' || method === 'airbrush' ? [method] : [],
  );
  return {
    unit: unit.unit,
    batch: texts.batch(unit.figure, bench),
    finished: texts.finished(card),
    steps: steps.map((step) => viewStep(step, card, inputs)),
    caution: texts.caution(sprays),
    log: texts.log(unit.unit, steps, bench.figures),
  };
}

function viewStep(step: BenchStep, { unit, bench }: BenchCard, { plan, texts }: CardInputs): StepView {
  return {
    no: step.step,
    tick: texts.tick(unit.unit, step),
    batch: bench.batch,
    zone: step.zone,
    layer: texts.layer(step, bench.figures),
    coats: texts.coats(step),
    dries: texts.dries(step),
    paints: step.paints.map((one) => ({
      ...{ paint: one.paint, hex: hexOf(plan, one.paint), isSwap: one.isSwap },
      amount: texts.amount(one, step),
    })),
  };
}
