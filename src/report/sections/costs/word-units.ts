// Costs: units in rows of their own, and the rest of them in one. In: sums. Out: text, rounded so that it adds up.
import type { Plan } from '../../../model/plan.js';
import type { UnitSums } from '../../../model/summary.js';
import { roundUnits } from '../../words/round-units.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { wordCostRange } from '../../words/word-sure.js';

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
export function wordArmy({ costs, summary, ranges }: Plan, words: NumberWords): UnitRow {
  return {
    name: 'The whole army',
    whole: words.amount(costs.useWhole),
    wholeRange: wordCostRange(ranges.useWhole, words),
    remaining: words.amount(costs.useRemaining),
    ...wordApart(summary.costs.army, words),
  };
}

/** In the army sheet's order. */
export function wordUnits({ summary }: Plan, words: NumberWords): UnitRow[] {
  const { units } = summary.costs;
  const rounded = roundUnits(summary.costs);
  return units.map((row, index) => {
    const { wholeMinor = 0, remainingMinor = 0 } = rounded[index] ?? {};
    return {
      name: row.unit?.unit ?? 'All other units',
      whole: words.priced(wholeMinor, row.whole.atLeast),
      wholeRange: row.wholeRange === undefined ? '' : wordCostRange(row.wholeRange, words),
      remaining: words.priced(remainingMinor, row.remaining.atLeast),
      ...wordApart(row, words),
    };
  });
}

type Apart = Pick<UnitRow, 'figures' | 'cash' | 'cashPerFigure' | 'figuresPrice'>;

const wordApart = (sums: UnitSums, words: NumberWords): Apart => ({
  figures: words.count(sums.figures),
  cash: words.money(sums.cashMinor),
  cashPerFigure: words.money(sums.cashPerFigureMinor),
  figuresPrice: words.amount(sums.figuresPrice),
});
