// Report words: mark and biggest doubt beside a result, and the ids that lead to the registry.
// In: the trust of a result, the plan's assumptions. Out: TrustView.
import { type Assumption, familyName, type Mark, marks } from '../../model/assumption.js';
import type { Trust } from '../../model/work.js';
import { wordDoubt } from './word-sure.js';
import { sharedWords } from './words.js';

/** Mark and biggest doubt, shown beside a result. */
export interface TrustView {
  readonly mark: Mark;
  readonly says: string;
  /** The assumption that causes most of the doubt; '' where every input is exact. */
  readonly doubt: string;
  /** Id of its row in the registry; '' where it has none. */
  readonly doubtId: string;
}

/** Makes trust tags for one plan. */
export interface TrustWords {
  /** Id of an assumption's row in the page: letters, digits, hyphens; '' for a name that the plan lacks. */
  idOf(name: string): string;
  of(trust: Trust): TrustView;
}

export function trustWords(assumptions: readonly Assumption[]): TrustWords {
  const ids = new Map(assumptions.map(({ name }, index) => [name, `a${index + 1}`]));
  const idOf = (name: string): string => ids.get(name) ?? ids.get(familyName(name)) ?? '';
  return {
    idOf,
    of: ({ mark, biggestDoubt }) => ({
      mark,
      says: sharedWords.marks[mark].name,
      doubt: wordDoubt(biggestDoubt),
      doubtId: idOf(biggestDoubt),
    }),
  };
}

/** All marks with what they mean, strongest first. */
export const markMeanings = marks.map((mark) => ({ mark, ...sharedWords.marks[mark] }));
