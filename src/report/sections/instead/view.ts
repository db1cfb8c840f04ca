// Report view: what is owned instead of what is to be bought. In: the plan. Out: pairs of colours with the row that takes
// the decision, and the swaps that are taken already.
import type { Instead, Substitute, SwapTaken } from '../../../model/colour.js';
import type { Plan } from '../../../model/plan.js';
import type { Pair } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordAim } from '../../words/word-aim.js';
import { differenceWords } from '../../words/word-difference.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { type FrontierView, viewFrontier } from './view-frontier.js';
import { type Pairing, viewPair } from './view-pair.js';
import { swapHeader, swapRow } from './word-swap-row.js';

export interface InsteadView {
  readonly lead: string;
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
  /** Undefined where nothing has to be bought, or nothing could be swapped. */
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
  const missing = plan.summary.colours.toBuy;
  if (missing === 0 && plan.swaps.length === 0) return undefined;
  const differences = differenceWords(plan, words);
  const pairing = { plan, words, differences };
  return {
    lead: wordLead(plan, missing, words),
    meaning: differences.meaning,
    taken: plan.swaps.slice(0, takenRows).map((swap) => viewTaken(swap, pairing)),
    moreTaken: wordMoreOf(plan.swaps.length - takenRows, 'swap', words),
    paints: plan.instead.slice(0, paintRows).map((one) => viewPaint(one, pairing)),
    morePaints: wordMoreOf(plan.instead.length - paintRows, 'paint', words),
    none: missing > 0 && plan.instead.length === 0 ? noneNear : '',
    header: swapHeader(words),
    frontier: viewFrontier(pairing),
  };
}

const noneNear =
  'Nothing that you own and that the army leaves over comes near what is to be bought, by colour or by another name. ' +
  'Paints without a hex can’t be compared.';

function wordLead({ instead }: Plan, missing: number, words: NumberWords): string {
  if (missing === 0) return 'Nothing has to be bought; these swaps of your sheet are counted in.';
  const of = `Of ${countOf(words, missing, 'paint')} to buy, ${words.count(instead.length)} ${instead.length === 1 ? 'has' : 'have'} something near on your shelf.`;
  return `${of} Nothing is ever swapped unless you say so.`;
}

const wordMoreOf = (rest: number, one: string, words: NumberWords): string =>
  rest > 0 ? `${countOf(words, rest, `more ${one}`)}: plan.json lists each.` : '';

function viewTaken(swap: SwapTaken, pairing: Pairing): InsteadView['taken'][number] {
  const { words } = pairing;
  const steps = swap.steps.map((step) => words.count(step));
  return {
    ...viewPair(swap, pairing),
    where: `${nameOf(swap.scheme)}, ${steps.length === 1 ? 'step' : 'steps'} ${listOf(steps, 8)}`,
  };
}

function viewPaint({ paint, toBuyMl, neededMl, by }: Instead, pairing: Pairing): InsteadPaint {
  const { plan, words } = pairing;
  return {
    paint,
    hex: hexOf(plan, paint),
    toBuy: `${words.ml(toBuyMl)} to buy: ${wordAim(plan, words)} takes ${words.ml(neededMl)} in all`,
    by: by.slice(0, substitutesEach).map((one) => viewSubstitute(one, paint, pairing)),
    more: by.length > substitutesEach ? `and ${words.count(by.length - substitutesEach)} farther off` : '',
  };
}

function viewSubstitute(one: Substitute, paint: string, pairing: Pairing): SubstituteRow {
  const { paint: by, sameByName, spareMl, isEnough, dE00 } = one;
  const { words } = pairing;
  const spare = words.ml(spareMl);
  return {
    ...viewPair({ paint, by, ...(dE00 !== undefined && { dE00 }) }, pairing),
    sameByName,
    spare: isEnough
      ? `${spare} left over: enough for all of it`
      : `${spare} left over: enough for some steps, not for all`,
    row: swapRow(paint, by, words),
  };
}
