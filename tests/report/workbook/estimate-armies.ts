// Tests: armies that put every kind of formula into the workbook, and their plans.

import type { Plan } from '../../../src/model/plan.js';
import type { Sheets } from '../../../src/model/sheets.js';
import { planArmy } from '../../../src/plan-army.js';
import type { Bounds } from '../../../src/report/workbook/estimate/list-recipes.js';
import { viewEstimate } from '../../../src/report/workbook/estimate/view-estimate.js';
import { writeEstimateWorkbook } from '../../../src/report/workbook/write-estimate-workbook.js';
import {
  makeFigure,
  makeOffer,
  makePot,
  makeSheets,
  makeStep,
  makeUnit,
  offerPot,
} from '../../make-sheets.js';

export const planOf = (sheets: Sheets): Promise<Plan> =>
  planArmy(sheets, '2026-03-14', { draws: 500, seconds: 2 });

export const bytesOf = (plan: Plan, sheets: Sheets, bounds?: Bounds): Promise<Uint8Array> =>
  writeEstimateWorkbook(viewEstimate(plan, sheets, bounds));

const figures = [
  makeFigure({
    figure: 'guard',
    kit: [
      { item: 'weapon', count: 2 },
      { item: 'round shield', count: 1 },
    ],
    base: { shape: 'round', acrossMm: 25 },
    priceMinor: 225,
  }),
  makeFigure({
    figure: 'rider',
    dress: 'armoured',
    build: 'stocky',
    kit: [{ item: 'horse', count: 1 }],
    base: { shape: 'rectangle', longMm: 50, wideMm: 25 },
    baseHighMm: 4,
    perBase: 2,
  }),
  makeFigure({
    figure: 'idol',
    eyeMm: 60,
    build: 'true scale',
    areaCm2: 42.5,
    kit: [{ item: 'cloak', count: 1 }],
  }),
  makeFigure({
    figure: 'engine',
    build: 'open frame',
    boxMm: { longMm: 90, wideMm: 30, highMm: 20 },
    base: { shape: 'oval', longMm: 105, wideMm: 70 },
  }),
  makeFigure({
    figure: 'barn',
    build: 'closed',
    dress: 'none',
    boxMm: { longMm: 80, wideMm: 60, highMm: 40, ridgeMm: 65 },
  }),
  makeFigure({
    figure: 'wyrm',
    build: 'beast',
    dress: 'none',
    longMm: 50,
    kit: [
      { item: 'wings', count: 1 },
      { item: 'saddle', count: 2 },
    ],
    base: { shape: 'oval', longMm: 105, wideMm: 70 },
  }),
  makeFigure({ figure: 'hedge', build: 'hedge', dress: 'none', longMm: 90, areaCm2: 77 }),
  makeFigure({ figure: 'mount', dress: 'none', kit: [{ item: 'horse', count: 1 }] }),
];

const steps = [
  makeStep({ step: 1, zone: 'all', layer: 'primer', paint: 'Ash' }),
  makeStep({ step: 2, zone: 'tunic', paint: 'Slate', coats: 3 }),
  makeStep({ step: 2, zone: 'legs', paint: 'Slate', coats: 3 }),
  makeStep({ step: 2, zone: 'hull', paint: 'Slate' }),
  makeStep({ step: 3, zone: 'kilt', layer: 'midtone', areaShare: 0.4, thin: 0.5, paint: 'Rye' }),
  {
    ...makeStep({ step: 4, zone: 'whole', layer: 'glaze', method: 'airbrush' }),
    paints: [
      { paint: 'Rye', share: 1 / 3 },
      { paint: 'Ash', share: 2 / 3 },
    ],
  },
  makeStep({ step: 5, zone: 'whole', layer: 'wash', paint: 'Peat' }),
  makeStep({ step: 6, zone: 'horse', layer: 'highlight', paint: 'Chalk' }),
  makeStep({ step: 6, zone: 'boots', layer: 'highlight', paint: 'Chalk' }),
  makeStep({ step: 7, zone: 'base top', layer: 'basing', paint: 'Grit' }),
] as const;

