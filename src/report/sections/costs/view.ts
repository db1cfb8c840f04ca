// Report view: what the army costs. In: the plan, its sums. Out: the sums explained, cost per figure split over
// layers, and each unit's sums.

import { mostUnitRows } from '../../../model/cost-sums.js';
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
  readonly lead: string;
  readonly trust: TrustView;
  readonly sums: readonly {
    readonly title: string;
    readonly figure: string;
    /** Low to high; '' where the sum is exact. */
    readonly range: string;
    readonly says: string;
    /** True for a part of the sum above it. */
    readonly within: boolean;
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
    lead: texts.lead(costs.useWhole, plan.ranges.useWhole),
    trust: trust.of(summary.costs.trust),
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

function listSums({ plan, words }: ViewInputs, texts: CostWords): CostsView['sums'] {
  const { costs, figureCount, ranges, summary } = plan;
  const likeNewest = [...costs.paints.values()].filter(({ likeNewestMl }) => likeNewestMl > 0);
  const whole = words.amount(costs.useWhole);
  const left = {
    ...{ ...texts.remaining, within: true, figure: words.amount(costs.useRemaining) },
    range: wordCostRange(ranges.useRemaining, words),
  };
  const remaining = left.figure === whole ? [] : [left];
  return [
    {
      title: texts.use.title,
      within: false,
      figure: whole,
      range: wordCostRange(ranges.useWhole, words),
      says: texts.use.says(
        words.amount(costs.extrasWhole),
        likeNewest.map(({ paint }) => paint),
      ),
    },
    ...remaining,
    {
      title: texts.cash.title,
      within: false,
      figure: words.money(costs.cashMinor),
      range: '',
      says: texts.cash.says(words.money(summary.costs.army.cashPerFigureMinor), summary.order.alikeCost),
    },
    {
      title: texts.figures.title,
      within: false,
      figure: words.amount(costs.figuresPrice),
      range: '',
      says: texts.figures.says(figureCount),
    },
  ];
}
