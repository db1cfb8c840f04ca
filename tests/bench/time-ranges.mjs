// Bench: the sample's ranges in this fresh process, each part once and cold, as a plan runs them. Out: ms as JSON: both
// drawings, what the draws say, and all of it.

import { decideCoats } from '../../.halfpot/modules/colour/decide-coats.js';
import { openColours } from '../../.halfpot/modules/colour/open-colours.js';
import { estimateArmy, measureFigures } from '../../.halfpot/modules/estimate/estimate-army.js';
import { registry } from '../../.halfpot/modules/plan-army.js';
import { drawArmy, drawingFor, drawLack } from '../../.halfpot/modules/ranges/draw-army.js';
import { chancesShort, sumUpArmy } from '../../.halfpot/modules/ranges/sum-up-army.js';
import { readSheets } from '../../.halfpot/modules/sheets/read-sheets.js';
import { takeStock } from '../../.halfpot/modules/stock/take-stock.js';

const known = { assumptions: registry, today: '2026-11-02' };
const { sheets } = await readSheets('sample-data/low-sluice', known);
const figures = measureFigures(sheets, registry);
const colours = await openColours(sheets.paints.values());
const coats = decideCoats(sheets, { areas: figures, colours, assumptions: registry });
const estimate = estimateArmy(sheets, registry, { figures, coats });
const stock = takeStock(sheets, estimate.needs, registry);
const beliefs = { assumptions: registry, joint: undefined };
const perMl = { usePerMl: () => 20, buyPerMl: () => 20, extras: { perFigure: 0, whole: 0, remaining: 0 } };
const started = performance.now();
const drawing = drawingFor(estimate.needs.size);
const drawn = drawArmy({ estimate, stock, beliefs }, drawing);
drawLack({ estimate, stock, beliefs }, { ...drawing, seed: 2 });
const drew = performance.now();
chancesShort(drawn);
sumUpArmy({ drawn, estimate, assumptions: registry, ...perMl });
const ended = performance.now();
console.log(JSON.stringify({ draw: drew - started, sum: ended - drew, all: ended - started }));