/** Eight figures of every shape, units half done, one known to the log, mixes, own zones, pots of every kind. */
export const everyKind: Sheets = makeSheets({
  figures,
  steps,
  zones: [
    {
      zone: 'kilt',
      parts: [
        { part: 'thighs', share: 0.7 },
        { part: 'buttocks', share: 1 },
      ],
    },
    {
      zone: 'kilt',
      figure: 'rider',
      parts: [
        { part: 'thighs', share: 0.2 },
        { part: 'cloak', share: 1 },
      ],
    },
  ],
  army: [
    makeUnit({ row: 2, unit: 'first watch', count: 23, batch: 10 }),
    makeUnit({ row: 3, unit: 'second watch', count: 7, batch: 5, done: 2, priority: 2 }),
    makeUnit({ row: 4, unit: 'third watch', count: 12, batch: 5, done: 1, priority: 3 }),
    makeUnit({ row: 5, unit: 'riders', figure: 'rider', count: 6, priority: 4 }),
    makeUnit({ row: 6, unit: 'idol', figure: 'idol', count: 1, priority: 5 }),
    makeUnit({ row: 7, unit: 'engine', figure: 'engine', count: 2, batch: 1, priority: 6 }),
    makeUnit({ row: 10, unit: 'barns', figure: 'barn', count: 2, priority: 9 }),
    makeUnit({ row: 11, unit: 'wyrms', figure: 'wyrm', count: 3, priority: 10 }),
    makeUnit({ row: 12, unit: 'hedges', figure: 'hedge', count: 3, priority: 11 }),
    makeUnit({ row: 8, unit: 'mounts', figure: 'mount', count: 4, done: 7, priority: 7 }),
  ],
  paints: [
    { paint: 'Peat', kind: 'wash', alsoCalled: [], thin: 0.25 },
    { paint: 'Ash', kind: 'primer', alsoCalled: [] },
  ],
  pots: [
    makePot({ row: 2, paint: 'Ash', container: 'can', sizeMl: 400, priceMinor: 1290 }),
    makePot({ row: 3, paint: 'Ash', container: 'can', sizeMl: 400, ordered: true }),
    makePot({ row: 4, paint: 'Slate', left: { how: 'by eye', share: 0.3 }, priceMinor: 295 }),
    makePot({ row: 5, paint: 'Slate', left: { how: 'in ml', ml: 4 }, priceMinor: 310 }),
    makePot({ row: 6, paint: 'Peat', left: { how: 'weighed', grams: 31.2, emptyGrams: 14 }, sizeMl: 24 }),
    makePot({ row: 7, paint: 'Unused', priceMinor: 250 }),
    makePot({ row: 8, paint: 'Chalk' }),
  ],
  offers: [
    makeOffer({ row: 2, offer: 'slate', priceMinor: 350, pots: [offerPot('Slate')] }),
    makeOffer({ row: 3, offer: 'peat', priceMinor: 420, pots: [offerPot('Peat', 24)] }),
    makeOffer({
      row: 4,
      offer: 'twins',
      priceMinor: 900,
      pots: [offerPot('Rye', 17, 2), offerPot('Grit', 50)],
    }),
  ],
  extras: [
    { item: 'brush', priceMinor: 500, serves: 60 },
    { item: 'flock', priceMinor: 399, serves: 150 },
  ],
  log: [
    { row: 2, date: '2026-03-01', paint: 'Slate', unit: 'third watch', step: 2, figures: 5 },
    { row: 3, date: '2026-03-02', paint: 'Ash', unit: 'third watch', step: 4, figures: 12 },
  ],
});

/** The same with shelves so full that nothing is ever bought: then every price stays as it is. */
export const fullShelves: Sheets = {
  ...everyKind,
  log: [],
  offers: [],
  pots: [...everyKind.paints.keys()].map((paint, at) =>
    makePot({
      row: at + 2,
      paint,
      sizeMl: paint === 'Ash' ? 4000 : 900,
      ...(paint === 'Chalk' ? {} : { priceMinor: 1000 + 37 * at }),
    }),
  ),
};
