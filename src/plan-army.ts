// The whole job on one screen: checked sheets in, plan out. Each line is a stage; a stage knows none of the others.
import { overrideAssumptions } from './assumptions/override-assumptions.js';
import { registry } from './assumptions/registry.js';
import { costArmy } from './cost/cost-army.js';
import { pricesOfUse } from './cost/prices-of-use.js';
import { addUpDemands, demandMl } from './estimate/add-up-demands.js';
import { cutArmy } from './estimate/cut-army.js';
import { estimateArmy, remainingNeeds } from './estimate/estimate-army.js';
import { findCautions } from './estimate/find-cautions.js';
import { listDemands, listDemandsAnew } from './estimate/list-demands.js';
import type { Plan } from './model/plan.js';
import type { IsoDate, Sheets } from './model/sheets.js';
import { chooseOrder, placeOrder, priceNeeds } from './order/choose-order.js';
import { climbStairs } from './order/climb-stairs.js';
import { orderRestock } from './order/order-restock.js';
import { prepareBuying, type Search } from './order/prepare-buying.js';
import { isOnOffer, openPrices } from './order/price-buying.js';
import { spendBudget } from './order/spend-budget.js';
import { drawArmy, usualDrawing } from './ranges/draw-army.js';
import { keepPromise } from './ranges/keep-promise.js';
import { learnFromLog } from './ranges/learn/learn-from-log.js';
import { promiseRatios, scaleNeeds } from './ranges/scale-to-promise.js';
import { chancesShort, sumUpArmy } from './ranges/sum-up-army.js';
import { judgeStock } from './stock/judge-stock.js';
import { findMissing, findShort, haveMlOf, takeStock } from './stock/take-stock.js';

export { registry } from './assumptions/registry.js';
export { openSolver } from './order/solver/open-solver.js';

/** How the order is searched for, what may be spent, and how many draws say how sure; each has its default. */
export interface PlanOptions extends Search {
  /** Whole minor units: what does this cash finish? Left out: no such question. */
  readonly budgetMinor?: number | undefined;
  /** Default 10,000. */
  readonly draws?: number | undefined;
}

/** Plans an army on a day: how much paint, what is missing, what to buy, what it costs, how sure. Repeatable. */
export async function planArmy(sheets: Sheets, today: IsoDate, options: PlanOptions = {}): Promise<Plan> {
  const { settings, paints, defaults } = sheets;
  const assumed = overrideAssumptions(registry, settings.overrides);
  const estimateFirst = () => estimateArmy(sheets, assumed);
  const { beliefs, learned } = learnFromLog({ ...sheets, assumptions: assumed, estimateFirst });
  const { assumptions } = beliefs;

  const estimate = estimateArmy(sheets, assumptions);
  const counted = takeStock(sheets, estimate.needs, assumptions);
  const drawing = { ...usualDrawing, draws: options.draws ?? usualDrawing.draws };
  const drawn = drawArmy({ estimate, stock: counted, beliefs }, drawing);
  const fresh = drawArmy({ estimate, stock: counted, beliefs }, { ...drawing, seed: drawing.seed + 1 });

  const market = { offers: sheets.offers, shops: sheets.shops, assumptions };
  const buying = prepareBuying(options);
  const { order, promised } = await keepPromise({
    ...{ drawn, fresh, likely: findShort(counted), surePercent: settings.surePercent },
    canBuy: isOnOffer(market),
    priceNeeds: (needs) => priceNeeds(needs, market, buying),
    order: (needs) => chooseOrder(needs, market, buying),
  });
  const stock = judgeStock(counted, { chancesShort: chancesShort(drawn), toBuyMl: promised.toBuyMl });
  const isRestocking = settings.restock === 'shelf';
  const restock = isRestocking ? await orderRestock({ stock, army: order }, market, buying) : undefined;

  const ratioOf = promiseRatios(promised.toBuyMl, stock);
  const missingOf = (needs: ReadonlyMap<string, number>) => findMissing(scaleNeeds(needs, ratioOf), stock);
  const figureCount = sheets.army.reduce((total, { count }) => total + count, 0);
  const demands = listDemands(estimate, assumptions);
  const needsAt = addUpDemands([...demands, ...listDemandsAnew(estimate, assumptions)]);
  const toBuyAt = (figures: number) => missingOf(needsAt(figures));
  const stairs = await climbStairs({ toBuyAt, figures: figureCount, market, buying });

  const planAgain = (finished: readonly number[]) => {
    const fewer = { ...sheets, army: cutArmy(demands, finished, sheets.army) };
    return placeOrder(missingOf(remainingNeeds(estimateArmy(fewer, assumptions))), market, buying);
  };
  const promisedMl: typeof demandMl = (demand, paint, figures) =>
    ratioOf(paint) * demandMl(demand, paint, figures);
  const spending = { demands, demandMl: promisedMl, haveMl: haveMlOf(stock), market, buying, planAgain };
  const budget = await spendBudget(options.budgetMinor, spending);

  const costs = costArmy(sheets, { estimate, stock, order, restock });
  const ranges = sumUpArmy({ drawn, estimate, buyPerMl: openPrices(order, market), ...pricesOfUse(costs) });

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
    ranges,
    promised,
    learned,
    cautions: findCautions(estimate, sheets),
    assumptions: [...assumptions.values()],
    defaults,
  };
}
