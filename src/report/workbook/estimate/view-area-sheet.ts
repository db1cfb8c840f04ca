// Report view: areas of figures by part. In: measured figures, assumptions. Out: the sheet, and cells to go on from.

import { nameForFigure } from '../../../model/assumption.js';
import { at } from '../../../model/at.js';
import type { Figure } from '../../../model/figure.js';
import { isCreature, isMeasuredByLength, type KitItem } from '../../../model/words.js';
import type { FigureArea } from '../../../model/work.js';
import {
  type BodyPart,
  bodyParts,
  isBasePart,
  type Part,
  parts,
  partsOfModel,
} from '../../../model/zones.js';
import { areaColumns, partColumns, partKey } from './area-columns.js';
import { baseCm2, boxCm2 } from './measure-shapes.js';
import { SheetTable } from './sheet-table.js';
import type { AssumptionSheet } from './view-assumption-sheet.js';
import { sheetWords } from './words.js';
import {
  call,
  either,
  isZero,
  num,
  over,
  plus,
  type Question,
  square,
  type Term,
  times,
} from './write-formula.js';

type Assume = AssumptionSheet['likely'];

type AreaTable = SheetTable<string>;

export interface AreaSheet {
  readonly table: AreaTable;
  /** Every part there is, and those of models; those of bases last. */
  readonly parts: readonly Part[];
  /** The row of a figure; it is measured when first asked for. */
  readonly rowOf: (figure: string) => number;
}

/** Figures that a unit uses, each in a row of its own. */
export function openAreas(figures: ReadonlyMap<string, FigureArea>, assume: Assume): AreaSheet {
  const ofFigures = listParts(figures);
  const table: AreaTable = new SheetTable(sheetWords.areas.name, {
    ...areaColumns,
    ...partColumns(ofFigures, 3),
  });
  const rows = new Map<string, number>();
  const rowOf = (name: string): number => {
    const known = rows.get(name);
    if (known !== undefined) return known;
    const area = figures.get(name);
    if (area === undefined) throw new Error(`the plan has no areas of ${name}`);
    const row = measureRow({ table, parts: ofFigures }, area, assume);
    rows.set(name, row);
    return row;
  };
  return { table, parts: ofFigures, rowOf };
}

function listParts(figures: ReadonlyMap<string, FigureArea>): Part[] {
  const ofModels = [...figures.values()].flatMap(({ figure }) => partsOfModel(figure));
  const all = [...new Set<Part>([...parts, ...ofModels])];
  return [...all.filter((part) => !isBasePart(part)), ...all.filter(isBasePart)];
}

type Columns = Pick<AreaSheet, 'table' | 'parts'>;

function measureRow(sheet: Columns, { figure, parts: own }: FigureArea, assume: Assume): number {
  const { table } = sheet;
  const row = table.add({ figure: figure.figure });
  if (figure.model !== undefined) divideModel(table, row, { figure, own, assume });
  else estimateRow(table, row, { figure, own, assume });
  if (own.has('base top') && !partsOfModel(figure).some(isBasePart)) placeBase(table, row, figure);
  const whole = sheet.parts.filter((part) => !isBasePart(part));
  const sum = (of: readonly Part[]): Term => sumParts(table, row, of);
  table.put(row, { whole: sum(whole), withBase: sum(sheet.parts) });
  return row;
}

/** What was measured stands as it is; what the body chart divides of it is the painter's own total of those parts. */
function divideModel(table: AreaTable, row: number, { figure, own, assume }: Body): void {
  const named = partsOfModel(figure);
  const isDrawn = (part: Part): boolean =>
    figure.areaCm2 === undefined && part !== 'hull' && !named.includes(part) && !isBasePart(part);
  for (const [part, cm2] of own) if (!isDrawn(part)) table.put(row, { [partKey(part)]: cm2 });
  const drawn = new Map([...own].filter(([part]) => isDrawn(part)));
  if (drawn.size === 0) return;
  const areaCm2 = [...drawn.values()].reduce((total, cm2) => total + cm2, 0);
  const kit = figure.kit.filter(({ item }) => drawn.has(item));
  estimateRow(table, row, {
    figure: { ...withoutBox(figure), eyeMm: figure.eyeMm ?? 1, kit, areaCm2 },
    own: drawn,
    assume,
  });
}

