// Report view: what ways buy at once, by itself. In: the ways that buy alike. Out: lines by shop, and what waits.

import type { Choice } from '../../../model/choices.js';
import type { Worded } from '../../words/view-inputs.js';
import { nameAim } from '../../words/word-aim.js';
import { listOf } from '../../words/word-numbers.js';
import type { BuyingWords } from './words.js';

export interface BuyList {
  /** Where links lead. */
  readonly id: string;
  readonly title: string;
  readonly shops: readonly { readonly shop: string; readonly lines: readonly string[] }[];
  readonly sums: string;
  /** What it leaves out; '' for nothing. */
  readonly waits: string;
  /** What follows once it has come. */
  readonly follows: string;
}

export function viewList(
  alike: readonly [Choice, ...Choice[]],
  { plan, words, texts }: Worded<BuyingWords>,
): BuyList {
  const [choice] = alike;
  const { policy, surePercent = '', lines, bills, cashNowMinor } = choice;
  const { postageMinor = 0, waits = [] } = plan.summary.buying.sums.get(choice) ?? {};
  return {
    id: `buy-${policy}${surePercent}`.replace('.', '-'),
    title: texts.list(listOf(alike.map((one) => nameAim(one, words))), cashNowMinor),
    shops: bills.map(({ shop }) => ({
      shop,
      lines: lines.filter((line) => line.shop === shop).map(texts.line),
    })),
    sums: texts.sums(postageMinor, cashNowMinor),
    waits: waits.length === 0 ? '' : texts.waits(waits),
    follows: texts.follows(choice),
  };
}
