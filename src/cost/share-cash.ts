// Cost: whose cash the order is. In: units with their jobs, needs, the order. Out: minor units per unit, adding up.
import { splitWhole } from '../model/money.js';
import type { Order } from '../model/order.js';
import type { Estimate, Job } from '../model/work.js';

/**
 * The order's total over the units: each paint's pots by the units' share of the need, postage by the value of
 * goods. Rounded by largest remainder, so the units add up to the total. Nothing to buy gives zeros.
 */
export function shareCash(
  { units, jobs, needs }: Estimate,
  order: Pick<Order, 'lines' | 'bills' | 'totalMinor'>,
): number[] {
  const costOf = paintCosts(order);
  const goods = new Map([...jobs.keys()].map((job) => [job, goodsOf(job, needs, costOf)]));
  // Goods that cost nothing still travel: then the postage goes by the need.
  const isFree = [...goods.values()].every((cost) => cost === 0);
  const weights = isFree ? new Map([...jobs.keys()].map((job) => [job, needOf(job)])) : goods;
  return splitWhole(
    order.totalMinor,
    units.map(({ job }) => weights.get(job) ?? 0),
  );
}

/** What the order spends on each paint, with the postage of its shop by the value of the goods. */
function paintCosts({ lines, bills }: Pick<Order, 'lines' | 'bills'>): Map<string, number> {
  const withPostage = new Map(
    bills.map((bill) => [bill.shop, 1 + bill.postageMinor / (bill.goodsMinor || 1)]),
  );
  const costs = new Map<string, number>();
  for (const { shop, pots } of lines) {
    for (const { paint, costMinor } of pots) {
      costs.set(paint, (costs.get(paint) ?? 0) + costMinor * (withPostage.get(shop) ?? 1));
    }
  }
  return costs;
}

const needOf = (job: Job): number => job.remaining.reduce((total, { putOutMl }) => total + putOutMl, 0);

function goodsOf(job: Job, needs: Estimate['needs'], costOf: ReadonlyMap<string, number>): number {
  return job.remaining.reduce((total, { paint, putOutMl }) => {
    const needMl = needs.get(paint)?.remainingMl ?? 0;
    return needMl === 0 ? total : total + (costOf.get(paint) ?? 0) * (putOutMl / needMl);
  }, 0);
}
