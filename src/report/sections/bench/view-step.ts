// Report view: one step on a card for the bench. In: the step, its unit's card. Out: its texts and colours.
import { at } from '../../../model/at.js';
import type { BenchCard, BenchPaint } from '../../../model/bench.js';
import type { Plan } from '../../../model/plan.js';
import { stepPlace } from '../../words/card-place.js';
import { hexOf } from '../../words/hex-of.js';
import type { BenchWords, LoggedStep } from './words.js';

export interface StepView extends LoggedStep {
  /** Where a link leads; '' but on the first row of its number. */
  readonly place: string;
  /** Beside its box, for who can't see the card. */
  readonly tick: string;
  /** Which batch: a tick is for that one alone. */
  readonly batch: number;
  readonly zone: string;
  readonly layer: string;
  readonly coats: string;
  /** How it is sprayed; none where it is not. */
  readonly sprays: readonly ('spray can' | 'airbrush')[];
  readonly dries: string;
  readonly paints: readonly (Pick<BenchPaint, 'paint' | 'figures' | 'isSwap'> & {
    readonly hex: string;
    readonly amount: string;
  })[];
}

export interface StepInputs {
  readonly plan: Plan;
  readonly texts: BenchWords;
}

/** The step at that place of the batch. */
export function viewStep(index: number, card: BenchCard, { plan, texts }: StepInputs): StepView {
  const { no, unit, bench } = card;
  const step = at(bench.steps, index);
  const isFirst = bench.steps[index - 1]?.step !== step.step;
  return {
    ...{ no: step.step, figures: step.figures, isParted: step.isParted },
    place: isFirst ? stepPlace(no, step.step) : '',
    tick: texts.tick(unit.unit, step),
    batch: bench.batch,
    zone: step.zone,
    layer: texts.layer(step, bench.figures),
    coats: texts.coats(step),
    sprays: step.method === 'spray can' || step.method === 'airbrush' ? [step.method] : [],
    dries: texts.dries(step),
    paints: step.paints.map((one) => ({
      ...{ paint: one.paint, figures: one.figures, hex: hexOf(plan, one.paint), isSwap: one.isSwap },
      amount: texts.amount(one, step),
    })),
  };
}
