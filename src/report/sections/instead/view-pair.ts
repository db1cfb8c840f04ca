// Report view: two paints side by side. In: their names and distance. Out: their colours, and the difference in words.

import type { SwapTaken } from '../../../model/colour.js';
import type { Pair } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { Worded } from '../../words/view-inputs.js';
import type { DifferenceWords } from '../../words/word-difference.js';
import type { InsteadWords } from './words.js';

/** What pairs are worded with. */
export interface Pairing extends Worded<InsteadWords> {
  readonly differences: DifferenceWords;
}

/** Two paints with their colours; the difference may not be known. */
export function viewPair(
  { paint, by, dE00 }: Pick<SwapTaken, 'paint' | 'by' | 'dE00'>,
  { plan, differences }: Pairing,
): Pair {
  return {
    ...{ paint, by, hex: hexOf(plan, paint), byHex: hexOf(plan, by) },
    differs: dE00 === undefined ? '' : differences.of(dE00),
  };
}
