// Report view: what the army costs. In: the plan, its sums. Out: the sums explained, cost per figure split over
// layers, and each unit's sums.

import { mostUnitRows } from '../../../model/summary.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordCostRange } from '../../words/word-sure.js';
import {
  type CostPart,
  type CostUnit,
  listCostParts,
  viewCostUnit,
  viewFigureOnce,
} from './view-cost-unit.js';
import { type UnitRow, viewArmy, viewUnits } from './view-units.js';
import { type CostWords, costWords } from './words.js';

export interface CostsView {
  readonly labels: CostWords['labels'];
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
  const texts = costWords(words);
  const shown = costs.units.slice(0, mostUnitRows);
  const parts = listCostParts(plan.estimate.jobs.keys(), costs.extrasWhole, texts);
  const viewFigure = viewFigureOnce({ parts, jobs: summary.jobs, words, trust });
  return {
    labels: texts.labels,
    sums: listSums(inputs, texts),
    unpriced: costs.unpriced.length === 0 ? '' : texts.unpriced(costs.unpriced),
    parts,
    units: shown.map((unit) =>
      viewCostUnit(unit, {
        ...{ dearest: summary.costs.dearestMinor, texts, words, viewFigure },
        range: plan.ranges.perFigure.get(unit.job),
      }),
    ),
    more: costs.units.length > shown.length ? texts.more(mostUnitRows, costs.units.length) : '',
    rows: viewUnits(plan, texts, words),
    total: viewArmy(plan, texts, words),
  };
}

function listSums({ plan, words, trust }: ViewInputs, texts: CostWords): CostsView['sums'] {
  const { costs, figureCount, ranges, summary } = plan;
  const costTrust = trust.of(summary.costs.trust);
  const likeNewest = [...costs.paints.values()].filter(({ likeNewestMl }) => likeNewestMl > 0);
  return [
    {
      title: texts.use.title,
      within: false,
      trust: costTrust,
      figure: words.amount(costs.useWhole),
      range: wordCostRange(ranges.useWhole, words),
      says: texts.use.says(
        words.amount(costs.extrasWhole),
        likeNewest.map(({ paint }) => paint),
      ),
    },
    {
      ...texts.remaining,
      within: true,
      trust: costTrust,
      figure: words.amount(costs.useRemaining),
      range: wordCostRange(ranges.useRemaining, words),
    },
    {
      title: texts.cash.title,
      within: false,
      trust: trust.of(summary.lasting.trust),
      figure: words.money(costs.cashMinor),
      range: '',
      says: texts.cash.says(words.money(summary.costs.army.cashPerFigureMinor), summary.order.alikeCost),
    },
    {
      title: texts.figures.title,
      within: false,
      trust: trust.of({ mark: 'yours', biggestDoubt: '' }),
      figure: words.amount(costs.figuresPrice),
      range: '',
      says: texts.figures.says(figureCount),
    },
  ];
}
