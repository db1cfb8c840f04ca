// Report view: what the army costs. In: the plan, its sums. Out: the sums explained, cost per figure split over
// layers, and each unit's sums; units beyond the first rows are summed without wording each.
import { roundMinor, splitWhole, zeroMinor } from '../../model/money.js';
import type { Amount, JobCost, Plan, UnitCost } from '../../model/plan.js';
import type { CostsView, UnitSums } from './report-view.js';
import type { WorkSums } from './sum-work.js';
import { listCostParts, viewCostUnit } from './view-cost-unit.js';
import type { TrustWords } from './view-trust.js';
import { countOf, listOf, type NumberWords } from './word-numbers.js';

/** Units that get a row of their own. */
export const unitRows = 200;

interface CostInputs {
  readonly plan: Plan;
  readonly sums: WorkSums;
  readonly words: NumberWords;
  readonly trust: TrustWords;
}

/** Money of the plan; units in the army sheet's order. */
export function viewCosts({ plan, sums, words, trust }: CostInputs): CostsView {
  const { costs } = plan;
  const shown = costs.units.slice(0, unitRows);
  const rest = sumRest(costs.units.slice(unitRows));
  const all = rest === undefined ? shown.map(sumsOf) : [...shown.map(sumsOf), rest];
  const rows = wordSums(all, plan, words);
  const parts = listCostParts(sums.jobs.keys(), costs.extrasWhole);
  const dearest = Math.max(0, ...shown.map(({ use }) => use.perFigure.exactMinor.toNumber()));
  return {
    sums: explainSums(plan, words),
    unpriced: wordUnpriced(costs.unpriced),
    parts,
    units: shown.map((unit, index) =>
      viewCostUnit(unit, {
        sums: rows[index] ?? emptySums,
        id: `unit-${index + 1}`,
        parts,
        dearest,
        words,
        trust,
      }),
    ),
    more: rest === undefined ? '' : wordMore(shown.length, costs.units.length, words),
    rows,
    total: wordTotal(plan, words),
  };
}

/** Sums of one row of the unit table, not yet rounded. */
interface RawSums {
  readonly name: string;
  readonly figures: number;
  readonly whole: Amount;
  readonly remaining: Amount;
  readonly cashMinor: number;
  readonly figuresPrice: Amount;
}

const sumsOf = ({ unit, use, cashMinor, figuresPriceMinor }: UnitCost): RawSums => ({
  name: unit.unit,
  figures: unit.count,
  whole: use.whole,
  remaining: use.remaining,
  cashMinor,
  figuresPrice: {
    exactMinor: zeroMinor.plus(figuresPriceMinor ?? 0),
    atLeast: figuresPriceMinor === undefined,
  },
});

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

/** Said where the page is not the whole army. */
function wordMore(shown: number, units: number, words: NumberWords): string {
  return `The first ${words.count(shown)} units are shown one by one; the other ${words.count(units - shown)} are summed in one row, and plan.json lists each.`;
}

const emptySums: UnitSums = {
  name: '',
  figures: '',
  whole: '',
  remaining: '',
  cash: '',
  cashPerFigure: '',
  figuresPrice: '',
};

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
    remaining: words.priced(remaining[index] ?? 0, row.remaining.atLeast),
    ...wordMoneyApart(row, words),
  }));
}

type MoneyApart = Pick<UnitSums, 'cash' | 'cashPerFigure' | 'figuresPrice'>;

function wordMoneyApart(row: Omit<RawSums, 'whole' | 'remaining' | 'name'>, words: NumberWords): MoneyApart {
  return {
    cash: words.money(row.cashMinor),
    cashPerFigure: words.money(perFigure(row.cashMinor, row.figures)),
    figuresPrice: words.amount(row.figuresPrice),
  };
}

/** Half up; of no figures, 0. */
const perFigure = (minor: number, figures: number): number =>
  figures === 0 ? 0 : roundMinor(zeroMinor.plus(minor).div(figures));

function wordTotal({ costs, figureCount }: Plan, words: NumberWords): UnitSums {
  const { cashMinor, figuresPrice } = costs;
  return {
    name: 'The whole army',
    figures: words.count(figureCount),
    whole: words.amount(costs.useWhole),
    remaining: words.amount(costs.useRemaining),
    ...wordMoneyApart({ figures: figureCount, cashMinor, figuresPrice }, words),
  };
}

function explainSums({ costs, figureCount }: Plan, words: NumberWords): CostsView['sums'] {
  const each = words.money(perFigure(costs.cashMinor, figureCount));
  return [
    {
      title: 'Cost of use',
      within: false,
      figure: words.amount(costs.useWhole),
      says: `Paint put out for the whole scheme at what its pots cost, and extras (${words.amount(costs.extrasWhole)} of it). Steps already done count too.`,
    },
    {
      title: 'of that, still to be used',
      within: true,
      figure: words.amount(costs.useRemaining),
      says: 'The same for the steps that are not done yet.',
    },
    {
      title: 'Cash to spend',
      within: false,
      figure: words.money(costs.cashMinor),
      says: `Whole pots on the order, with postage: ${each} a figure. It is never added to the cost of use: part of it stays in the pots, and pots you own are paid already.`,
    },
    {
      title: 'The figures themselves',
      within: false,
      figure: words.amount(costs.figuresPrice),
      says: `What ${countOf(words, figureCount, 'unpainted figure')} cost, apart from both.`,
    },
  ];
}

const wordUnpriced = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : `Without a price, wholly or in part: ${listOf(paints, 12)}. They are not free, only unknown, so sums that lack them say “at least”.`;
