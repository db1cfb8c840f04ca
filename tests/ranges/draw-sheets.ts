// Ranges tests: armies by chance for properties. In: nothing. Out: arbitraries of sheets with every method, mixes, shared
// leftovers, boxes, bases, areas of the painter's own, and units half done.
import fc from 'fast-check';
import type { Figure } from '../../src/model/figure.js';
import type { Sheets, Step } from '../../src/model/sheets.js';
import { boxBuilds, builds, dresses, kitItems, layers, methods } from '../../src/model/words.js';
import { makeFigure, makeSheets, makeStep, makeUnit } from '../make-sheets.js';

const paints = ['Slate', 'Chalk', 'Rust', 'Moss'];
const zones = ['whole', 'base', 'all', 'tunic', 'skin', 'head'];

const person = fc.record({
  eyeMm: fc.integer({ min: 6, max: 75 }),
  build: fc.constantFrom(...builds),
  dress: fc.constantFrom(...dresses),
  kit: fc.uniqueArray(
    fc.record({ item: fc.constantFrom(...kitItems), count: fc.integer({ min: 1, max: 2 }) }),
    {
      maxLength: 3,
      selector: ({ item }) => item,
    },
  ),
});
const box = fc.record({
  build: fc.constantFrom(...boxBuilds),
  boxMm: fc.record({
    longMm: fc.integer({ min: 20, max: 200 }),
    wideMm: fc.integer({ min: 20, max: 90 }),
    highMm: fc.integer({ min: 10, max: 60 }),
  }),
});
const own = fc.option(fc.double({ min: 1, max: 200, noNaN: true }), { nil: undefined });
const base = fc.constantFrom({ shape: 'round', acrossMm: 25 } as const, undefined);

const figure = fc
  .tuple(fc.oneof({ weight: 4, arbitrary: person }, box), own, base)
  .map(([body, areaCm2, under]) => ({
    ...body,
    ...(areaCm2 === undefined ? {} : { areaCm2 }),
    ...(under === undefined ? {} : { base: under }),
  }));

const mix = fc.uniqueArray(fc.constantFrom(...paints), { minLength: 1, maxLength: 3 }).chain((named) =>
  fc
    .array(fc.integer({ min: 1, max: 5 }), { minLength: named.length, maxLength: named.length })
    .map((parts) => {
      const whole = parts.reduce((sum, part) => sum + part, 0);
      return named.map((paint, at) => ({ paint, share: (parts[at] ?? 0) / whole }));
    }),
);

/** Few step numbers, so that steps share leftovers. */
const step = fc.record({
  step: fc.integer({ min: 1, max: 4 }),
  zone: fc.constantFrom(...zones),
  layer: fc.constantFrom(...layers),
  method: fc.constantFrom(...methods),
  coats: fc.integer({ min: 1, max: 3 }),
  areaShare: fc.double({ min: 0.05, max: 1, noNaN: true }),
  thin: fc.constantFrom(0, 1, 2),
  paints: mix,
});

const unit = fc.record({
  figure: fc.constantFrom('guard', 'rider'),
  count: fc.integer({ min: 1, max: 60 }),
  batch: fc.integer({ min: 1, max: 12 }),
  done: fc.integer({ min: 0, max: 3 }),
});

const named = (name: string, given: Partial<Figure>): Figure => makeFigure({ figure: name, ...given });
const inOrder = (steps: readonly Partial<Step>[]): Step[] =>
  steps.map((one) => makeStep({ ...one, step: one.step ?? 1 })).sort((a, b) => a.step - b.step);

/** Two figures in one scheme, up to four units. */
export const anySheets: fc.Arbitrary<Sheets> = fc
  .record({
    guard: figure,
    rider: figure,
    steps: fc.array(step, { minLength: 1, maxLength: 6 }),
    army: fc.array(unit, { minLength: 1, maxLength: 4 }),
  })
  .map(({ guard, rider, steps, army }) =>
    makeSheets({
      figures: [named('guard', guard), named('rider', rider)],
      steps: inOrder(steps),
      army: army.map((one, at) => makeUnit({ ...one, unit: `unit ${at}`, row: at + 2, priority: at })),
    }),
  );
