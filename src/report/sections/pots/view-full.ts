// Pots: one paint with all its amounts. In: its stock, the plan. Out: text.
import type { Range } from '../../../model/ranges.js';
import type { PaintStock } from '../../../model/stock.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { mlDigits } from '../../words/word-numbers.js';
import { wordChance, wordRange } from '../../words/word-sure.js';
import type { PotState, PotWords } from './words.js';

export interface FullRow {
  readonly paint: string;
  readonly runningLow: boolean;
  readonly have: string;
  /** Low to high; '' where it is exact. */
  readonly haveRange: string;
  /** '' for a paint that this army does not need; then nothing of it runs out either. */
  readonly need: string;
  readonly needRange: string;
  readonly chance: string;
  /** '' where it is sure to last, or there is no pot. */
  readonly lasts: string;
  readonly toBuy: string;
  readonly left: string;
  /** '' for a paint of which there is no pot. */
  readonly keep: string;
  readonly trust: TrustView;
}

interface PotInputs extends ViewInputs {
  readonly texts: PotWords;
}

/** All share their digits, except what is to be bought: that reads alike wherever the report says it. */
export function viewFull(
  stock: PaintStock,
  state: PotState,
  { plan, texts, words, trust }: PotInputs,
): FullRow {
  const { paint, runningLow, needMl, haveMl, leftAfterMl, toBuyMl, keepMl, pots } = stock;
  const range = plan.ranges.paints.get(paint);
  const doubt = plan.summary.lasting.paintTrust.get(paint);
  const digits = mlDigits(Math.max(needMl, haveMl));
  const ml = (volumeMl: number): string => words.bareMl(volumeMl, digits);
  const lowHigh = (of: Range | undefined): string =>
    of === undefined || ml(of.low) === ml(of.high) ? '' : wordRange(of, ml);
  const [isNeeded, isOwned] = [state !== 'low' && state !== 'kept', pots.length > 0];
  const reach = plan.summary.lasting.reach.get(paint);
  const isAtRisk = isNeeded && isOwned && needMl > 0 && range !== undefined;
  return {
    paint,
    runningLow,
    have: haveMl === 0 ? texts.none : ml(haveMl),
    haveRange: lowHigh(range?.haveMl),
    need: isNeeded ? ml(needMl) : '',
    needRange: isNeeded ? lowHigh(range?.needMl) : '',
    chance: isAtRisk ? wordChance(range.chanceShort, words) : '',
    lasts: isOwned && reach?.low !== undefined ? texts.lasts(reach) : '',
    toBuy: isNeeded && toBuyMl > 0 ? words.bareMl(toBuyMl) : '',
    left: isNeeded && isOwned && leftAfterMl > 0 ? ml(leftAfterMl) : '',
    keep: isOwned ? ml(keepMl) : '',
    trust: trust.of(doubt ?? { mark: stock.mark, biggestDoubt: '' }),
  };
}
