// Report view: one step on a card for the bench. In: the step, its unit's card. Out: its texts and colours.
import type { BenchCard, BenchStep } from '../../../model/bench.js';
import type { Plan } from '../../../model/plan.js';
import { hexOf } from '../../words/hex-of.js';
import type { BenchWords } from './words.js';

export interface StepView {
  readonly no: number;
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
  readonly paints: readonly {
    readonly paint: string;
    readonly hex: string;
    readonly isSwap: boolean;
    readonly amount: string;
  }[];
}

export interface StepInputs {
  readonly plan: Plan;
  readonly texts: BenchWords;
}

export function viewStep(step: BenchStep, { unit, bench }: BenchCard, { plan, texts }: StepInputs): StepView {
  return {
    no: step.step,
    tick: texts.tick(unit.unit, step),
    batch: bench.batch,
    zone: step.zone,
    layer: texts.layer(step, bench.figures),
    coats: texts.coats(step),
    sprays: step.method === 'spray can' || step.method === 'airbrush' ? [step.method] : [],
    dries: texts.dries(step),
    paints: step.paints.map((one) => ({
      ...{ paint: one.paint, hex: hexOf(plan, one.paint), isSwap: one.isSwap },
      amount: texts.amount(one, step),
    })),
  };
}
