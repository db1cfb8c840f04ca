// Report view: units in rows of their own, and the rest of them in one. In: unit costs. Out: sums, rounded so that they
// add up, as text.
import { roundMinor, splitWhole, zeroMinor } from '../../../model/money.js';
import type { Amount, JobCost, Plan, UnitCost } from '../../../model/plan.js';
import type { Range } from '../../../model/ranges.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { wordCostRange } from '../../words/word-sure.js';

export interface UnitSums {
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

/** Sums of one row of the unit table, not yet rounded. */
interface RawSums {
  readonly name: string;
  readonly figures: number;
  readonly whole: Amount;
  /** Minor units; undefined for several units, whose ranges do not add up. */
  readonly wholeRange: Range | undefined;
  readonly remaining: Amount;
  readonly cashMinor: number;
  readonly figuresPrice: Amount;
}

const sumsOf = (
  { unit, job, use, cashMinor, figuresPriceMinor }: UnitCost,
  { perFigure }: Plan['ranges'],
): RawSums => ({
  name: unit.unit,
  figures: unit.count,
  whole: use.whole,
  wholeRange: timesFigures(perFigure.get(job), unit.count),
  remaining: use.remaining,
  cashMinor,
  figuresPrice: {
    exactMinor: zeroMinor.plus(figuresPriceMinor ?? 0),
    atLeast: figuresPriceMinor === undefined,
  },
});

const timesFigures = (range: Range | undefined, count: number): Range | undefined =>
  range === undefined || range.low === range.high
    ? undefined
    : { low: range.low * count, high: range.high * count };

/** All units without a row of their own as one; undefined of none. Each job's cost is multiplied, not added up. */
function sumRest(units: readonly UnitCost[]): RawSums | undefined {
  if (units.length === 0) return undefined;
  const jobs = new Map<JobCost, number>();
  let [figures, cashMinor, priceMinor, isUnpriced] = [0, 0, 0, false];
  for (const { unit, use, cashMinor: cash, figuresPriceMinor } of units) {
    jobs.set(use, (jobs.get(use) ?? 0) + 1);
    figures += unit.count;
    cashMinor += cash;
    priceMinor += figuresPriceMinor ?? 0;
    isUnpriced ||= figuresPriceMinor === undefined;
  }
  return {
    name: 'All other units',
    figures,
    whole: sumJobs(jobs, (use) => use.whole),
    wholeRange: undefined,
    remaining: sumJobs(jobs, (use) => use.remaining),
    cashMinor,
    figuresPrice: { exactMinor: zeroMinor.plus(priceMinor), atLeast: isUnpriced },
  };
}

function sumJobs(jobs: ReadonlyMap<JobCost, number>, amountOf: (use: JobCost) => Amount): Amount {
  let [exactMinor, atLeast] = [zeroMinor, false];
  for (const [use, units] of jobs) {
    exactMinor = exactMinor.plus(amountOf(use).exactMinor.times(units));
    atLeast ||= amountOf(use).atLeast;
  }
  return { exactMinor, atLeast };
}

/**
 * The first `most` units one by one, and a last row for all others where there are more. No unit beyond them is
 * worded, so an army of any length stays cheap.
 */
export function wordUnits(plan: Plan, words: NumberWords, most: number): UnitSums[] {
  const { units } = plan.costs;
  const rest = sumRest(units.slice(most));
  const shown = units.slice(0, most).map((unit) => sumsOf(unit, plan.ranges));
  return wordSums(rest === undefined ? shown : [...shown, rest], plan, words);
}

/** The whole army as a row. */
export function wordArmy({ costs, figureCount, ranges }: Plan, words: NumberWords): UnitSums {
  const { cashMinor, figuresPrice } = costs;
  return {
    name: 'The whole army',
    figures: words.count(figureCount),
    whole: words.amount(costs.useWhole),
    wholeRange: wordCostRange(ranges.useWhole, words),
    remaining: words.amount(costs.useRemaining),
    ...wordMoneyApart({ figures: figureCount, cashMinor, figuresPrice }, words),
  };
}

/**
 * Rounds so that each column adds up to its total. What is done already is split by itself, so that no unit has
 * more left to use than its whole scheme uses.
 */
function wordSums(rows: readonly RawSums[], { costs }: Plan, words: NumberWords): UnitSums[] {
  const remainingMinor = roundMinor(costs.useRemaining.exactMinor);
  const doneMinor = roundMinor(costs.useWhole.exactMinor) - remainingMinor;
  const exact = rows.map((row) => ({
    remaining: row.remaining.exactMinor.toNumber(),
    done: Math.max(0, row.whole.exactMinor.minus(row.remaining.exactMinor).toNumber()),
  }));
  const remaining = splitWhole(
    remainingMinor,
    exact.map((one) => one.remaining),
  );
  const done = splitWhole(
    doneMinor,
    exact.map((one) => one.done),
  );
  return rows.map((row, index) => ({
    name: row.name,
    figures: words.count(row.figures),
    whole: words.priced((remaining[index] ?? 0) + (done[index] ?? 0), row.whole.atLeast),
    wholeRange: row.wholeRange === undefined ? '' : wordCostRange(row.wholeRange, words),
    remaining: words.priced(remaining[index] ?? 0, row.remaining.atLeast),
    ...wordMoneyApart(row, words),
  }));
}

type MoneyApart = Pick<UnitSums, 'cash' | 'cashPerFigure' | 'figuresPrice'>;

function wordMoneyApart(
  row: Omit<RawSums, 'whole' | 'wholeRange' | 'remaining' | 'name'>,
  words: NumberWords,
): MoneyApart {
  return {
    cash: words.money(row.cashMinor),
    cashPerFigure: words.money(perFigure(row.cashMinor, row.figures)),
    figuresPrice: words.amount(row.figuresPrice),
  };
}

/** Minor units for one figure, half up; of no figures, 0. */
export const perFigure = (minor: number, figures: number): number =>
  figures === 0 ? 0 : roundMinor(zeroMinor.plus(minor).div(figures));
