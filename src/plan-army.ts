// The whole job on one screen: checked sheets in, plan out. Each line is a stage; a stage knows none of the others.
import { overrideAssumptions } from './assumptions/override-assumptions.js';
import { registry } from './assumptions/registry.js';
import { costArmy } from './cost/cost-army.js';
import { estimateArmy } from './estimate/estimate-army.js';
import { findCautions } from './estimate/find-cautions.js';
import type { Plan } from './model/plan.js';
import type { IsoDate, Sheets } from './model/sheets.js';
import { chooseByPaint } from './order/choose-order.js';
import { orderRestock } from './order/order-restock.js';
import { findShort, takeStock } from './stock/take-stock.js';

export { registry } from './assumptions/registry.js';

/** Plans an army on a day: how much paint, what is missing, what to buy, what it costs. Pure and repeatable. */
export function planArmy(sheets: Sheets, today: IsoDate): Plan {
  const { settings, paints, defaults } = sheets;
  const assumptions = overrideAssumptions(registry, settings.overrides);

  const estimate = estimateArmy(sheets, assumptions);
  const stock = takeStock(sheets, estimate.needs, assumptions);

  const market = { offers: sheets.offers, shops: sheets.shops, assumptions };
  const order = chooseByPaint(findShort(stock), market);
  const restocking = { stock, army: order, choose: chooseByPaint };
  const restock = settings.restock === 'shelf' ? orderRestock(restocking, market) : undefined;

  const costs = costArmy(sheets, { estimate, stock, order, restock });

  return {
    date: settings.date ?? today,
    settings,
    paints,
    figureCount: sheets.army.reduce((total, { count }) => total + count, 0),
    estimate,
    stock,
    order,
    restock,
    costs,
    cautions: findCautions(estimate, sheets),
    assumptions: [...assumptions.values()],
    defaults,
  };
}
