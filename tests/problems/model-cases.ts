// One case or more for each code of model files, with the exact words.
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type Body,
  binaryStl,
  cube,
  cylinder,
  move,
  obj,
  textStl,
  threeMf,
  turnOver,
} from '../surface/make-models.js';
import { fourShortSheets, type ProblemCase, writeSheets } from './problem-case.js';

const stl = (body: Body): Buffer => binaryStl({ body });
/** 30 mm high on a round foot. */
const figure = cylinder(6, 30, 32);
const times = (body: Body, factor: number): Body =>
  move(body, ([x, y, z]) => [x * factor, y * factor, z * factor]);

/** The four short sheets with rows of figures, and files beside them. */
function models(
  code: string,
  {
    rows,
    files = {},
  }: { readonly rows: readonly string[]; readonly files?: Readonly<Record<string, Uint8Array>> },
  ...says: readonly string[]
): ProblemCase {
  const figures = ['figure,eye mm,base,area cm2,model,model high mm', ...rows].join('\n');
  return {
    code,
    says,
    make: (dir) => writeSheets(dir, { ...fourShortSheets, 'figures.csv': `${figures}\n`, ...files }),
  };
}

const saveAnew = 'Save it anew as STL, OBJ or 3MF from the program that made it.';
const outside = (column: string, name: string): string =>
  `figures.csv row 2, "model" (${column}): "${name}" lies outside the folder of the sheets. Copy the file beside them, and write its name alone.`;

const spoilt = stl(figure);
spoilt.writeFloatLE(Number.NaN, 84 + 12);

const fileCases: readonly ProblemCase[] = [
  models(
    'model-missing',
    { rows: ['spearman,28,,,spearmen.stl,'] },
    'figures.csv row 2, "model" (E2): there is no file "spearmen.stl". Put it beside the sheets, or write its name as it is.',
  ),
  models('model-outside', { rows: ['spearman,28,,,../spearman.stl,'] }, outside('E2', '../spearman.stl')),
  models(
    'model-outside',
    { rows: ['spearman,28,,,/models/spearman.stl,'] },
    outside('E2', '/models/spearman.stl'),
  ),
  models(
    'model-outside',
    { rows: ['spearman,28,,,C:\\models\\spearman.stl,'] },
    outside('E2', 'C:\\models\\spearman.stl'),
  ),
  {
    ...models('model-outside', { rows: ['spearman,28,,,link.stl,'] }, outside('E2', 'link.stl')),
    make: (dir) => {
      mkdirSync(join(dir, 'army'));
      writeFileSync(join(dir, 'spearman.stl'), stl(figure));
      symlinkSync(join(dir, 'spearman.stl'), join(dir, 'army/link.stl'));
      const figures = 'figure,eye mm,base,area cm2,model,model high mm\nspearman,28,,,link.stl,\n';
      writeSheets(join(dir, 'army'), { ...fourShortSheets, 'figures.csv': figures });
    },
    path: (dir) => join(dir, 'army'),
  },
  models(
    'model-type',
    { rows: ['spearman,28,,,plastic,'], files: { plastic: stl(figure) } },
    'figures.csv row 2, "model" (E2): "plastic" is not the name of a model file. Write the name of an STL, OBJ or 3MF file, with its ending.',
  ),
  {
    ...models(
      'model-unreadable',
      { rows: ['spearman,28,,,spearman.stl,'] },
      'figures.csv row 2, "model" (E2): "spearman.stl" cannot be opened (it is a folder). See that you may read it, and that no other program holds it.',
    ),
    make: (dir) => {
      mkdirSync(join(dir, 'spearman.stl'));
      writeSheets(dir, {
        ...fourShortSheets,
        'figures.csv': 'figure,eye mm,x,y,model\nspearman,28,,,spearman.stl\n',
      });
    },
  },
  models(
    'model-broken',
    { rows: ['spearman,28,,,spearman.stl,'], files: { 'spearman.stl': stl(figure).subarray(0, 1000) } },
    `figures.csv row 2, "model" (E2): "spearman.stl" cannot be measured: it is cut off, with 18 of 704 triangles. ${saveAnew}`,
  ),
  models(
    'model-broken',
    { rows: ['spearman,28,,,spearman.stl,'], files: { 'spearman.stl': Buffer.from('unit,figure\n') } },
    `figures.csv row 2, "model" (E2): "spearman.stl" cannot be measured: it is some other file. ${saveAnew}`,
  ),
  models(
    'model-too-large',
    {
      rows: ['spearman,28,,,spearman.obj,'],
      files: {
        'spearman.obj': obj(
          Object.fromEntries(Array.from({ length: 201 }, (_, at) => [`part${at}`, cube(9, 1)])),
        ),
      },
    },
    'figures.csv row 2, "model" (E2): "spearman.obj" is too large to measure: more named parts, where 200 is the most. Let a program for models reduce its triangles, or write the area of the figure into area cm2.',
  ),
];

const askHeight = (name: string, high: string): string =>
  `figures.csv row 2, "model" (E2): "${name}" is ${high} high in its file, which can hardly be millimetres. Write the height of the printed model into model high mm.`;

const rowCases: readonly ProblemCase[] = [
  // 30 mm in inches and in metres, and a person of 1.7 m in millimetres.
  models(
    'model-unit',
    { rows: ['spearman,28,,,spearman.stl,'], files: { 'spearman.stl': stl(times(figure, 1 / 25.4)) } },
    askHeight('spearman.stl', '1.18'),
  ),
  models(
    'model-unit',
    { rows: ['spearman,,,,spearman.obj,'], files: { 'spearman.obj': obj({ body: times(figure, 0.001) }) } },
    askHeight('spearman.obj', '0.03'),
  ),
  models(
    'model-unit',
    {
      rows: ['spearman,28,,,spearman.stl,'],
      files: { 'spearman.stl': textStl({ body: times(figure, 1700 / 30) }) },
    },
    askHeight('spearman.stl', '1700'),
  ),
  models(
    'model-unreal',
    { rows: ['spearman,28,,,spearman.stl,'], files: { 'spearman.stl': spoilt } },
    `figures.csv row 2, "model" (E2): "spearman.stl" was measured without some of its triangles (1), whose corners are no numbers. ${saveAnew}`,
  ),
  models(
    'model-inside-out',
    { rows: ['spearman,28,,,spearman.stl,'], files: { 'spearman.stl': stl(turnOver(figure)) } },
    'figures.csv row 2, "model" (E2): the surface of "spearman.stl" faces inwards; it was measured as if it faced outwards. If the figure is right, leave it as it is.',
  ),
  models(
    'model-has-base',
    {
      rows: ['spearman,28,round 25,,spearman.3mf,'],
      files: { 'spearman.3mf': threeMf({ body: figure, Base: cube(9, 1) }) },
    },
    'figures.csv row 2, "base" (C2): "round 25" is left aside, as the model has a base of its own. Leave this cell blank, or take the base out of the file.',
  ),
  models(
    'model-and-area',
    { rows: ['spearman,28,,9.5,spearman.stl,'], files: { 'spearman.stl': stl(figure) } },
    'figures.csv row 2, "area cm2" (D2): the area "9.5" is taken, and not that of the model. Leave this cell blank to have the area of the model.',
  ),
  models(
    'high-without-model',
    { rows: ['spearman,28,,,,34'] },
    'figures.csv row 2, "model high mm" (F2): "34" counts for nothing, as this figure has no model. Write the name of its file into model, or leave this cell blank.',
  ),
];

export const modelCases: readonly ProblemCase[] = [...fileCases, ...rowCases];
