// Cost: money of the whole plan. In: estimate, stock, orders, sheets. Out: cost of use and cash, never mixed.

import { countUnits } from '../model/count-units.js';
import { exactMinor } from '../model/money.js';
import type { Order } from '../model/order.js';
import type { Amount, Costs, PaintCost, PaintStock, UnitCost } from '../model/plan.js';
import type { Sheets } from '../model/sheets.js';
import type { Estimate, Job } from '../model/work.js';
import { addAmounts, costJobs, costOfPaint, extrasPerFigure, nothing, timesAmount } from './cost-jobs.js';
import { costParts } from './cost-parts.js';
import { type PaintPrice, pricePaint } from './price-paints.js';
import { shareCash } from './share-cash.js';

/** What the cost stage works from. */
export interface Priced {
  readonly estimate: Estimate;
  readonly stock: readonly PaintStock[];
  readonly order: Pick<Order, 'lines' | 'bills' | 'totalMinor'>;
  readonly restock: Pick<Order, 'totalMinor'> | undefined;
}

/** Cost of use (paint put out and extras), cash to spend, the figures' own price. An empty army costs nothing. */
export function costArmy(sheets: Pick<Sheets, 'figures' | 'extras'>, priced: Priced): Costs {
  const { estimate, order, restock } = priced;
  const prices = priceAll(priced);
  const extras = extrasPerFigure(sheets.extras);
  const jobCosts = costJobs(estimate.jobs, prices, extras);
  const units = costUnits(sheets, priced, jobCosts);
  const unitsPerJob = countUnits(units);
  const perJob = [...unitsPerJob].map(([job, times]) => ({ use: jobCosts.get(job), job, times }));
  const sumOf = (amountOf: (one: (typeof perJob)[number]) => Amount | undefined): Amount =>
    addAmounts(perJob.map((one) => timesAmount(amountOf(one) ?? nothing, one.times)));
  return {
    paints: costPaints(estimate, prices),
    zones: costParts(unitsPerJob, prices, ({ zone }) => zone),
    layers: costParts(unitsPerJob, prices, ({ layer }) => layer),
    units,
    useWhole: sumOf(({ use }) => use?.whole),
    useRemaining: sumOf(({ use }) => use?.remaining),
    extrasWhole: sumOf(({ use, job }) => use && timesAmount(use.extrasPerFigure, job.count)),
    cashMinor: order.totalMinor,
    restockCashMinor: restock?.totalMinor ?? 0,
    figuresPrice: priceFigures(units),
    unpriced: [...prices].filter(([, { pricedShare }]) => pricedShare < 1).map(([paint]) => paint),
  };
}

/** What a ml of each paint costs, from what is still needed of it. */
function priceAll({ estimate, stock, order }: Priced): Map<string, PaintPrice> {
  const stockOf = new Map(stock.map((one) => [one.paint, one]));
  return new Map(
    [...estimate.needs].map(([paint, { remainingMl }]) => [
      paint,
      pricePaint(remainingMl, stockOf.get(paint), order),
    ]),
  );
}

function costPaints({ needs }: Estimate, prices: ReadonlyMap<string, PaintPrice>): Map<string, PaintCost> {
  return new Map(
    [...prices].map(([paint, price]) => {
      const useCost = costOfPaint(needs.get(paint)?.remainingMl ?? 0, price);
      const partlyUnpriced = price.perMl !== undefined && price.pricedShare < 1;
      return [paint, { paint, perMl: price.perMl, pricedShare: price.pricedShare, partlyUnpriced, useCost }];
    }),
  );
}

function costUnits(
  { figures }: Pick<Sheets, 'figures'>,
  { estimate, order }: Priced,
  useOf: (job: Job) => UnitCost['use'],
): UnitCost[] {
  const cash = shareCash(estimate, order);
  return estimate.units.map(({ unit, job }, index) => {
    const each = figures.get(unit.figure)?.priceMinor;
    const figuresPriceMinor = each === undefined ? undefined : each * unit.count;
    return { unit, job, use: useOf(job), cashMinor: cash[index] ?? 0, figuresPriceMinor };
  });
}

/** The unpainted figures; `at least` where one has no price. */
function priceFigures(units: readonly UnitCost[]): Amount {
  const known = units.reduce((total, { figuresPriceMinor }) => total + (figuresPriceMinor ?? 0), 0);
  return {
    exactMinor: exactMinor(known),
    atLeast: units.some(({ figuresPriceMinor }) => figuresPriceMinor === undefined),
  };
}
