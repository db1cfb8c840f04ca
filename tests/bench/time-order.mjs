// Bench: the sample's order in this fresh process. Out: ms of the proved order alone (the solver's start included),
// of the whole order step (with its reasons and the shelf's order), and of the staircase after it, as JSON.
import { addUpDemands } from '../../.halfpot/modules/estimate/add-up-demands.js';
import { estimateArmy } from '../../.halfpot/modules/estimate/estimate-army.js';
import { listDemands, listDemandsAnew } from '../../.halfpot/modules/estimate/list-demands.js';
import { settledCounts } from '../../.halfpot/modules/order/choose-counts.js';
import { chooseOrder } from '../../.halfpot/modules/order/choose-order.js';
import { climbStairs } from '../../.halfpot/modules/order/climb-stairs.js';
import { orderRestock } from '../../.halfpot/modules/order/order-restock.js';
import { prepareBuying } from '../../.halfpot/modules/order/prepare-buying.js';
import { measureSupply, splitNeeds } from '../../.halfpot/modules/order/split-needs.js';
import { openSolver, registry } from '../../.halfpot/modules/plan-army.js';
import { readSheets } from '../../.halfpot/modules/sheets/read-sheets.js';
import { findMissing, findShort, takeStock } from '../../.halfpot/modules/stock/take-stock.js';

const known = { assumptions: registry, today: '2026-11-02' };
const { sheets } = await readSheets('sample-data/low-sluice', known);
const estimate = estimateArmy(sheets, registry);
const stock = takeStock(sheets, estimate.needs, registry);
const market = { offers: sheets.offers, shops: sheets.shops, assumptions: registry };
const needs = findShort(stock);

const started = performance.now();
const solver = openSolver();
const buying = prepareBuying({ solve: solver.solve });
await settledCounts(splitNeeds(needs, measureSupply(market)).within, market, buying);
const proved = performance.now();
const army = await chooseOrder(needs, market, buying);
await orderRestock({ stock, army, marginOf: () => 1 }, market, buying);
const ordered = performance.now();
const needsAt = addUpDemands([...listDemands(estimate, registry), ...listDemandsAnew(estimate, registry)]);
const figures = sheets.army.reduce((sum, { count }) => sum + count, 0);
await climbStairs({ toBuyAt: (count) => findMissing(needsAt(count), stock), figures, market, buying });
const climbed = performance.now();
await solver.close();
console.log(JSON.stringify({ order: proved - started, step: ordered - started, stairs: climbed - ordered }));
