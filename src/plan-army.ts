// The whole job on one screen: checked sheets in, plan out. Each line is a stage; a stage knows none of the others.
import { overrideAssumptions } from './assumptions/override-assumptions.js';
import { registry } from './assumptions/registry.js';
import { costArmy } from './cost/cost-army.js';
import { addUpDemands, demandMl } from './estimate/add-up-demands.js';
import { cutArmy } from './estimate/cut-army.js';
import { estimateArmy } from './estimate/estimate-army.js';
import { findCautions } from './estimate/find-cautions.js';
import { listDemands, listDemandsAnew } from './estimate/list-demands.js';
import type { Plan } from './model/plan.js';
import type { IsoDate, Sheets } from './model/sheets.js';
import { chooseOrder, placeOrder } from './order/choose-order.js';
import { climbStairs } from './order/climb-stairs.js';
import { orderRestock } from './order/order-restock.js';
import { prepareBuying, type Search } from './order/prepare-buying.js';
import { spendBudget } from './order/spend-budget.js';
import { findMissing, findShort, haveMlOf, takeStock } from './stock/take-stock.js';

export { registry } from './assumptions/registry.js';
export { openSolver } from './order/solver/open-solver.js';

/** How the order is searched for, and what may be spent; each has its default. */
export interface PlanOptions extends Search {
  /** Whole minor units: what does this cash finish? Left out: no such question. */
  readonly budgetMinor?: number | undefined;
}

/** Plans an army on a day: how much paint, what is missing, what to buy, what it costs. Repeatable. */
export async function planArmy(sheets: Sheets, today: IsoDate, options: PlanOptions = {}): Promise<Plan> {
  const { settings, paints, defaults } = sheets;
  const assumptions = overrideAssumptions(registry, settings.overrides);

  const estimate = estimateArmy(sheets, assumptions);
  const stock = takeStock(sheets, estimate.needs, assumptions);

  const market = { offers: sheets.offers, shops: sheets.shops, assumptions };
  const buying = prepareBuying(options);
  const order = await chooseOrder(findShort(stock), market, buying);
  const isRestocking = settings.restock === 'shelf';
  const restock = isRestocking ? await orderRestock({ stock, army: order }, market, buying) : undefined;

  const figureCount = sheets.army.reduce((total, { count }) => total + count, 0);
  const demands = listDemands(estimate, assumptions);
  const needsAt = addUpDemands([...demands, ...listDemandsAnew(estimate, assumptions)]);
  const toBuyAt = (figures: number) => findMissing(needsAt(figures), stock);
  const stairs = await climbStairs({ toBuyAt, figures: figureCount, market, buying });

  const planAgain = (finished: readonly number[]) => {
    const fewer = { ...sheets, army: cutArmy(demands, finished, sheets.army) };
    const { needs } = estimateArmy(fewer, assumptions);
    return placeOrder(findShort(takeStock(fewer, needs, assumptions)), market, buying);
  };
  const spending = { demands, demandMl, haveMl: haveMlOf(stock), market, buying, planAgain };
  const budget = await spendBudget(options.budgetMinor, spending);

  const costs = costArmy(sheets, { estimate, stock, order, restock });

  return {
    date: settings.date ?? today,
    settings,
    paints,
    figureCount,
    estimate,
    stock,
    order,
    restock,
    stairs,
    budget,
    costs,
    cautions: findCautions(estimate, sheets),
    assumptions: [...assumptions.values()],
    defaults,
  };
}
