// Report view: what the numbers rest on. In: the plan, the problems of its sheets. Out: marks, the whole registry,
// blanks that took a default, warnings.
import type { Assumption } from '../../../model/assumption.js';
import type { Problem } from '../../../model/problem.js';
import { layers } from '../../../model/words.js';
import { capRepeats, orderProblems } from '../../../problems/order-problems.js';
import { wordProblem } from '../../../problems/word-problem.js';
import { rangeOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { markMeanings } from '../../words/view-trust.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';
import type { LowHigh } from '../../words/word-sure.js';

export interface GroundView {
  readonly lead: string;
  readonly marks: readonly { readonly mark: string; readonly meaning: string }[];
  readonly groups: readonly { readonly title: string; readonly rows: readonly AssumptionRow[] }[];
  readonly defaults: readonly { readonly where: string; readonly rows: string; readonly meaning: string }[];
  readonly warnings: readonly string[];
}

interface AssumptionRow {
  readonly id: string;
  readonly name: string;
  readonly low: string;
  readonly likely: string;
  readonly high: string;
  readonly unit: string;
  readonly mark: string;
  /** `weighed (n = 3)`: the mark, and from how many weighings it comes. */
  readonly markText: string;
  readonly source: string;
  /** Low and high as shares of likely; undefined where the value is held as exact. */
  readonly spread: LowHigh | undefined;
}

interface GroundInputs extends ViewInputs {
  readonly problems: readonly Problem[];
}

/** Everything that stands behind the numbers. */
export function viewGround(inputs: GroundInputs): GroundView {
  const { plan, problems, words } = inputs;
  return {
    lead: 'Every likely figure in this report is worked out from the likely values below. Low and high say how far each of them may lie off: one time in ten it lies below the low, one in ten above the high. Ranges and chances come from drawing all of them at once, many times over.',
    marks: markMeanings,
    groups: groupAssumptions(inputs),
    defaults: plan.defaults.map(({ sheet, column, rows, meaning }) => ({
      where: `${sheet}, ${column}`,
      rows: countOf(words, rows, 'row'),
      meaning,
    })),
    warnings: wordWarnings(problems),
  };
}

const groupTitles = [
  'A person, made small',
  'Dress, build, kit',
  'How paint goes on',
  'Layers, where a scheme says nothing',
  'Colours',
  'How long it takes',
  'Pots, readings, weighings',
] as const;
type GroupTitle = (typeof groupTitles)[number];

/** By the way the registry's names are built; a name of no kind stands with the pots. */
function groupOf(name: string): GroupTitle {
  if (/^(skin of|stature|eye level|share )/.test(name)) return 'A person, made small';
  if (/^(dress|build|kit|relief|sculpt|surface|sky)\b| of a creature$/.test(name)) return 'Dress, build, kit';
  if (/(wet film|transfer|leftover)$|^painter$|^most transfer|(target|catch) of a spray$/.test(name))
    return 'How paint goes on';
  if (/(pace|handling|setup|care)$|^wider brush|^evening|^long drying$/.test(name))
    return 'How long it takes';
  if (/^(opacity|just visible|pale|speck|farthest)\b/.test(name)) return 'Colours';
  const ofLayer = layers.some((layer) => name.startsWith(`${layer} `));
  return ofLayer ? 'Layers, where a scheme says nothing' : 'Pots, readings, weighings';
}

function groupAssumptions({ plan, words, trust }: GroundInputs): GroundView['groups'] {
  return groupTitles
    .map((title) => ({
      title,
      rows: plan.assumptions
        .filter(({ name }) => groupOf(name) === title)
        .map((one) => viewAssumption(one, words, trust.idOf(one.name))),
    }))
    .filter(({ rows }) => rows.length > 0);
}

function viewAssumption(one: Assumption, words: NumberWords, id: string): AssumptionRow {
  const { name, low, likely, high, unit, mark, source, weighings } = one;
  const isExact = low === likely && high === likely;
  return {
    id,
    name,
    low: isExact ? '' : words.plain(low),
    likely: words.plain(likely),
    high: isExact ? '' : words.plain(high),
    unit: unit.replace('cm2', 'cm²'),
    mark,
    markText: weighings === undefined ? mark : `${mark} (n = ${words.count(weighings)})`,
    source,
    spread: isExact || likely === 0 ? undefined : rangeOf({ low, high }, likely),
  };
}

/** Warnings in sheet and row order, repeats capped. Errors stop a plan, so none can be here. */
function wordWarnings(problems: readonly Problem[]): string[] {
  const warnings = orderProblems(problems.filter(({ severity }) => severity === 'warning'));
  return capRepeats(warnings).flatMap(({ shown, more }) => [
    ...shown.map(wordProblem),
    ...(more > 0 ? [`and ${more} more like the last`] : []),
  ]);
}
