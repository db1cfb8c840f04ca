// Report view: undercoats worth their coat. In: the plan's advice. Out: rows with what each saves.
import type { UndercoatAdvice } from '../../../model/colour.js';
import type { Over } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, isTraceMl, type NumberWords } from '../../words/word-numbers.js';
import { wordMix } from './word-coats.js';

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
export function viewUndercoats({ plan, words }: ViewInputs): UndercoatsView {
  const { undercoats } = plan;
  return {
    undercoats: undercoats.slice(0, mostRows).map((advice) => ({
      drawn: { over: hexOf(plan, advice.over[0]?.paint ?? ''), under: hexOf(plan, advice.undercoat) },
      ...wordAdvice(advice, words),
    })),
    moreUndercoats:
      undercoats.length > mostRows
        ? `${countOf(words, undercoats.length - mostRows, 'more undercoat')} would save less; plan.json lists each.`
        : '',
  };
}

function wordAdvice(advice: UndercoatAdvice, words: NumberWords): Omit<UndercoatRow, 'drawn'> {
  const { over, undercoat, undercoatCoats, coatsWith, coatsWithout, coatsSaved, figures } = advice;
  const count = (coats: number): string => countOf(words, coats, 'coat');
  return {
    says:
      `${count(undercoatCoats)} of ${nameOf(undercoat)} first, then ${count(coatsWith)} of ${wordMix(over)} ` +
      `instead of ${words.count(coatsWithout)}`,
    where: `${nameOf(advice.scheme)}: ${advice.step} ${nameOf(advice.zone)}, ${countOf(words, figures, 'figure')}`,
    coats: `${words.count(coatsSaved)} fewer`,
    ml: wordMl(advice.mlSaved, words),
    minutes: `${wordMinutes(advice.minutesSaved, words)} less`,
  };
}

/** Leftovers of one more palette may take more than the coats save. */
function wordMl(savedMl: number, words: NumberWords): string {
  if (isTraceMl(savedMl)) return 'as much';
  return `${words.ml(Math.abs(savedMl))} ${savedMl > 0 ? 'less' : 'more'}`;
}
