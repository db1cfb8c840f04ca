// Report view: coats, undercoats, primers. In: the plan, its sums. Out: why so many coats, what would save some.
import { type Mix, mostOf } from '../../../model/colour.js';
import type { Plan } from '../../../model/plan.js';
import type { ReasonedCoats } from '../../../model/summary.js';
import type { Over } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs, Worded } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { type DifferenceWords, differenceWords } from '../../words/word-difference.js';
import { type PrimersView, viewPrimers } from './view-primers.js';
import { type UndercoatsView, viewUndercoats } from './view-undercoats.js';
import { type CoatWords, coatWords } from './words.js';

export interface CoatsView extends UndercoatsView, Pick<CoatWords, 'labels'> {
  readonly lead: string;
  readonly trust: TrustView;
  /** Most coats first; none where colours decided nothing. */
  readonly rows: readonly CoatRow[];
  /** Said where some reasons are not listed at all; else ''. */
  readonly more: string;
  /** Paints without a colour or an opacity, and what that means; else ''. */
  readonly unknown: string;
  /** Undefined where there are no two primers to compare. */
  readonly primers: PrimersView | undefined;
}

interface CoatRow {
  readonly drawn: Over;
  /** `3 coats: weak yellow over dark brown; over Oat it would be 1`. */
  readonly says: string;
  /** What one coat hides; '' where the rule asks for none. */
  readonly hides: string;
  /** Colour difference beneath, and what is left of it after all coats; '' where the rule asks for none. */
  readonly differs: string;
  readonly left: string;
  /** Schemes with steps and zones. */
  readonly where: string;
}

/** Reasons that get a row of their own. */
const mostRows = 60;

/** Undefined for an army that lays no covering coat. */
export function viewCoats(inputs: ViewInputs): CoatsView | undefined {
  const { plan, words } = inputs;
  const { reasons, unknown, trust } = plan.summary.coats;
  const texts = coatWords(words);
  const primers = viewPrimers(inputs, texts.primers);
  if (reasons.length === 0 && unknown.length === 0 && primers === undefined) return undefined;
  const differences = differenceWords(plan, words);
  return {
    labels: texts.labels,
    lead: texts.lead(differences.visible),
    trust: inputs.trust.of(trust),
    rows: reasons.slice(0, mostRows).map((one) => viewReason(one, { plan, texts, words, differences })),
    more: reasons.length > mostRows ? texts.more(reasons.length - mostRows) : '',
    unknown: unknown.length === 0 ? '' : texts.unknown(unknown),
    ...viewUndercoats(plan, texts.undercoats),
    primers,
  };
}

interface RowInputs extends Worded<CoatWords> {
  readonly differences: DifferenceWords;
}

function viewReason(reasoned: ReasonedCoats, { plan, texts, words, differences }: RowInputs): CoatRow {
  const { coats, because, leftDE00 } = reasoned;
  const { over, under, coatOpacity, dE00 } = because;
  return {
    drawn: { over: hexOfMix(plan, over), under: hexOfMix(plan, under) },
    says: texts.because(coats, because),
    hides: coatOpacity === undefined ? '' : words.percent(coatOpacity),
    differs: leftDE00 === undefined ? '' : differences.bare(dE00),
    left: leftDE00 === undefined ? '' : differences.bare(leftDE00),
    where: texts.places(reasoned.places),
  };
}

/** The colour of the paint that has the largest share: a mix is not mixed here. */
function hexOfMix(plan: Plan, mix: Mix): string {
  const most = mostOf(mix);
  return most === undefined ? '' : hexOf(plan, most.paint);
}
