import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Figure } from '../../../src/model/figure.js';
import type { Plan } from '../../../src/model/plan.js';
import type { Sheets } from '../../../src/model/sheets.js';
import { registry } from '../../../src/plan-army.js';
import { readSheets } from '../../../src/sheets/read-sheets.js';
import { makePiece, makeUnit } from '../../make-sheets.js';
import { compareTotals, compareWithPlan } from './compare-with-plan.js';
import { bytesOf, everyKind, fullShelves, planOf } from './estimate-armies.js';
import { type Recalculated, recalculate } from './recalculate-workbook.js';

/** Nearer than a thousand-millionth, of the number or of 1. */
function expectNear(found: unknown, wanted: unknown, where: string): void {
  if (typeof wanted !== 'number' || typeof found !== 'number') {
    expect([where, found]).toEqual([where, wanted]);
    return;
  }
  const off = Math.abs(found - wanted) / Math.max(1, Math.abs(wanted));
  expect([where, found, off < 1e-9]).toEqual([where, found, true]);
}

async function sampleSheets(): Promise<Sheets> {
  const folder = fileURLToPath(new URL('../../../sample-data/low-sluice', import.meta.url));
  const { sheets } = await readSheets(folder, { assumptions: registry, today: '2026-03-14' });
  if (sheets === undefined) throw new Error('the sample has problems');
  return sheets;
}

/** Models in one piece, with parts of their own, with their own base, and of a thing; and one with a total beside it. */
const modelled: Sheets = {
  ...everyKind,
  figures: new Map(
    [...everyKind.figures].map(([name, figure], at): [string, Figure] => {
      const pieces = [
        [makePiece('', 11)],
        [
          makePiece('head', 1),
          makePiece('pennant', 2),
          makePiece('base', 5),
          makePiece('', 9, { hidden: { 7: 100 } }),
        ],
        [makePiece('pennant', 3), makePiece('', 8)],
        [makePiece('', 70)],
        [makePiece('pennant', 4)],
      ][at];
      return [name, pieces === undefined ? figure : { ...figure, model: { files: ['a.stl'], pieces } }];
    }),
  ),
};

const armies: [string, () => Promise<Sheets>][] = [
  ['the sample', sampleSheets],
  ['an army of every kind', async () => everyKind],
  // Two paints of a mix become one.
  ['an army with a swap', async () => ({ ...everyKind, swaps: [{ row: 2, paint: 'Rye', instead: 'Ash' }] })],
  ['an army with full shelves', async () => fullShelves],
  ['an army with models', async () => modelled],
  ['an empty army', async () => ({ ...everyKind, army: [], log: [], extras: [] })],
];

/** Assumptions by name, and figures by unit. */
interface Change {
  readonly likely: Readonly<Record<string, number>>;
  readonly count: Readonly<Record<string, number>>;
}

const threeAndOne: Change = {
  likely: { 'dress clothed': 1.31, 'brush transfer': 0.42, 'flood wet film': 130 },
  count: { 'first watch': 31 },
};

function changeBook(book: Recalculated, { likely, count }: Change): void {
  for (const [name, value] of Object.entries(likely))
    book.change('assumptions', `B${book.rowOf('assumptions', 'assumption', name)}`, value);
  for (const [unit, value] of Object.entries(count))
    book.change('units', `E${book.rowOf('units', 'unit', unit)}`, value);
}

function changeSheets(sheets: Sheets, { likely, count }: Change): Sheets {
  const more = Object.entries(likely).map(([name, value]) => ({ name, likely: value }));
  const army = sheets.army.map((one) => ({ ...one, count: count[one.unit] ?? one.count }));
  return {
    ...sheets,
    army,
    settings: { ...sheets.settings, overrides: [...sheets.settings.overrides, ...more] },
  };
}

/** The workbook of one plan after a change, and the plan that is made with that change. */
async function changeBoth(sheets: Sheets, change: Change) {
  const before = await planOf(sheets);
  const book = await recalculate(await bytesOf(before, sheets));
  changeBook(book, change);
  return { book, before, after: await planOf(changeSheets(sheets, change)) };
}

