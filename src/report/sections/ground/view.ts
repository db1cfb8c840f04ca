// Report view: what the numbers rest on. In: the plan, the problems of its sheets. Out: marks, the whole registry,
// blanks that took a default, warnings.
import { type Assumption, isOfSurface } from '../../../model/assumption.js';
import type { Problem } from '../../../model/problem.js';
import { layers } from '../../../model/words.js';
import { capRepeats, orderProblems } from '../../../problems/order-problems.js';
import { wordProblem } from '../../../problems/word-problem.js';
import { rangeOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { markMeanings } from '../../words/view-trust.js';
import type { NumberWords } from '../../words/word-numbers.js';
import type { LowHigh } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';
import { type GroundWords, groundWords } from './words.js';

export interface GroundView extends Pick<GroundWords, 'labels'> {
  readonly marks: readonly { readonly mark: string; readonly meaning: string }[];
  readonly groups: readonly { readonly title: string; readonly rows: readonly AssumptionRow[] }[];
  readonly defaults: readonly { readonly where: string; readonly rows: string; readonly meaning: string }[];
  readonly warnings: readonly string[];
  /** How many sheets' questions are open. */
  readonly read: string;
  /** Assumptions in all. */
  readonly total: string;
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
  const texts = groundWords(words);
  const warnings = wordWarnings(problems, texts);
  return {
    labels: texts.labels,
    marks: markMeanings,
    groups: groupAssumptions(inputs, texts),
    defaults: plan.defaults.map((one) => ({
      where: texts.column(one),
      rows: texts.rows(one.rows),
      meaning: one.meaning,
    })),
    warnings,
    read: texts.read(warnings.length),
    total: words.count(plan.assumptions.length),
  };
}

type Group = keyof GroundWords['groups'];

/** By the way the registry's names are built; a name of no kind stands with the pots. */
function groupOf(name: string): Group {
  if (/^(skin of|stature|eye level|share )/.test(name)) return 'person';
  if (isOfSurface(name)) return 'dress';
  if (/(wet film|transfer|leftover)$|^painter$|^most transfer|(target|catch) of a spray$/.test(name))
    return 'application';
  if (/(pace|handling|setup|care)$|^wider brush|^evening|^long drying$/.test(name)) return 'time';
  if (/^(opacity|just visible|pale|speck|farthest)\b/.test(name)) return 'colours';
  return layers.some((layer) => name.startsWith(`${layer} `)) ? 'layers' : 'pots';
}

function groupAssumptions({ plan, words, trust }: GroundInputs, texts: GroundWords): GroundView['groups'] {
  return Object.entries(texts.groups)
    .map(([group, title]) => ({
      title,
      rows: plan.assumptions
        .filter(({ name }) => groupOf(name) === group)
        .map((one) => viewAssumption(one, trust.idOf(one.name), { texts, words })),
    }))
    .filter(({ rows }) => rows.length > 0);
}

interface Wording {
  readonly texts: GroundWords;
  readonly words: NumberWords;
}

function viewAssumption(one: Assumption, id: string, { texts, words }: Wording): AssumptionRow {
  const { name, low, likely, high, unit, mark, source, weighings } = one;
  const isExact = low === likely && high === likely;
  const said = sharedWords.marks[mark].name;
  return {
    id,
    name,
    low: isExact ? '' : words.plain(low),
    likely: words.plain(likely),
    high: isExact ? '' : words.plain(high),
    unit: unit.replace('cm2', 'cm²'),
    mark,
    markText: weighings === undefined ? said : texts.learned(said, weighings),
    source,
    spread: isExact || likely === 0 ? undefined : rangeOf({ low, high }, likely),
  };
}

/** Warnings in sheet and row order, repeats capped. Errors stop a plan, so none can be here. */
function wordWarnings(problems: readonly Problem[], texts: GroundWords): string[] {
  const warnings = orderProblems(problems.filter(({ severity }) => severity === 'warning'));
  return capRepeats(warnings).flatMap(({ shown, more }) => [
    ...shown.map(wordProblem),
    ...(more > 0 ? [texts.more(more)] : []),
  ]);
}
