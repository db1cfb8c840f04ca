// Costs: units in rows of their own, and the rest of them in one. In: sums. Out: text, rounded so that it adds up.

import type { UnitSums } from '../../../model/cost-sums.js';
import type { Plan } from '../../../model/plan.js';
import { roundUnits } from '../../words/round-units.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { wordCostRange } from '../../words/word-sure.js';
import type { CostWords } from './words.js';

export interface UnitRow {
  readonly name: string;
  readonly figures: string;
  readonly whole: string;
  /** Low to high of it; '' for several units in one row. */
  readonly wholeRange: string;
  readonly remaining: string;
  readonly cash: string;
  readonly cashPerFigure: string;
  readonly figuresPrice: string;
}

/** The whole army as a row. */
export function viewArmy({ costs, summary, ranges }: Plan, texts: CostWords, words: NumberWords): UnitRow {
  return {
    name: texts.wholeArmy,
    whole: words.amount(costs.useWhole),
    wholeRange: wordCostRange(ranges.useWhole, words),
    remaining: words.amount(costs.useRemaining),
    ...viewApart(summary.costs.army, words),
  };
}

/** In the army sheet's order. */
export function viewUnits({ summary }: Plan, texts: CostWords, words: NumberWords): UnitRow[] {
  const { units } = summary.costs;
  const rounded = roundUnits(summary.costs);
  return units.map((row, index) => {
    const { wholeMinor = 0, remainingMinor = 0 } = rounded[index] ?? {};
    return {
      name: row.unit?.unit ?? texts.otherUnits,
      whole: words.priced(wholeMinor, row.whole.atLeast),
      wholeRange: row.wholeRange === undefined ? '' : wordCostRange(row.wholeRange, words),
      remaining: words.priced(remainingMinor, row.remaining.atLeast),
      ...viewApart(row, words),
    };
  });
}

type Apart = Pick<UnitRow, 'figures' | 'cash' | 'cashPerFigure' | 'figuresPrice'>;

const viewApart = (sums: UnitSums, words: NumberWords): Apart => ({
  figures: words.count(sums.figures),
  cash: words.money(sums.cashMinor),
  cashPerFigure: words.money(sums.cashPerFigureMinor),
  figuresPrice: words.amount(sums.figuresPrice),
});
