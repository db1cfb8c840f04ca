// Report view: cautions that the plan calls for. In: the plan's list. Out: sentences, common practice of safe work.
import type { Caution } from '../../../model/plan.js';
import { type CautionBlock, type CautionWords, cautionWords } from '../../words/word-cautions.js';

export interface CautionsView extends Pick<CautionWords, 'labels'> {
  readonly blocks: readonly CautionBlock[];
}

/** In the order of the plan; undefined for a plan that calls for none. */
export function viewCautions(called: readonly Caution[]): CautionsView | undefined {
  if (called.length === 0) return undefined;
  const { labels, blocks } = cautionWords;
  return { labels, blocks: called.map((caution) => blocks[caution]) };
}
