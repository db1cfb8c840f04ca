import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { type MeasuredModel, reachedOf } from '../../../src/model/measured.js';
import { canBeMm } from '../../../src/sheets/check/check-model.js';
import { checkTables } from '../../../src/sheets/check/check-tables.js';
import type { ModelFile } from '../../../src/sheets/model-file.js';
import { makePiece } from '../../make-sheets.js';
import { makeTables, type SheetRows, shortRows } from './make-tables.js';

/** Areas in the file's unit squared, by part. */
const measured = (parts: Readonly<Record<string, number>>, more: Partial<MeasuredModel> = {}): ModelFile => ({
  model: {
    high: 30,
    up: 'z',
    triangles: 100,
    flat: 0,
    unreal: 0,
    isInsideOut: false,
    pieces: Object.entries(parts).map(([part, area]) => makePiece(part, area)),
    ...more,
  },
});

interface Given {
  readonly figures: readonly (readonly string[])[];
  readonly files: Readonly<Record<string, ModelFile>>;
  readonly others?: SheetRows;
}

function check({ figures, files, others = {} }: Given) {
  const header = ['figure', 'eye mm', 'model', 'model high mm'];
  const tables = makeTables({ ...shortRows, figures: [header, ...figures], ...others });
  const known = { assumptions: registry, today: '2026-11-02', models: new Map(Object.entries(files)) };
  return checkTables({ tables, problems: [] }, known);
}

/** What is reached of each part, cm2. */
function partsOf(given: Given): Record<string, number> {
  const { sheets, problems } = check(given);
  expect(problems).toEqual([]);
  const pieces = sheets?.figures.get('spearman')?.model?.pieces ?? [];
  const areas: Record<string, number> = {};
  for (const piece of pieces) areas[piece.part] = (areas[piece.part] ?? 0) + reachedOf([piece], 5).area;
  return areas;
}

const spearman = (model: string, high = ''): readonly (readonly string[])[] => [
  ['spearman', '28', model, high],
];
const steps = (...zones: string[]): SheetRows => ({
  schemes: [
    ['scheme', 'step', 'zone', 'layer', 'paint'],
    ...zones.map((zone, at) => ['red line', String(at + 1), zone, 'base coat', 'brick red']),
    ['red line', '9', 'whole', 'wash', 'earth wash'],
  ],
});

describe('sizes of models', () => {
  it('millimetres as the file has them: 900 mm2 are 9 cm2', () => {
    expect(partsOf({ figures: spearman('a.stl'), files: { 'a.stl': measured({ '': 900 }) } })).toEqual({
      '': 9,
    });
  });

  it('the height of the print: of 30 to 33 mm, 1.1 squared', () => {
    const files = { 'a.stl': measured({ '': 900 }) };
    expect(partsOf({ figures: spearman('a.stl', '33'), files })['']).toBeCloseTo(9 * 1.21, 10);
  });

  it('what a 3MF says, also of a height that is unusual', () => {
    const files = { 'a.3mf': measured({ '': 2 }, { unitMm: 25.4, high: 40 }) };
    expect(partsOf({ figures: spearman('a.3mf'), files })['']).toBeCloseTo((2 * 25.4 ** 2) / 100, 10);
  });

  it('a printed height over the unit of a 3MF', () => {
    const files = { 'a.3mf': measured({ '': 2 }, { unitMm: 25.4, high: 1.5 }) };
    expect(partsOf({ figures: spearman('a.3mf', '30'), files })['']).toBeCloseTo((2 * 20 ** 2) / 100, 10);
  });

  it('of several files the first one’s, the others in proportion', () => {
    const files = {
      'body.stl': measured({ '': 600 }, { high: 20 }),
      'pike.3mf': measured({ '': 1 }, { high: 5, unitMm: 10 }),
    };
    const areas = partsOf({
      figures: spearman('body.stl, pike.3mf', '40'),
      files,
      others: steps('body', 'pike'),
    });
    expect(areas).toEqual({ body: expect.closeTo(24, 10), pike: expect.closeTo(4, 10) });
  });

  it.each([
    [3.99, undefined, false],
    [4, undefined, true],
    [400, undefined, true],
    [401, undefined, false],
    [11.9, 30, false],
    [12, 30, true],
    [150, 30, true],
    [150.1, 30, false],
  ])('%f high, with eyes at %s: %s', (high, eyeMm, can) => {
    expect(canBeMm(high, eyeMm)).toBe(can);
  });

  it('of a figure in pieces the highest is asked about, not the smallest', () => {
    const files = {
      'hand.stl': measured({ '': 20 }, { high: 3 }),
      'body.stl': measured({ '': 800 }, { high: 30 }),
    };
    expect(partsOf({ figures: spearman('hand.stl, body.stl'), files })).toEqual({
      '': expect.closeTo(8.2, 10),
    });
  });
});

