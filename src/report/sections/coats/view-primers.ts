// Report view: primers side by side. In: the plan's comparison. Out: rows, best first, and the best named.
import type { ComparedPrimer } from '../../../model/colour.js';
import type { Plan } from '../../../model/plan.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { wordMinutes, wordMoreMinutes } from '../../words/word-minutes.js';
import { mlDigits } from '../../words/word-numbers.js';
import type { BestPrimers, CoatWords } from './words.js';

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

type PrimerWords = CoatWords['primers'];

/** Undefined where there are no two primers to compare. */
export function viewPrimers({ plan, words }: ViewInputs, texts: PrimerWords): PrimersView | undefined {
  const { primers } = plan.primers;
  if (primers.length < 2) return undefined;
  const { primerExtraMin } = plan.summary.coats;
  const digits = mlDigits(Math.max(...primers.map(({ ml }) => ml)));
  const notListed = primers.length > mostRows ? texts.notListed(mostRows, primers.length) : '';
  return {
    lead: `${texts.best(findBest(plan))}${notListed}`,
    colourless: primers.every(({ hasColour }) => hasColour) ? '' : texts.colourless,
    rows: primers.slice(0, mostRows).map((primer): PrimerRow => {
      const { paint, coats, ml, useCost, minutes, inUse } = primer;
      const extraMin = primerExtraMin.get(paint);
      return {
        paint,
        hex: hexOf(plan, paint),
        isBest: plan.primers.best.includes(paint),
        flags: listFlags(primer, texts),
        coats: words.count(Math.round(coats)),
        ml: words.ml(ml, digits),
        cost: words.amount(useCost),
        minutes: wordMinutes(minutes, words),
        compared: inUse || extraMin === undefined ? '' : wordMoreMinutes(extraMin, words),
      };
    }),
  };
}

function listFlags({ owned, inUse, hasColour }: ComparedPrimer, { flags }: PrimerWords): string[] {
  const place = owned ? flags.owned : inUse ? flags.notOwned : flags.onOffer;
  return [place, ...(inUse ? [flags.inUse] : []), ...(hasColour ? [] : [flags.colourless])];
}

function findBest({ primers: { primers, best: names }, summary }: Plan): BestPrimers {
  const best = primers.filter(({ paint }) => names.includes(paint));
  const used = primers.filter(({ inUse }) => inUse);
  return {
    best,
    only: used.length === 1 ? used[0] : undefined,
    savedMin: Math.abs(summary.coats.primerExtraMin.get(best[0]?.paint ?? '') ?? 0),
  };
}
