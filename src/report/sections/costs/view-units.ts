// Costs: units in rows of their own, and the rest of them in one. In: sums. Out: text, rounded so that it adds up.
import type { Plan } from '../../../model/plan.js';
import type { UnitSums } from '../../../model/summary.js';
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
export function viewArmy({ costs, summary, ranges }: Plan, words: CostWords, say: NumberWords): UnitRow {
  return {
    name: words.wholeArmy,
    whole: say.amount(costs.useWhole),
    wholeRange: wordCostRange(ranges.useWhole, say),
    remaining: say.amount(costs.useRemaining),
    ...viewApart(summary.costs.army, say),
  };
}

/** In the army sheet's order. */
export function viewUnits({ summary }: Plan, words: CostWords, say: NumberWords): UnitRow[] {
  const { units } = summary.costs;
  const rounded = roundUnits(summary.costs);
  return units.map((row, index) => {
    const { wholeMinor = 0, remainingMinor = 0 } = rounded[index] ?? {};
    return {
      name: row.unit?.unit ?? words.otherUnits,
      whole: say.priced(wholeMinor, row.whole.atLeast),
      wholeRange: row.wholeRange === undefined ? '' : wordCostRange(row.wholeRange, say),
      remaining: say.priced(remainingMinor, row.remaining.atLeast),
      ...viewApart(row, say),
    };
  });
}

type Apart = Pick<UnitRow, 'figures' | 'cash' | 'cashPerFigure' | 'figuresPrice'>;

const viewApart = (sums: UnitSums, say: NumberWords): Apart => ({
  figures: say.count(sums.figures),
  cash: say.money(sums.cashMinor),
  cashPerFigure: say.money(sums.cashPerFigureMinor),
  figuresPrice: say.amount(sums.figuresPrice),
});
