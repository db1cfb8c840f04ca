// Report view: undercoats worth their coat. In: the plan's advice. Out: rows with what each saves.
import type { Plan } from '../../../model/plan.js';
import type { Over } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { CoatWords } from './words.js';

export interface UndercoatsView {
  readonly undercoats: readonly UndercoatRow[];
  /** Said where more undercoats are known than listed; else ''. */
  readonly moreUndercoats: string;
}

interface UndercoatRow {
  readonly drawn: Over;
  readonly says: string;
  readonly where: string;
  readonly coats: string;
  readonly ml: string;
  readonly minutes: string;
}

const mostRows = 20;

/** Most minutes saved first. */
export function viewUndercoats(plan: Plan, texts: CoatWords['undercoats']): UndercoatsView {
  const { undercoats } = plan;
  return {
    undercoats: undercoats.slice(0, mostRows).map((advice) => ({
      drawn: { over: hexOf(plan, advice.over[0]?.paint ?? ''), under: hexOf(plan, advice.undercoat) },
      says: texts.says(advice),
      where: texts.where(advice),
      coats: texts.coats(advice.coatsSaved),
      ml: texts.ml(advice.mlSaved),
      minutes: texts.minutes(advice.minutesSaved),
    })),
    moreUndercoats: undercoats.length > mostRows ? texts.more(undercoats.length - mostRows) : '',
  };
}
