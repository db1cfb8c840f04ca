// Report view: coats, undercoats, primers. In: the plan, its sums. Out: why so many coats, what would save some.
import { type Mix, mostOf } from '../../../model/colour.js';
import type { Plan } from '../../../model/plan.js';
import type { ReasonedCoats } from '../../../model/summary.js';
import type { Over } from '../../drawing/draw-over.js';
import { hexOf } from '../../words/hex-of.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { type DifferenceWords, differenceWords } from '../../words/word-difference.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { type PrimersView, viewPrimers } from './view-primers.js';
import { type UndercoatsView, viewUndercoats } from './view-undercoats.js';
import { wordCoats } from './word-coats.js';

export interface CoatsView extends UndercoatsView {
  readonly lead: string;
  readonly trust: TrustView;
  /** Reasons that are shown at once, most coats first; none where colours decided nothing. */
  readonly first: readonly CoatRow[];
  /** Reasons that are folded away. */
  readonly folded: readonly CoatRow[];
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

/** Reasons shown at once, and at most with those folded away. */
const [shownRows, mostRows] = [8, 60];

/** Undefined for an army that lays no covering coat. */
export function viewCoats(inputs: ViewInputs): CoatsView | undefined {
  const { plan, words } = inputs;
  const { reasons, unknown, trust } = plan.summary.coats;
  const primers = viewPrimers(inputs);
  if (reasons.length === 0 && unknown.length === 0 && primers === undefined) return undefined;
  const differences = differenceWords(plan, words);
  const rows = reasons.slice(0, mostRows).map((one) => viewReason(one, { plan, words, differences }));
  return {
    lead: wordLead(reasons.length, differences, words),
    trust: inputs.trust.of(trust),
    first: rows.slice(0, shownRows),
    folded: rows.slice(shownRows),
    more:
      reasons.length > mostRows
        ? `${countOf(words, reasons.length - mostRows, 'more reason')}: plan.json says it with each line.`
        : '',
    unknown: wordUnknown(unknown),
    ...viewUndercoats(inputs),
    primers,
  };
}

function wordLead(reasons: number, { visible }: DifferenceWords, words: NumberWords): string {
  if (reasons === 0) return 'Each layer has the coats that your scheme says, or else its usual number.';
  return (
    'Where a scheme leaves coats blank, a base coat or midtone gets as many as hide what lies beneath. Each coat lets ' +
    'some of the colour difference beneath it through; when less than ' +
    `${words.plain(visible)} of it is left, nobody sees it any more.`
  );
}

interface RowInputs {
  readonly plan: Plan;
  readonly words: NumberWords;
  readonly differences: DifferenceWords;
}

function viewReason(reasoned: ReasonedCoats, { plan, words, differences }: RowInputs): CoatRow {
  const { coats, because, leftDE00 } = reasoned;
  const { over, under, coatOpacity, dE00 } = because;
  return {
    drawn: { over: hexOfMix(plan, over), under: hexOfMix(plan, under) },
    says: wordCoats(coats, because, words),
    hides: coatOpacity === undefined ? '' : words.percent(coatOpacity),
    differs: leftDE00 === undefined ? '' : differences.bare(dE00),
    left: leftDE00 === undefined ? '' : differences.bare(leftDE00),
    where: wordPlaces(reasoned.places),
  };
}

/** The colour of the paint that has the largest share: a mix is not mixed here. */
function hexOfMix(plan: Plan, mix: Mix): string {
  const most = mostOf(mix);
  return most === undefined ? '' : hexOf(plan, most.paint);
}

function wordPlaces(places: ReasonedCoats['places']): string {
  const schemes = [...places].map(([scheme, steps]) => {
    const zones = [...steps.values()].map(({ step, zone }) => `${step} ${nameOf(zone)}`);
    return `${nameOf(scheme)}: ${listOf(zones, 4)}`;
  });
  const [shown, rest] = [schemes.slice(0, 4), schemes.length - 4];
  return rest > 0 ? `${shown.join('; ')}; ${rest} more schemes` : shown.join('; ');
}

const wordUnknown = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : `No hex or no opacity in your sheets: ${listOf(paints.map(nameOf), 12)}. A base coat or midtone of them or over ` +
      'them has the coats that its scheme says, or else the usual number of its layer.';
