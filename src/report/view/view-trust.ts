// Report view: mark and biggest doubt beside a result, and the ids that lead to the registry.
// In: doubts, the plan's assumptions. Out: TrustView.
import { type Assumption, type Mark, marks } from '../../model/assumption.js';
import type { Doubt } from '../../model/ranges.js';
import { type Doubts, markOf, rankDoubts } from './sum-work.js';
import type { TrustView } from './trust-view.js';
import { wordDoubt } from './word-sure.js';

/** Makes trust tags for one plan. */
export interface TrustWords {
  /** Id of an assumption's row in the page: letters, digits, hyphens; '' for a name that the plan lacks. */
  idOf(name: string): string;
  /** The weakest mark of all inputs and the doubt with most ml behind it. */
  of(doubts: Doubts, ...others: readonly Mark[]): TrustView;
  /** The same mark with the doubt that the draws found greatest; without one it stays as it is. */
  lead(trust: TrustView, found: Doubt | undefined): TrustView;
}

export function trustWords(assumptions: readonly Assumption[]): TrustWords {
  const ids = new Map(assumptions.map(({ name }, index) => [name, `a${index + 1}`]));
  const idOf = (name: string): string => ids.get(name) ?? '';
  return {
    idOf,
    of: (doubts, ...others) => {
      const doubt = rankDoubts(doubts)[0]?.name ?? '';
      return { mark: markOf(doubts, ...others), doubt, doubtId: idOf(doubt) };
    },
    lead: (trust, found) =>
      found === undefined ? trust : { ...trust, doubt: wordDoubt(found.name), doubtId: idOf(found.name) },
  };
}

const meanings: Record<Mark, string> = {
  weighed: 'You weighed it: learned from your log.',
  yours: 'It stands in your sheets.',
  'your model': 'Measured on your own model file.',
  published: 'From a published source, named beside it.',
  'open models': 'Measured on free-licensed 3D models of people, soldiers and horses.',
  'common practice': 'What painters usually do; no source.',
  'from memory': 'An educated guess; no source is known. Your own value is better.',
};

/** All marks with what they mean, strongest first. */
export const markMeanings = marks.map((mark) => ({ mark, meaning: meanings[mark] }));
