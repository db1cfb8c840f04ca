// Cost: money of the whole plan. In: estimate, stock, orders, sheets. Out: cost of use and cash, never mixed.
import { at } from '../model/at.js';
import { groupByPaint } from '../model/group-by.js';
import { type Amount, addAmounts, addPrices, timesAmount } from '../model/money.js';
import type { Order } from '../model/order.js';
import type { Costs, JobCost, PaintCost, UnitCost } from '../model/plan.js';
import type { Sheets } from '../model/sheets.js';
import type { CountedStock } from '../model/stock.js';
import type { Estimate, Job } from '../model/work.js';
import { costJobs, costOfPaint, extrasPerFigure } from './cost-jobs.js';
import { costParts } from './cost-parts.js';
import { type PaintPrice, pricePaint } from './price-paints.js';
import { shareCash } from './share-cash.js';

/** What cost of use is reckoned from. */
export interface Used {
  readonly estimate: Estimate;
  readonly stock: readonly CountedStock[];
  readonly order: Pick<Order, 'lines'>;
}

/** What the cost stage works from. */
export interface Priced extends Used {
  readonly order: Pick<Order, 'lines' | 'bills' | 'totalMinor'>;
  readonly restock: Pick<Order, 'totalMinor'> | undefined;
}

/** Cost of use (paint put out and extras), cash to spend, the figures' own price. An empty army costs nothing. */
export function costArmy(sheets: Pick<Sheets, 'figures' | 'extras'>, priced: Priced): Costs {
  const { estimate, order, restock } = priced;
  const prices = priceAll(priced);
  const extras = extrasPerFigure(sheets.extras);
  const jobCosts = costJobs(estimate.jobs.keys(), prices, extras);
  const units = costUnits(sheets, priced, jobCosts);
  const sumOf = (amountOf: (use: JobCost) => Amount): Amount => sumUnits(estimate.jobs, jobCosts, amountOf);
  return {
    paints: costPaints(estimate, prices),
    zones: costParts(estimate.jobs, prices, ({ zone }) => zone),
    layers: costParts(estimate.jobs, prices, ({ layer }) => layer),
    units,
    useWhole: sumOf(({ whole }) => whole),
    useRemaining: sumOf(({ remaining }) => remaining),
    extrasWhole: { exactMinor: extras.times(countFigures(estimate.jobs)), atLeast: false },
    cashMinor: order.totalMinor,
    restockCashMinor: restock?.totalMinor ?? 0,
    figuresPrice: addPrices(units.map(({ figuresPriceMinor }) => figuresPriceMinor)),
    unpriced: [...prices].filter(([, { pricedShare }]) => pricedShare < 1).map(([paint]) => paint),
  };
}

/**
 * Cost of use of the whole scheme on all figures, alone: what armies are compared by. Millilitres are added up before they
 * are priced, so it may differ from that of `costArmy` by rounding far below a minor unit.
 */
export function costWhole({ extras }: Pick<Sheets, 'extras'>, used: Used): Amount {
  const { jobs, needs } = used.estimate;
  const paints = [...priceAll(used)].map(([paint, price]) =>
    costOfPaint(needs.get(paint)?.wholeMl ?? 0, price),
  );
  const extrasWhole = extrasPerFigure(extras).times(countFigures(jobs));
  return addAmounts([...paints, { exactMinor: extrasWhole, atLeast: false }]);
}

const countFigures = (jobs: Estimate['jobs']): number =>
  [...jobs].reduce((sum, [{ count }, units]) => sum + count * units, 0);

/** What a ml of each paint costs, from what is still needed of it. */
function priceAll({ estimate, stock, order }: Used): Map<string, PaintPrice> {
  const stockOf = new Map(stock.map((one) => [one.paint, one]));
  const orderedOf = groupByPaint(order.lines.flatMap(({ pots }) => pots));
  return new Map(
    [...estimate.needs].map(([paint, { remainingMl }]) => [
      paint,
      pricePaint(remainingMl, stockOf.get(paint), orderedOf.get(paint) ?? []),
    ]),
  );
}

function costPaints({ needs }: Estimate, prices: ReadonlyMap<string, PaintPrice>): Map<string, PaintCost> {
  return new Map(
    [...prices].map(([paint, price]) => {
      const useCost = costOfPaint(needs.get(paint)?.remainingMl ?? 0, price);
      return [paint, { paint, ...price, useCost }];
    }),
  );
}

function costUnits(
  { figures }: Pick<Sheets, 'figures'>,
  { estimate, order }: Priced,
  costs: ReadonlyMap<Job, JobCost>,
): UnitCost[] {
  const cash = shareCash(estimate, order);
  return estimate.units.map(({ unit, job }, index) => {
    const each = figures.get(unit.figure)?.priceMinor;
    const figuresPriceMinor = each === undefined ? undefined : each * unit.count;
    return { unit, job, use: costOf(job, costs), cashMinor: at(cash, index), figuresPriceMinor };
  });
}

/** Every job of an estimate has been costed; a unit that is not would go missing from the sums. */
function costOf(job: Job, costs: ReadonlyMap<Job, JobCost>): JobCost {
  const cost = costs.get(job);
  if (cost === undefined) throw new Error(`no cost of ${job.figure} in ${job.scheme}`);
  return cost;
}

/** Sum over all units; an amount that jobs share is multiplied once. */
function sumUnits(
  jobs: Estimate['jobs'],
  costs: ReadonlyMap<Job, JobCost>,
  amountOf: (use: JobCost) => Amount,
): Amount {
  const times = new Map<Amount, number>();
  for (const [job, units] of jobs) {
    const amount = amountOf(costOf(job, costs));
    times.set(amount, (times.get(amount) ?? 0) + units);
  }
  return addAmounts([...times].map(([amount, units]) => timesAmount(amount, units)));
}
