// Report view: primers side by side. In: the plan's comparison. Out: rows, best first, and the best named.
import type { ComparedPrimer, PrimerComparison } from '../../model/colour.js';
import type { PrimerRow, PrimersView } from './coats-view.js';
import type { ViewInputs } from './view-inputs.js';
import { hexOf } from './view-palette.js';
import { wordMinutes } from './word-minutes.js';
import { nameOf } from './word-name.js';
import { listOf, mlDigits, type NumberWords } from './word-numbers.js';

const mostRows = 20;

/** Primers named as the best. */
const mostNamed = 4;

/** Undefined where there are no two primers to compare. */
export function viewPrimers({ plan, words }: ViewInputs): PrimersView | undefined {
  const { primers } = plan.primers;
  if (primers.length < 2) return undefined;
  const usedMinutes = minutesInUse(plan.primers);
  const digits = mlDigits(Math.max(...primers.map(({ ml }) => ml)));
  return {
    lead: `${wordBest(plan.primers, words)}${wordNotListed(primers.length, words)}`,
    colourless: primers.every(({ hasColour }) => hasColour)
      ? ''
      : 'No colour: without a hex nobody knows how well coats hide it, so those over it are the usual ones of their layers, and its row says little.',
    rows: primers.slice(0, mostRows).map((primer): PrimerRow => {
      const { paint, coats, ml, useCost, minutes, inUse } = primer;
      return {
        paint,
        hex: hexOf(plan, paint),
        isBest: plan.primers.best.includes(paint),
        flags: listFlags(primer),
        coats: words.count(Math.round(coats)),
        ml: words.ml(ml, digits),
        cost: words.amount(useCost),
        minutes: wordMinutes(minutes, words),
        compared: inUse || usedMinutes === undefined ? '' : wordCompared(minutes - usedMinutes, words),
      };
    }),
  };
}

/** Of the one primer that the schemes have now; undefined where they have several, or none. */
function minutesInUse({ primers }: PrimerComparison): number | undefined {
  const used = primers.filter(({ inUse }) => inUse);
  return used.length === 1 ? used[0]?.minutes : undefined;
}

function wordCompared(more: number, words: NumberWords): string {
  if (Math.abs(more) < 0.5) return 'the same';
  return `${wordMinutes(Math.abs(more), words)} ${more > 0 ? 'more' : 'less'}`;
}

function listFlags({ owned, inUse, hasColour }: ComparedPrimer): string[] {
  const place = owned ? 'on your shelf' : inUse ? 'not owned' : 'on offer';
  return [place, ...(inUse ? ['in your schemes'] : []), ...(hasColour ? [] : ['no colour'])];
}

function wordBest(comparison: PrimerComparison, words: NumberWords): string {
  const best = comparison.primers.filter(({ paint }) => comparison.best.includes(paint));
  const [found] = best;
  if (found === undefined)
    return 'Fewer than two of these primers have a colour, so none can be called the best.';
  const used = comparison.primers.filter(({ inUse }) => inUse);
  const only = used.length === 1 ? used[0] : undefined;
  const named = best.map((one) => `${nameOf(one.paint)}${one === only ? ', which your schemes have,' : ''}`);
  const takes =
    best.length === 1 ? 'takes the least brush time' : 'take the least brush time, and tie in all else';
  const least = `${listOf(named, mostNamed)} ${takes}`;
  if (only === undefined || best.includes(only)) return `${least}.`;
  const saved = wordMinutes(only.minutes - found.minutes, words);
  return `${least}: ${saved} less than ${nameOf(only.paint)}, which your schemes have.${wordToBuy(best)}`;
}

function wordToBuy(best: readonly ComparedPrimer[]): string {
  if (best.some(({ owned }) => owned)) return '';
  return best.length === 1
    ? ' You do not own it, and the order above does not hold it.'
    : ' You own none of them, and the order above holds none.';
}

const wordNotListed = (primers: number, words: NumberWords): string =>
  primers > mostRows
    ? ` The first ${words.count(mostRows)} are listed; ${words.count(primers - mostRows)} more stand in plan.json.`
    : '';
