// Bench: the sample's ranges in this fresh process, each part once and cold, as a plan runs them. Out: ms as JSON: both
// drawings, the promise without its searches for orders, what the draws say, and all of it.

import { decideCoats } from '../../.halfpot/modules/colour/decide-coats.js';
import { openColours } from '../../.halfpot/modules/colour/open-colours.js';
import { estimateArmy, measureFigures } from '../../.halfpot/modules/estimate/estimate-army.js';
import { chooseOrder, priceNeeds } from '../../.halfpot/modules/order/choose-order.js';
import { prepareBuying } from '../../.halfpot/modules/order/prepare-buying.js';
import { isOnOffer } from '../../.halfpot/modules/order/price-buying.js';
import { registry } from '../../.halfpot/modules/plan-army.js';
import { drawArmy, drawingFor, drawLack } from '../../.halfpot/modules/ranges/draw-army.js';
import { keepPromise } from '../../.halfpot/modules/ranges/keep-promise.js';
import { chancesShort, sumUpArmy } from '../../.halfpot/modules/ranges/sum-up-army.js';
import { readSheets } from '../../.halfpot/modules/sheets/read-sheets.js';
import { findShort, takeStock } from '../../.halfpot/modules/stock/take-stock.js';

const known = { assumptions: registry, today: '2026-11-02' };
const { sheets } = await readSheets('sample-data/low-sluice', known);
const figures = measureFigures(sheets, registry);
const colours = await openColours(sheets.paints.values());
const coats = decideCoats(sheets, { areas: figures, colours, assumptions: registry });
const estimate = estimateArmy(sheets, registry, { figures, coats });
const stock = takeStock(sheets, estimate.needs, registry);
const beliefs = { assumptions: registry, joint: undefined };
const market = { offers: sheets.offers, shops: sheets.shops, assumptions: registry };
const buying = prepareBuying({});
const perMl = { usePerMl: () => 20, buyPerMl: () => 20, extras: { perFigure: 0, whole: 0, remaining: 0 } };
// The search for orders is warm before the clock starts.
await priceNeeds(findShort(stock), market, buying);

let searchMs = 0;
const timed = (search) => async (needs) => {
  const asked = performance.now();
  const found = await search(needs, market, buying);
  searchMs += performance.now() - asked;
  return found;
};

const started = performance.now();
const drawing = drawingFor(estimate.needs.size);
const drawn = drawArmy({ estimate, stock, beliefs }, drawing);
const fresh = drawLack({ estimate, stock, beliefs }, { ...drawing, seed: 2 });
const drew = performance.now();
await keepPromise({
  ...{ drawn, fresh, likely: findShort(stock), surePercent: 80, canBuy: isOnOffer(market) },
  ...{ priceNeeds: timed(priceNeeds), order: timed(chooseOrder) },
});
const kept = performance.now();
chancesShort(drawn);
sumUpArmy({ drawn, estimate, ...perMl });
const ended = performance.now();
const [promise, all] = [kept - drew - searchMs, ended - started - searchMs];
console.log(JSON.stringify({ draw: drew - started, promise, sum: ended - kept, all }));
