// Report view: coats, undercoats, primers. In: the plan, its sums. Out: why so many coats, what would save some.
import type { Plan } from '../../model/plan.js';
import { solidLayers } from '../../model/words.js';
import type { Line } from '../../model/work.js';
import type { CoatRow, CoatsView } from './coats-view.js';
import { type ReasonedCoats, sumCoatsBecause } from './sum-coats-because.js';
import { noDoubts, noteDoubt } from './sum-work.js';
import type { ViewInputs } from './view-inputs.js';
import { hexOf } from './view-palette.js';
import { viewPrimers } from './view-primers.js';
import { viewUndercoats } from './view-undercoats.js';
import { wordCoats } from './word-coats.js';
import { type DifferenceWords, differenceWords } from './word-difference.js';
import { nameOf } from './word-name.js';
import { countOf, listOf, type NumberWords } from './word-numbers.js';

/** Reasons shown at once, and at most with those folded away. */
const [shownRows, mostRows] = [8, 60];

/** Undefined for an army that lays no covering coat. */
export function viewCoats(inputs: ViewInputs): CoatsView | undefined {
  const { plan, words } = inputs;
  const reasons = sumCoatsBecause(plan.estimate.jobs.keys());
  const unknown = listUnknown(plan);
  const primers = viewPrimers(inputs);
  if (reasons.length === 0 && unknown.length === 0 && primers === undefined) return undefined;
  const differences = differenceWords(plan, words);
  const rows = reasons.slice(0, mostRows).map((one) => viewReason(one, { plan, words, differences }));
  return {
    lead: wordLead(reasons.length, differences, words),
    trust: trustCoats(reasons, inputs),
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
  const { coats, because } = reasoned;
  const { over, under, coatOpacity, dE00 } = because;
  const left = coatOpacity === undefined ? undefined : dE00 * (1 - coatOpacity) ** coats;
  return {
    drawn: { over: hexOfMix(plan, over), under: hexOfMix(plan, under) },
    says: wordCoats(coats, because, words),
    hides: coatOpacity === undefined ? '' : words.percent(coatOpacity),
    differs: left === undefined ? '' : differences.bare(dE00),
    left: left === undefined ? '' : differences.bare(left),
    where: wordPlaces(reasoned.places),
  };
}

/** The colour of the paint that has the largest share: a mix is not mixed here. */
function hexOfMix(plan: Plan, mix: readonly { readonly paint: string; readonly share: number }[]): string {
  const most = mix.toSorted((a, b) => b.share - a.share)[0];
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

/** Opacities weigh by the coats that rest on them. */
function trustCoats(reasons: readonly ReasonedCoats[], { plan, trust }: ViewInputs): CoatsView['trust'] {
  const marks = new Map(plan.assumptions.map(({ name, mark }) => [name, mark]));
  const doubts = noDoubts();
  const note = (name: string, weight: number): void => {
    const mark = marks.get(name);
    if (mark !== undefined) noteDoubt(doubts, { mark, biggestDoubt: name }, weight);
  };
  note('just visible difference', 0);
  for (const { because, coats } of reasons) {
    if (because.opacity !== undefined) note(`opacity ${because.opacity}`, coats);
  }
  return trust.of(doubts);
}

/** Paints without which a coat over them, or of them, keeps its layer's number. */
function listUnknown({ paints, estimate }: Plan): string[] {
  const unknown = new Set<string>();
  for (const { lines } of estimate.jobs.keys()) {
    if (lines.every((line) => !isSolid(line) || line.coatsBecause !== undefined)) continue;
    for (const line of lines) if (lacksColour(line, paints)) unknown.add(line.paint);
  }
  return [...unknown];
}

/** Its coats are the colours' to decide. */
const isSolid = ({ layer }: Line): boolean => solidLayers.includes(layer);

function lacksColour(line: Line, paints: Plan['paints']): boolean {
  const paint = paints.get(line.paint);
  const kind = paint?.kind ?? 'colour';
  if (kind === 'wash' || kind === 'medium' || kind === 'varnish' || kind === 'texture') return false;
  if (line.layer === 'primer') return paint?.hex === undefined;
  if (!isSolid(line) || line.coatsBecause !== undefined) return false;
  return paint?.hex === undefined || paint.opacity === undefined;
}

const wordUnknown = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : `No hex or no opacity in your sheets: ${listOf(paints.map(nameOf), 12)}. A base coat or midtone of them or over ` +
      'them has the coats that its scheme says, or else the usual number of its layer.';
