// Report view: primers side by side. In: the plan's comparison. Out: rows, best first, and the best named.
import type { ComparedPrimer } from '../../../model/colour.js';
import type { Plan } from '../../../model/plan.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinutes, wordMoreMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { listOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';

export interface PrimersView {
  readonly lead: string;
  /** What a primer without a colour means; '' where all have one. */
  readonly colourless: string;
  readonly rows: readonly PrimerRow[];
}

interface PrimerRow {
  readonly paint: string;
  readonly hex: string;
  readonly isBest: boolean;
  /** `on your shelf`, `in your schemes`, `on offer`, `no colour`. */
  readonly flags: readonly string[];
  readonly coats: string;
  readonly ml: string;
  readonly cost: string;
  readonly minutes: string;
  /** Minutes against the primers in use: `7 h 30 min less`; '' for these. */
  readonly compared: string;
}

const mostRows = 20;

/** Primers named as the best. */
const mostNamed = 4;

/** Undefined where there are no two primers to compare. */
export function viewPrimers({ plan, words }: ViewInputs): PrimersView | undefined {
  const { primers } = plan.primers;
  if (primers.length < 2) return undefined;
  const { primerExtraMin } = plan.summary.coats;
  const digits = mlDigits(Math.max(...primers.map(({ ml }) => ml)));
  return {
    lead: `${wordBest(plan, words)}${wordNotListed(primers, words)}`,
    colourless: primers.every(({ hasColour }) => hasColour)
      ? ''
      : 'No colour: without a hex nobody knows how well coats hide it, so those over it are the usual ones of their layers, and its row says little.',
    rows: primers.slice(0, mostRows).map((primer): PrimerRow => {
      const { paint, coats, ml, useCost, minutes, inUse } = primer;
      const extraMin = primerExtraMin.get(paint);
      return {
        paint,
        hex: hexOf(plan, paint),
        isBest: plan.primers.best.includes(paint),
        flags: listFlags(primer),
        coats: words.count(Math.round(coats)),
        ml: words.ml(ml, digits),
        cost: words.amount(useCost),
        minutes: wordMinutes(minutes, words),
        compared: inUse || extraMin === undefined ? '' : wordMoreMinutes(extraMin, words),
      };
    }),
  };
}

function listFlags({ owned, inUse, hasColour }: ComparedPrimer): string[] {
  const place = owned ? 'on your shelf' : inUse ? 'not owned' : 'on offer';
  return [place, ...(inUse ? ['in your schemes'] : []), ...(hasColour ? [] : ['no colour'])];
}

function wordBest({ primers: { primers, best: names }, summary }: Plan, words: NumberWords): string {
  const best = primers.filter(({ paint }) => names.includes(paint));
  const [found] = best;
  if (found === undefined)
    return 'Fewer than two of these primers have a colour, so none can be called the best.';
  const used = primers.filter(({ inUse }) => inUse);
  const only = used.length === 1 ? used[0] : undefined;
  const named = best.map((one) => `${nameOf(one.paint)}${one === only ? ', which your schemes have,' : ''}`);
  const takes =
    best.length === 1 ? 'takes the least brush time' : 'take the least brush time, and tie in all else';
  const least = `${listOf(named, mostNamed)} ${takes}`;
  if (only === undefined || best.includes(only)) return `${least}.`;
  const saved = wordMinutes(Math.abs(summary.coats.primerExtraMin.get(found.paint) ?? 0), words);
  return `${least}: ${saved} less than ${nameOf(only.paint)}, which your schemes have.${wordToBuy(best)}`;
}

function wordToBuy(best: readonly ComparedPrimer[]): string {
  if (best.some(({ owned }) => owned)) return '';
  return best.length === 1
    ? ' You do not own it, and the order above does not hold it.'
    : ' You own none of them, and the order above holds none.';
}

const wordNotListed = (primers: readonly ComparedPrimer[], words: NumberWords): string =>
  primers.length > mostRows
    ? ` The first ${words.count(mostRows)} are listed; ${words.count(primers.length - mostRows)} more stand in plan.json.`
    : '';