describe('parts of models', () => {
  const files = { 'a.obj': measured({ Head: 100, 'arm 2': 50, 'sash, red': 70, Trunk: 400 }) };

  it('that nobody names are divided by the chart, known ones keep their name', () => {
    expect(partsOf({ figures: spearman('a.obj'), files })).toEqual({ head: 1, '': expect.closeTo(5.2, 10) });
    const { sheets } = check({ figures: spearman('a.obj'), files });
    expect(sheets?.defaults).toContainEqual({
      sheet: 'figures',
      column: 'model',
      rows: 1,
      meaning: 'no zone or scheme names parts of it: divided as the body chart has it',
    });
  });

  it('that a scheme names, whatever its case', () => {
    const areas = partsOf({
      figures: spearman('a.obj'),
      files,
      others: steps('Arm  2', 'trunk', 'sash red'),
    });
    expect(areas).toEqual({ head: 1, 'arm 2': 0.5, Trunk: 4, 'sash red': expect.closeTo(0.7, 10) });
    const { sheets } = check({
      figures: spearman('a.obj'),
      files,
      others: steps('Arm 2', 'trunk', 'sash red'),
    });
    expect(sheets?.defaults.filter(({ column }) => column === 'model')).toEqual([]);
    expect(sheets?.schemes.get('red line')?.steps.map(({ zone }) => zone)).toEqual([
      'arm 2',
      'Trunk',
      'sash red',
      'whole',
    ]);
  });

  it('that a zone names, with a share; a name that ends like a share is a name', () => {
    const zones = [
      ['zone', 'parts'],
      ['coat', 'trunk 50%, arm 2'],
    ];
    const given = { figures: spearman('a.obj'), files, others: { zones, ...steps('coat') } };
    expect(partsOf(given)).toEqual({ head: 1, 'arm 2': 0.5, Trunk: 4, '': expect.closeTo(0.7, 10) });
    expect(check(given).sheets?.zones).toEqual([
      {
        zone: 'coat',
        parts: [
          { part: 'Trunk', share: 0.5 },
          { part: 'arm 2', share: 1 },
        ],
      },
    ]);
  });

  it('of several files: a file in one piece by its own name', () => {
    const several = {
      'kit/Left Arm.stl': measured({ 'Mesh.001': 60 }),
      'body.obj': measured({ torso: 300, legs: 200 }),
    };
    const others = steps('left arm', 'legs');
    expect(partsOf({ figures: spearman('kit/Left Arm.stl; body.obj'), files: several, others })).toEqual({
      'Left Arm': 0.6,
      legs: 2,
      '': 3,
    });
  });

  it('are not on other figures, which is told', () => {
    const figures = [...spearman('a.obj'), ['rider', '28', '', '']];
    const army = [
      ['unit', 'figure', 'count'],
      ['first spears', 'spearman', '20'],
      ['riders', 'rider', '5'],
    ];
    const { problems } = check({ figures, files, others: { ...steps('trunk'), army } });
    expect(problems).toMatchObject([{ code: 'zone-not-on-figure', found: 'Trunk', expected: 'rider' }]);
  });

  it('of a model that cannot be used make no zone or part unknown', () => {
    const broken: ModelFile = { fault: 'model-broken', detail: 'it is cut off' };
    const zones = [
      ['zone', 'parts'],
      ['coat', 'trunk'],
    ];
    const given = {
      figures: spearman('a.obj'),
      files: { 'a.obj': broken },
      others: { zones, ...steps('arm 2') },
    };
    expect(check(given).problems).toMatchObject([{ code: 'model-broken', found: 'a.obj' }]);
  });

  it('are misspelt like any other name', () => {
    const { problems } = check({ figures: spearman('a.obj'), files, others: steps('trunc') });
    expect(problems).toMatchObject([
      { code: 'unknown-zone', found: 'trunc', expected: expect.stringContaining('Trunk') },
    ]);
  });
});

describe('what a figure with a model does without', () => {
  it('eyes, and a column for them', () => {
    const header = ['figure', 'model'];
    const others = { figures: [header, ['spearman', 'a.stl']] };
    const { sheets, problems } = check({ figures: [], files: { 'a.stl': measured({ '': 900 }) }, others });
    expect(problems).toEqual([]);
    expect(sheets?.figures.get('spearman')?.eyeMm).toBeUndefined();
    const blank = { figures: [header, ['spearman', '']] };
    expect(check({ figures: [], files: {}, others: blank }).problems).toMatchObject([
      { code: 'no-eye-height' },
    ]);
  });
});
