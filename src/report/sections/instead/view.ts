// Report view: what is owned instead of what is to be bought. In: the plan. Out: pairs of colours with the row that takes
// the decision, and the swaps that are taken already.
import type { Instead, Substitute, SwapTaken } from '../../../model/colour.js';
import type { Pair } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { differenceWords } from '../../words/word-difference.js';
import { type FrontierView, viewFrontier } from './view-frontier.js';
import { type Pairing, viewPair } from './view-pair.js';
import { swapHeader, swapRow } from './word-swap-row.js';
import { type InsteadWords, insteadWords } from './words.js';

export interface InsteadView {
  readonly labels: InsteadWords['labels'];
  readonly heading: string;
  /** What colour differences mean. */
  readonly meaning: string;
  /** What the swaps sheet changed already. */
  readonly taken: readonly TakenRow[];
  /** Said where more swaps hold than are listed; else ''. */
  readonly moreTaken: string;
  /** What may stand in for paints to buy. */
  readonly paints: readonly InsteadPaint[];
  readonly morePaints: string;
  /** Said where something is to be bought and nothing owned comes near; else ''. */
  readonly none: string;
  /** The header of the swaps sheet, for the rows given here. */
  readonly header: string;
  /** Undefined where other colours save too little. */
  readonly frontier: FrontierView | undefined;
}

interface TakenRow extends Pair {
  readonly where: string;
}

interface InsteadPaint {
  readonly paint: string;
  readonly hex: string;
  readonly toBuy: string;
  readonly by: readonly SubstituteRow[];
  /** Said where more stand ready than are listed; else ''. */
  readonly more: string;
}

interface SubstituteRow extends Pair {
  /** True where the names say that both are one colour. */
  readonly sameByName: boolean;
  /** What the army leaves over of it, and whether that does. */
  readonly spare: string;
  /** The row to write into the swaps sheet. */
  readonly row: string;
}

/** Swaps and paints that get a row of their own, and substitutes listed for each. */
const [takenRows, paintRows, substitutesEach] = [30, 30, 4];

/** Undefined where nothing is to be bought and nothing is swapped. */
export function viewInstead({ plan, words }: ViewInputs): InsteadView | undefined {
  const { swaps, instead } = plan;
  const missing = plan.summary.colours.toBuy;
  if (missing === 0 && swaps.length === 0) return undefined;
  const differences = differenceWords(plan, words);
  const texts = insteadWords(words);
  const pairing = { plan, words, differences, texts };
  return {
    labels: texts.labels,
    heading: texts.heading(missing, instead.length),
    meaning: differences.meaning,
    taken: swaps.slice(0, takenRows).map((swap) => viewTaken(swap, pairing)),
    moreTaken: swaps.length > takenRows ? texts.moreTaken(swaps.length - takenRows) : '',
    paints: instead.slice(0, paintRows).map((one) => viewPaint(one, pairing)),
    morePaints: instead.length > paintRows ? texts.morePaints(instead.length - paintRows) : '',
    none: missing > 0 && instead.length === 0 ? texts.noneNear : '',
    header: swapHeader(words),
    frontier: plan.summary.colours.isWorthwhile ? viewFrontier(pairing) : undefined,
  };
}

const viewTaken = (swap: SwapTaken, pairing: Pairing): TakenRow => ({
  ...viewPair(swap, pairing),
  where: pairing.texts.where(swap),
});

function viewPaint(one: Instead, pairing: Pairing): InsteadPaint {
  const { plan, texts } = pairing;
  const { paint, by } = one;
  return {
    paint,
    hex: hexOf(plan, paint),
    toBuy: texts.toBuy(one, plan.aim),
    by: by.slice(0, substitutesEach).map((other) => viewSubstitute(other, paint, pairing)),
    more: by.length > substitutesEach ? texts.fartherOff(by.length - substitutesEach) : '',
  };
}

function viewSubstitute(one: Substitute, paint: string, pairing: Pairing): SubstituteRow {
  const { paint: by, sameByName, dE00 } = one;
  return {
    ...viewPair({ paint, by, ...(dE00 !== undefined && { dE00 }) }, pairing),
    sameByName,
    spare: pairing.texts.spare(one),
    row: swapRow(paint, by, pairing.words),
  };
}