describe('a change in estimate.xlsx', () => {
  it('gives what a new plan gives, to the last total', async () => {
    const { book, after } = await changeBoth(fullShelves, threeAndOne);
    compareWithPlan(book, after, expectNear);
  });

  it.each([
    [
      'shares of body and zones, relief, layers',
      { 'share thighs': 25, 'share boots': 70, relief: 1.2, 'base coat coats': 3, 'primer area': 80 },
    ],
    ['the spray', { 'spray can transfer': 0.3, 'full target of a spray': 4, 'most catch of a spray': 5 }],
    ['the airbrush', { 'airbrush transfer': 0.45, 'most transfer of an airbrush': 0.6 }],
    ['an airbrush that wastes next to nothing', { 'airbrush transfer': 0.9 }],
    ['person, kit, box', { 'eye level': 0.9, 'kit horse': 3, 'relief open frame': 0.8, 'build stocky': 1.5 }],
    [
      'leftover, thinning, painter',
      { 'brush leftover': 0.2, painter: 1.2, 'glaze thin': 1, 'midtone thin': 0.2 },
    ],
    ['usable shares', { 'usable share of a can': 0.6, 'usable share of a pot': 0.9 }],
  ])('of %s does too', async (_, likely) => {
    const { book, after } = await changeBoth(fullShelves, { likely, count: {} });
    compareWithPlan(book, after, expectNear);
  });

  it('of shares and dress divides what is measured of models anew', async () => {
    const likely = { 'share thighs': 25, 'dress clothed': 1.31, 'kit weapon': 0.3, 'kit horse': 2 };
    // A total beside a model stands as it is, and so do its parts.
    const figures = [...modelled.figures].filter(([, { areaCm2 }]) => areaCm2 === undefined);
    const army = modelled.army.filter(({ figure }) => figures.some(([name]) => name === figure));
    const sheets = { ...modelled, figures: new Map(figures), army, log: [] };
    const { book, after } = await changeBoth(sheets, { likely, count: {} });
    compareWithPlan(book, after, expectNear, { isAlike: () => false });
  });

  it('of a count reaches units half done, and those that the log knows', async () => {
    const count = { 'second watch': 16, 'third watch': 26, mounts: 1 };
    const { book, after } = await changeBoth(everyKind, { likely: {}, count });
    compareWithPlan(book, after, expectNear, { isAlike: () => false });
  });

  it('of the sample gives what a new plan gives, but for paints of which the order is another', async () => {
    const sheets = { ...(await sampleSheets()), log: [] };
    const likely = { 'dress armoured': 1.5, 'brush wet film': 60, 'flood leftover': 0.2 };
    const { book, before, after } = await changeBoth(sheets, { likely, count: { 'Weir Guard': 24 } });
    const potsOf = ({ order }: Plan, paint: string): unknown =>
      order.lines.flatMap(({ pots }) => pots.filter((pot) => pot.paint === paint));
    const isAlike = (paint: string): boolean =>
      JSON.stringify(potsOf(before, paint)) === JSON.stringify(potsOf(after, paint));
    const alike = after.stock.filter(({ paint }) => isAlike(paint));
    expect(alike.length).toBeGreaterThan(after.stock.length / 3);
    compareWithPlan(book, after, expectNear, { isAlike });
  });
});

describe.each(armies)('estimate.xlsx of %s', (_, make) => {
  let plan: Plan;
  let book: Recalculated;

  beforeAll(async () => {
    const sheets = await make();
    plan = await planOf(sheets);
    book = await recalculate(await bytesOf(plan, sheets));
  });

  it('gives in every cell what is stored with it', () => {
    for (const { sheet, address, formula, stored } of book.formulas) {
      expectNear(book.value(sheet, address), stored, `${sheet}!${address} =${formula}`);
    }
  });

  it('agrees with the plan', () => {
    compareWithPlan(book, plan, expectNear);
  });
});

describe('an army past the bounds', () => {
  const bounds = { lines: 30, units: 2 };
  const more = [
    makeUnit({ row: 9, unit: 'fourth watch', count: 9, batch: 4, priority: 8 }),
    makeUnit({ row: 10, unit: 'fifth watch', count: 13, priority: 9 }),
  ];
  const seven = everyKind.army.filter(({ row }) => row < 9);
  const sheets = { ...everyKind, army: [...seven, ...more] };
  let plan: Plan;
  let book: Recalculated;

  beforeAll(async () => {
    plan = await planOf(sheets);
    book = await recalculate(await bytesOf(plan, sheets, bounds));
  });

  it('still gives every stored result, and the totals of the plan', () => {
    for (const { sheet, address, formula, stored } of book.formulas)
      expectNear(book.value(sheet, address), stored, `${sheet}!${address} =${formula}`);
    compareTotals(book, plan, expectNear);
  });

  it('puts units together, leaves recipes out, and says both on the first sheet', () => {
    const names = book.rows('units').map(({ unit }) => unit);
    // Two rows are full; the log knows the third watch, which has its own; then the rest of the recipes that fit.
    expect(names).toEqual(['first watch', 'second watch', 'third watch', 'riders', '2 more units']);
    expect(book.rows('units').at(-1)).toMatchObject({ figures: 22, batch: null, 'sittings of a step': 5 });
    const said = book.rows('read me').map(({ Halfpot }) => String(Halfpot));
    expect(said.some((line) => line.includes(' 2 units are put together'))).toBe(true);
    expect(said.some((line) => line.includes('3 units are left out'))).toBe(true);
    expect(book.rows('costs').at(-1)).toMatchObject({ unit: 'the 3 units left out', figures: 7 });
  });

  it('says nothing of bounds where there is room', async () => {
    const whole = await recalculate(await bytesOf(plan, sheets));
    expect(whole.rows('read me').some((row) => String(row.Halfpot).includes('small'))).toBe(false);
  });
});

/** Every spreadsheet program has these; none is volatile, none needs an array. */
const plainFunctions = [
  ...['AND', 'IF', 'MAX', 'MIN', 'PI', 'ROUNDUP', 'SQRT', 'SUM', 'SUMIF', 'SUMIFS', 'SUMPRODUCT'],
];

describe('the formulas of estimate.xlsx', () => {
  it('use plain functions, stay in the workbook, and are short enough', async () => {
    const { formulas } = await recalculate(await bytesOf(await planOf(everyKind), everyKind));
    const used = new Set(formulas.flatMap(({ formula }) => formula.match(/[A-Z.]+(?=\()/g) ?? []));
    expect([...used].sort()).toEqual(plainFunctions);
    // ISO/IEC 29500 leaves the length open; spreadsheet programs take 8,192 characters.
    expect(Math.max(...formulas.map(({ formula }) => formula.length))).toBeLessThan(8192);
    expect(formulas.filter(({ formula }) => /[[\]\\]|https?:/.test(formula))).toEqual([]);
  });

  it('hold no text of a sheet', async () => {
    const strange = '"&A1&"*?~<>=';
    const sheets = { ...everyKind, army: everyKind.army.map((one) => ({ ...one, unit: strange })) };
    const { formulas } = await recalculate(await bytesOf(await planOf({ ...sheets, log: [] }), sheets));
    expect(formulas.filter(({ formula }) => formula.includes('A1&'))).toEqual([]);
  });
});