const withoutBox = ({ boxMm: _, ...figure }: Figure): Figure => figure;

function estimateRow(table: AreaTable, row: number, { figure, own, assume }: Body): void {
  const here = (key: string): Term => table.here(key, row);
  if (figure.boxMm !== undefined) estimateBox(table, row, { figure, own, assume });
  else if (isMeasuredByLength(figure.build)) estimateByLength(table, row, { figure, own, assume });
  else estimateBody(table, row, { figure, own, assume });
  table.put(row, { ownCm2: figure.areaCm2, scale: scaleOf(figure, here) });
  for (const part of own.keys()) table.put(row, { [partKey(part)]: partOf(part, { figure, here, assume }) });
}

interface Body {
  readonly figure: Figure;
  readonly own: ReadonlyMap<Part, number>;
  readonly assume: Assume;
}

function estimateBox(table: AreaTable, row: number, { figure, assume }: Body): void {
  const here = (key: string): Term => table.here(key, row);
  const { boxMm, build } = figure;
  const ridgeMm = boxMm?.ridgeMm ?? boxMm?.highMm;
  table.put(row, { ...boxMm, ridgeMm, build, relief: assume(`relief ${build}`) });
  const sides = { long: here('longMm'), wide: here('wideMm'), high: here('highMm'), ridge: here('ridgeMm') };
  table.put(row, { estimated: times(boxCm2(sides), here('relief')) });
}

/** The square of a length, times what its build has over that; kit in shares of it. */
function estimateByLength(table: AreaTable, row: number, { figure, own, assume }: Body): void {
  const here = (key: string): Term => table.here(key, row);
  const buildFactor = assume(nameForFigure(`surface ${figure.build}`, figure.figure));
  table.put(row, { lengthMm: figure.longMm ?? 1, build: figure.build, buildFactor });
  table.put(row, {
    kit: plus(...figure.kit.map(({ item, count }) => kitFactor(item, count, ofHide(assume)))),
  });
  table.put(row, { skin: times(square(here('lengthMm')), num(0.01), here('buildFactor')) });
  const isNamed = isCreature(figure.build) ? own.has('hide') : own.has('hull');
  const whole = isNamed ? plus(num(1), here('kit')) : here('kit');
  table.put(row, { estimated: times(here('skin'), whole) });
}

/** Skin of a person made small; dressed, built and with kit. Without a body, kit alone. */
function estimateBody(table: AreaTable, row: number, { figure, own, assume }: Body): void {
  const here = (key: string): Term => table.here(key, row);
  table.put(row, { eyeMm: figure.eyeMm ?? 0, dress: figure.dress, build: figure.build });
  const eyeLevelMm = times(assume('eye level'), assume('stature of a person'));
  table.put(row, {
    skin: times(assume('skin of a person'), square(over(here('eyeMm'), eyeLevelMm))),
    kit: plus(...figure.kit.map(({ item, count }) => kitFactor(item, count, assume))),
    relief: assume('relief'),
    sculpt: assume(nameForFigure('sculpt', figure.figure)),
  });
  const ofBody = bodyParts.filter((part) => own.has(part));
  if (ofBody.length > 0) {
    table.put(row, { dressFactor: assume(`dress ${figure.dress}`) });
    table.put(row, { buildFactor: figure.build === 'true scale' ? 1 : assume(`build ${figure.build}`) });
  }
  // A body that is not there has blank factors, which count as 0.
  const whole = times(here('dressFactor'), here('buildFactor'));
  const isWhole = ofBody.length === 0 || ofBody.length === bodyParts.length;
  const body = isWhole ? whole : times(whole, shareOfBody(ofBody, assume));
  table.put(row, { estimated: times(here('skin'), plus(body, here('kit')), here('relief'), here('sculpt')) });
}

