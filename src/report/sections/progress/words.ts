// Progress: its English. In: results, ways to say numbers. Out: text.
import type { JobSummary, PutOut } from '../../../model/summary.js';
import { formOf } from '../../words/form-of.js';
import { countOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';

const labels = {
  heading: 'What is done',
  source: 'From the army sheet’s column done, and from log rows that name unit, step and figures.',
  byUnit: 'What is done, unit by unit',
  caption:
    'Steps finished on every figure, and the paint of the whole scheme beside what is still to be put out',
  unit: 'Unit',
  drawn: 'Drawn',
  figures: 'figures',
  steps: 'steps finished',
  begun: 'begun',
  whole: 'whole scheme',
  remaining: 'still to be put out',
};

export const progressWords = (say: NumberWords) => ({
  labels,
  lead: ({ wholeMl, remainingMl }: PutOut, finished: number, units: number): string => {
    const digits = mlDigits(wholeMl);
    const shrunk = `What the army needs has shrunk from ${say.ml(wholeMl, digits)} to ${say.ml(remainingMl, digits)}.`;
    const whole = ` ${countOf(say, finished, 'unit')} of ${say.count(units)} ${formOf(finished, 'is', 'are')} finished.`;
    return finished === 0 ? shrunk : `${shrunk}${whole}`;
  },
  steps: (finished: number, steps: number): string => `${say.count(finished)} of ${say.count(steps)}`,
  /** A step that some figures of a unit have had. */
  begun: ({ step, figures }: JobSummary['begun'][number], ofFigures: number): string =>
    `step ${say.count(step)} on ${say.count(figures)} of ${say.count(ofFigures)}`,
  nothing: 'nothing',
  more: (shown: number): string =>
    `The first ${say.count(shown)} units are listed; plan.json tells how far each of the others is.`,
});
export type ProgressWords = ReturnType<typeof progressWords>;
