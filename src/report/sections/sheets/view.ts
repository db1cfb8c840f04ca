// Report view: how the sheets were read. In: the plan. Out: a row for each table, as text.
import type { ViewInputs } from '../../words/view-inputs.js';
import { nameOf } from '../../words/word-name.js';
import { wordColumnsRead } from '../../words/word-read.js';
import { type SheetsWords, sheetsWords } from './words.js';

export interface SheetsView extends Pick<SheetsWords, 'labels'> {
  readonly fold: string;
  readonly rows: readonly {
    readonly sheet: string;
    readonly where: string;
    readonly taken: string;
    readonly alone: string;
  }[];
}

/** Undefined for a plan whose sheets nobody has read. */
export function viewSheets({ plan, words }: ViewInputs): SheetsView | undefined {
  const { labels, fold, where } = sheetsWords(words);
  if (plan.read.length === 0) return undefined;
  return {
    labels,
    fold: fold(plan.read.length),
    rows: plan.read.map((one) => {
      const { taken, alone } = wordColumnsRead(one, nameOf);
      return { sheet: one.sheet, where: where(one), taken: taken.join(', '), alone: alone.join(', ') };
    }),
  };
}