function shareOfBody(of: readonly BodyPart[], assume: Assume): Term {
  const shares = bodyParts.map((one) => assume(`share ${one}`));
  const all = shares.reduce((total, { result }) => total + result, 0);
  return over(plus(...of.map((part) => assume(`share ${part}`))), call('SUM', spanOf(shares), all));
}

const kitFactor = (item: KitItem, count: number, assume: Assume): Term =>
  count === 1 ? assume(`kit ${item}`) : times(num(count), assume(`kit ${item}`));

/** Creatures have factors of their own for kit. */
const ofHide =
  (assume: Assume): Assume =>
  (name) =>
    assume(name.replace(/^kit (.*)$/, '$1 of a creature'));

/** The painter's own total takes the place of the estimated one; the parts keep their proportions. */
function scaleOf({ areaCm2 }: Figure, here: (key: string) => Term): Term {
  const isBlank: Question = { formula: `${here('ownCm2').formula}=""`, answer: areaCm2 === undefined };
  const estimated = here('estimated');
  const scaled = either(
    isZero(estimated),
    num(0),
    over({ ...here('ownCm2'), result: areaCm2 ?? 0 }, estimated),
  );
  return either(isBlank, num(1), scaled);
}

interface PartOf {
  readonly figure: Figure;
  readonly here: (key: string) => Term;
  readonly assume: Assume;
}

function partOf(part: Part, { figure, here, assume }: PartOf): Term | undefined {
  if (part === 'base top' || part === 'base edge') return undefined;
  const byLength = figure.boxMm === undefined && isMeasuredByLength(figure.build);
  if (byLength && (part === 'hide' || part === 'hull')) return times(here('skin'), here('scale'));
  if (part === 'hull') return times(here('estimated'), here('scale'));
  const ofSculpt = times(here('relief'), here('sculpt'));
  const share = bodyParts.find((one) => one === part);
  if (share !== undefined) {
    const body = times(here('skin'), here('dressFactor'), here('buildFactor'));
    return times(body, shareOfBody([share], assume), ofSculpt, here('scale'));
  }
  const worn = figure.kit.filter(({ item }) => item === part);
  const factors = worn.map(({ item, count }) => kitFactor(item, count, byLength ? ofHide(assume) : assume));
  if (byLength) return times(here('skin'), plus(...factors), here('scale'));
  return times(here('skin'), plus(...factors), ofSculpt, here('scale'));
}

/** The shares stand one below the other in the registry; should they not, each is named. */
function spanOf(cells: readonly Term[]): string[] {
  const rows = cells.map(({ formula }) => Number(/\d+$/.exec(formula)?.[0]));
  const first = at(rows, 0);
  const isSpan = rows.every((row, index) => row === first + index);
  const ends = [cells[0]?.formula, cells.at(-1)?.formula.replace(/^.*!/, '')];
  return isSpan ? [ends.join(':')] : cells.map(({ formula }) => formula);
}

function placeBase(table: AreaTable, row: number, { base, baseHighMm, perBase }: Figure): void {
  if (base === undefined) return;
  const long = base.shape === 'round' ? base.acrossMm : base.longMm;
  const wide = base.shape === 'round' ? base.acrossMm : base.wideMm;
  table.put(row, { base: base.shape, baseLongMm: long, baseWideMm: wide, baseHighMm, perBase });
  const here = (key: string): Term => table.here(key, row);
  const size = { long: here('baseLongMm'), wide: here('baseWideMm'), high: here('baseHighMm') };
  const { top, edge } = baseCm2(base.shape, size);
  table.put(row, {
    [partKey('base top')]: over(top, here('perBase')),
    [partKey('base edge')]: over(edge, here('perBase')),
  });
}

/** Of parts whose columns stand side by side. */
function sumParts(table: AreaTable, row: number, of: readonly Part[]): Term {
  const keys = of.map(partKey);
  const total = keys.reduce((sum, key) => sum + table.number(key, row), 0);
  const ends = [keys[0] ?? '', keys.at(-1) ?? ''].map((key) => table.here(key, row).formula);
  return call('SUM', [ends.join(':')], total);
}
