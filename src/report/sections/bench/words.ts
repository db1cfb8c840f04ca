// Bench: the English of the cards. In: results, ways to say numbers. Out: text; '' where there is nothing to say.
import type { BenchCard, BenchPaint, BenchStep, JobBench } from '../../../model/bench.js';
import { groupBy } from '../../../model/group-by.js';
import type { Caution } from '../../../model/plan.js';
import { quoteName } from '../../words/quote-name.js';
import { cautionWords } from '../../words/word-cautions.js';
import { wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { wordSpans } from '../../words/word-spans.js';
import { sharedWords } from '../../words/words.js';

/** What of a step is written down. */
export interface LoggedStep extends Pick<BenchStep, 'figures' | 'isParted'> {
  readonly no: number;
  readonly paints: readonly Pick<BenchPaint, 'paint' | 'figures'>[];
}

export const benchWords = (say: NumberWords) => ({
  title: 'Bench cards',
  lead: 'Paint to put out for each unit’s next batch: the likely amount, then, to be sure, what is enough in 9 batches of 10. Unthinned, unless water is named.',
  labels: { report: 'The report', swap: 'swap', log: 'When it is done, write it down:' },
  nothing: sharedWords.nothingLeft,
  more: (units: number) =>
    units === 0
      ? ''
      : `${countOf(say, units, 'more unit')}: their cards come once some of these are painted.`,
  ...cardWords(say),
  ...stepWords(say),
});

export type BenchWords = ReturnType<typeof benchWords>;

const cardWords = (say: NumberWords) => ({
  /** `lock keeper: batch 1 of 4, 10 figures` */
  batch: (figure: string, { batch, batches, figures }: JobBench, isContinued: boolean) => {
    const which = batches === 1 ? '' : `batch ${sharedWords.some(say.count(batch), say.count(batches))}, `;
    const all = `${nameOf(figure)}: ${which}${countOf(say, figures, 'figure')}`;
    return isContinued ? `${all}, continued` : all;
  },
  finished: ({ doneOnEvening }: BenchCard) =>
    doneOnEvening === undefined ? '' : `Finished on evening ${say.count(doneOnEvening)}`,
  caution: (sprays: readonly Caution[]) =>
    [...new Set(sprays)].map((one) => cautionWords.blocks[one].says[0] ?? '').join(' '),
  /** The steps of one card and no others: at once those on as many figures, paint by paint those that are parted. */
  commands: (unit: string, steps: readonly LoggedStep[]): string[] => {
    const log = `halfpot log SHEETS --unit ${quoteName(unit)}`;
    const whole = groupBy(steps, ({ isParted, figures }) => (isParted ? undefined : figures));
    const parted = steps.filter(({ isParted }) => isParted);
    const paints = parted.flatMap(({ no, paints }) =>
      paints.map(
        ({ paint, figures }) => `${log} --step ${no} --paint ${quoteName(paint)} --figures ${figures}`,
      ),
    );
    return [
      ...[...whole].map(
        ([figures, rows]) => `${log} --steps ${wordSpans(rows.map(({ no }) => no))} --figures ${figures}`,
      ),
      ...new Set(paints),
    ];
  },
});

const stepWords = (say: NumberWords) => ({
  tick: (unit: string, { step, zone, layer }: BenchStep) =>
    `${nameOf(unit)}, step ${say.count(step)}: ${nameOf(zone)}, ${sharedWords.layers[layer]}`,
  layer: ({ layer, figures }: BenchStep, batchOf: number) =>
    sharedWords.layers[layer] + (figures === batchOf ? '' : `, on ${say.count(figures)}`),
  /** `2 coats, 0.5 parts of water` */
  coats: ({ coats, thin }: BenchStep) =>
    `${countOf(say, coats, 'coat')}${thin === 0 ? '' : `, ${countOf(say, thin, 'part')} of water`}`,
  /** `a coat: 9 drops, 0.45 ml; to be sure 18 drops`; sprays in ml alone. */
  amount: ({ coatMl, coatHighMl, drops, highDrops }: BenchPaint, { coats }: BenchStep) => {
    const each = coats === 1 ? '' : 'a coat: ';
    if (drops === undefined || highDrops === undefined)
      return `${each}${say.ml(coatMl)}; to be sure ${say.ml(coatHighMl, mlDigits(coatMl))}`;
    return `${each}${countOf(say, drops, 'drop')}, ${say.ml(coatMl)}; to be sure ${countOf(say, highDrops, 'drop')}`;
  },
  dries: ({ driesMin, startNext }: BenchStep) =>
    `dries ${wordMinutes(driesMin, say)}${startNext ? ': start the next batch here' : ''}`,
});
