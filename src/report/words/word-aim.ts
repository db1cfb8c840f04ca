// Report view: a way to buy in words. In: which one. Out: text.
import type { Aim } from '../../model/choices.js';
import type { NumberWords } from './word-numbers.js';

const names: Record<Exclude<Aim['policy'], 'sure'>, readonly [subject: string, name: string]> = {
  likely: ['buying what is likely', 'the likely needs alone'],
  goes: ['buying in goes', 'in goes'],
  wait: ['waiting', 'nothing until a pot is dry'],
};

/** As the subject of a sentence: `80% sure`, `buying in goes`. */
export const wordAim = (aim: Aim, say: NumberWords): string => named(aim, say, 0);

/** As a row of a table: `80% sure`, `in goes`. */
export const nameAim = (aim: Aim, say: NumberWords): string => named(aim, say, 1);

/** What holds of any number of figures; '' where nothing is taken over the likely needs. */
export const wordMargin = (aim: Aim, say: NumberWords): string =>
  aim.policy === 'likely'
    ? ''
    : `What ${wordAim(aim, say)} takes over the likely needs is kept in proportion at every number of figures; by the likely needs alone pots may last longer.`;

const named = ({ policy, surePercent = 0 }: Aim, say: NumberWords, which: 0 | 1): string =>
  policy === 'sure' ? `${say.sure(surePercent)} sure` : names[policy][which];
