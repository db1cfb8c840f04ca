// Report words: what every section is worded from. In: a plan. Out: its words and its trust tags, made once.
import type { Plan } from '../../model/plan.js';
import { type TrustWords, trustWords } from './view-trust.js';
import { type NumberWords, numberWords } from './word-numbers.js';

export interface ViewInputs {
  readonly plan: Plan;
  readonly words: NumberWords;
  /** Language of the page. */
  readonly lang: string;
  readonly trust: TrustWords;
}

/** What rows of a section are worded from. */
export interface Worded<Texts> extends Pick<ViewInputs, 'plan' | 'words'> {
  readonly texts: Texts;
}

/** Throws where locale or currency is none: the sheets have checked both. */
export function viewInputs(plan: Plan): ViewInputs {
  return {
    plan,
    trust: trustWords(plan.assumptions),
    words: numberWords(plan.settings),
    lang: pageLanguage(plan.settings.locale),
  };
}

/** The words are English whatever the numbers look like; a wrong tag would make a screen reader mispronounce them. */
const pageLanguage = (locale: string): string => (/^en(-|$)/i.test(locale) ? locale : 'en');
