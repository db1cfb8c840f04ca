// Report view: what the army costs. In: the plan, its sums. Out: the sums explained, cost per figure split over
// layers, and each unit's sums.

import type { Costs } from '../../../model/plan.js';
import { mostUnitRows } from '../../../model/summary.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { lowHighMeaning, wordCostRange } from '../../words/word-sure.js';
import {
  type CostPart,
  type CostUnit,
  listCostParts,
  viewCostUnit,
  viewFigureOnce,
} from './view-cost-unit.js';
import { type UnitRow, wordArmy, wordUnits } from './word-units.js';

export interface CostsView {
  readonly sums: readonly {
    readonly title: string;
    readonly figure: string;
    /** Low to high; '' where the sum is exact. */
    readonly range: string;
    readonly says: string;
    /** True for a part of the sum above it. */
    readonly within: boolean;
    readonly trust: TrustView;
  }[];
  readonly unpriced: string;
  /** Layers that cost anything, in painting order, then extras. */
  readonly parts: readonly CostPart[];
  readonly units: readonly CostUnit[];
  /** Said where not every unit has a row of its own; else ''. */
  readonly more: string;
  /** One for each unit, then one that sums those without a row of their own. */
  readonly rows: readonly UnitRow[];
  readonly total: UnitRow;
}

/** Money of the plan; units in the army sheet's order. */
export function viewCosts(inputs: ViewInputs): CostsView {
  const { plan, words, trust } = inputs;
  const { costs, summary } = plan;
  const shown = costs.units.slice(0, mostUnitRows);
  const parts = listCostParts(plan.estimate.jobs.keys(), costs.extrasWhole);
  const viewFigure = viewFigureOnce({ parts, jobs: summary.jobs, words, trust });
  return {
    sums: explainSums(inputs),
    unpriced: wordUnpriced(costs.unpriced),
    parts,
    units: shown.map((unit, index) =>
      viewCostUnit(unit, {
        ...{ id: `unit-${index + 1}`, dearest: summary.costs.dearestMinor, words, viewFigure },
        range: plan.ranges.perFigure.get(unit.job),
      }),
    ),
    more: costs.units.length > shown.length ? wordMore(costs.units.length, words) : '',
    rows: wordUnits(plan, words),
    total: wordArmy(plan, words),
  };
}

/** Said where the page is not the whole army. */
function wordMore(units: number, words: NumberWords): string {
  return `The first ${words.count(mostUnitRows)} of ${words.count(units)} units are shown one by one; the others are summed in one row, and plan.json lists each.`;
}

function explainSums({ plan, words, trust }: ViewInputs): CostsView['sums'] {
  const { costs, figureCount, ranges, summary } = plan;
  const costTrust = trust.of(summary.costs.trust);
  const each = words.money(summary.costs.army.cashPerFigureMinor);
  return [
    {
      title: 'Cost of use',
      within: false,
      trust: costTrust,
      figure: words.amount(costs.useWhole),
      range: wordCostRange(ranges.useWhole, words),
      says: `Paint put out for the whole scheme at what its pots cost, and extras (${words.amount(costs.extrasWhole)} of it).${wordLikeNewest(costs)} Steps already done count too. Low to high: ${lowHighMeaning}, prices taken as they are.`,
    },
    {
      title: 'of that, still to be used',
      within: true,
      trust: costTrust,
      figure: words.amount(costs.useRemaining),
      range: wordCostRange(ranges.useRemaining, words),
      says: 'The same for the steps that are not done yet.',
    },
    {
      title: 'Cash to spend',
      within: false,
      trust: trust.of(summary.lasting.trust),
      figure: words.money(costs.cashMinor),
      range: '',
      says: `Whole pots on the order, with postage: ${each} a figure. It is never added to the cost of use: part of it stays in the pots, and pots you own are paid already.`,
    },
    {
      title: 'The figures themselves',
      within: false,
      trust: { mark: 'yours', doubt: '', doubtId: '' },
      figure: words.amount(costs.figuresPrice),
      range: '',
      says: `What ${countOf(words, figureCount, 'unpainted figure')} cost, apart from both.`,
    },
  ];
}

/** Whose price is that of a pot which is not there. */
function wordLikeNewest({ paints }: Costs): string {
  const named = [...paints.values()].filter(({ likeNewestMl }) => likeNewestMl > 0);
  return named.length === 0
    ? ''
    : ` What neither pots nor order give of ${listOf(
        named.map(({ paint }) => nameOf(paint)),
        12,
      )} costs what your newest pot of it did (yours).`;
}

const wordUnpriced = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : `Without a price, wholly or in part: ${listOf(paints.map(nameOf), 12)}. They are not free, only unknown, so sums that lack them say “at least”, and their ranges are of the rest.`;
