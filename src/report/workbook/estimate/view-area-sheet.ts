// Report view: areas of figures by part. In: measured figures, assumptions. Out: the sheet, and cells to go on from.

import { nameForFigure } from '../../../model/assumption.js';
import type { Figure } from '../../../model/figure.js';
import { remember } from '../../../model/remember.js';
import { isCreature, isMeasuredByLength } from '../../../model/words.js';
import type { FigureArea } from '../../../model/work.js';
import {
  type BodyPart,
  bodyParts,
  isBasePart,
  type Part,
  parts,
  partsOfModel,
} from '../../../model/zones.js';
import { baseCm2, boxCm2 } from './measure-shapes.js';
import { type ColumnWords, type Row, SheetTable } from './sheet-table.js';
import { sheetWords } from './sheet-words.js';
import type { Likely } from './view-assumption-sheet.js';
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

type AreaRow = Row<string>;

export interface AreaSheet {
  readonly table: SheetTable<string>;
  /** Every part there is, and those of models; those of bases last. */
  readonly parts: readonly Part[];
  /** The row of a figure; it is measured when first asked for. */
  readonly rowOf: (figure: string) => AreaRow;
}

/** Figures that a unit uses, each in a row of its own. */
export function openAreas(figures: ReadonlyMap<string, FigureArea>, assume: Likely): AreaSheet {
  const ofFigures = listParts(figures);
  const { columns, ...words } = sheetWords.areas;
  const table = new SheetTable<string>({ ...words, columns: { ...columns, ...partColumns(ofFigures, 3) } });
  const rowOf = remember((name: string): AreaRow => {
    const area = figures.get(name);
    if (area === undefined) throw new Error(`the plan has no areas of ${name}`);
    return measure(table.add({ figure: name }), ofFigures, area, assume);
  });
  return { table, parts: ofFigures, rowOf };
}

/** No part of a model is named as a column is. */
export const partKey = (part: Part): string => `part-${part}`;

/** A column for each part. */
export function partColumns(of: readonly Part[], digits?: number): Readonly<Record<string, ColumnWords>> {
  return Object.fromEntries(of.map((part) => [partKey(part), [part, 11, digits]]));
}

function listParts(figures: ReadonlyMap<string, FigureArea>): Part[] {
  const ofModels = [...figures.values()].flatMap(({ figure }) => partsOfModel(figure));
  const all = [...new Set<Part>([...parts, ...ofModels])];
  return [...all.filter((part) => !isBasePart(part)), ...all.filter(isBasePart)];
}

function measure(
  row: AreaRow,
  of: readonly Part[],
  { figure, parts: own }: FigureArea,
  assume: Likely,
): AreaRow {
  const body = { figure, own, assume };
  if (figure.model === undefined) estimate(row, body);
  else divideModel(row, body);
  if (own.has('base top') && !partsOfModel(figure).some(isBasePart)) placeBase(row, figure);
  const whole = of.filter((part) => !isBasePart(part));
  row.put({ whole: sumParts(row, whole), withBase: sumParts(row, of) });
  return row;
}

interface Body {
  readonly figure: Figure;
  readonly own: ReadonlyMap<Part, number>;
  readonly assume: Likely;
}

/** What was measured stands as it is; what the body chart divides of it is the painter's own total of those parts. */
function divideModel(row: AreaRow, { figure, own, assume }: Body): void {
  const named = partsOfModel(figure);
  const isDrawn = (part: Part): boolean =>
    figure.areaCm2 === undefined && part !== 'hull' && !named.includes(part) && !isBasePart(part);
  for (const [part, cm2] of own) if (!isDrawn(part)) row.put({ [partKey(part)]: cm2 });
  const drawn = new Map([...own].filter(([part]) => isDrawn(part)));
  if (drawn.size === 0) return;
  const { boxMm: _, ...body } = figure;
  const areaCm2 = [...drawn.values()].reduce((total, cm2) => total + cm2, 0);
  const kit = figure.kit.filter(({ item }) => drawn.has(item));
  estimate(row, { figure: { ...body, eyeMm: figure.eyeMm ?? 1, kit, areaCm2 }, own: drawn, assume });
}

function estimate(row: AreaRow, body: Body): void {
  const { figure, own } = body;
  if (figure.boxMm !== undefined) estimateBox(row, body);
  else if (isMeasuredByLength(figure.build)) estimateByLength(row, body);
  else estimateBody(row, body);
  row.put({ ownCm2: figure.areaCm2, scale: () => scaleOf(figure, row) });
  for (const part of own.keys()) row.put({ [partKey(part)]: partOf(part, row, body) });
}

function estimateBox({ here, put }: AreaRow, { figure: { boxMm, build }, assume }: Body): void {
  put({ ...boxMm, ridgeMm: boxMm?.ridgeMm ?? boxMm?.highMm, build, relief: assume(`relief ${build}`) });
  const sides = { long: here('longMm'), wide: here('wideMm'), high: here('highMm'), ridge: here('ridgeMm') };
  put({ estimated: times(boxCm2(sides), here('relief')) });
}

/** The square of a length, times what its build has over that; kit in shares of it. */
function estimateByLength({ here, put }: AreaRow, { figure, own, assume }: Body): void {
  const { figure: name, build, longMm, kit } = figure;
  const isNamed = own.has(isCreature(build) ? 'hide' : 'hull');
  put({
    ...{ lengthMm: longMm ?? 1, build, buildFactor: assume(nameForFigure(`surface ${build}`, name)) },
    kit: sumKit(kit, ofHide(assume)),
    skin: () => times(square(here('lengthMm')), num(0.01), here('buildFactor')),
    estimated: () => times(here('skin'), isNamed ? plus(num(1), here('kit')) : here('kit')),
  });
}

/** Skin of a person made small; dressed, built and with kit. Without a body, kit alone. */
function estimateBody({ here, put }: AreaRow, { figure, own, assume }: Body): void {
  const { figure: name, eyeMm, dress, build, kit } = figure;
  const eyeLevelMm = times(assume('eye level'), assume('stature of a person'));
  put({
    ...{ eyeMm: eyeMm ?? 0, dress, build, kit: sumKit(kit, assume) },
    skin: () => times(assume('skin of a person'), square(over(here('eyeMm'), eyeLevelMm))),
    ...{ relief: assume('relief'), sculpt: assume(nameForFigure('sculpt', name)) },
  });
  const ofBody = bodyParts.filter((part) => own.has(part));
  if (ofBody.length > 0) {
    const buildFactor = build === 'true scale' ? 1 : assume(`build ${build}`);
    put({ dressFactor: assume(`dress ${dress}`), buildFactor });
  }
  // A body that is not there has blank factors, which count as 0.
  const whole = times(here('dressFactor'), here('buildFactor'));
  const isWhole = ofBody.length === 0 || ofBody.length === bodyParts.length;
  const body = isWhole ? whole : times(whole, shareOfBody(ofBody, assume));
  put({ estimated: times(here('skin'), plus(body, here('kit')), here('relief'), here('sculpt')) });
}

/** The shares stand one below the other among the assumptions. */
function shareOfBody(of: readonly BodyPart[], assume: Likely): Term {
  const shares = bodyParts.map((one) => assume(`share ${one}`));
  return over(plus(...of.map((part) => assume(`share ${part}`))), sumSpan(shares));
}

const sumKit = (kit: Figure['kit'], assume: Likely): Term =>
  plus(
    ...kit.map(({ item, count }) => {
      const one = assume(`kit ${item}`);
      return count === 1 ? one : times(num(count), one);
    }),
  );

/** Creatures have factors of their own for kit. */
const ofHide =
  (assume: Likely): Likely =>
  (name) =>
    assume(name.replace(/^kit (.*)$/, '$1 of a creature'));

/** The painter's own total takes the place of the estimated one; the parts keep their proportions. */
function scaleOf({ areaCm2 }: Figure, { here }: AreaRow): Term {
  const [own, estimated] = [here('ownCm2'), here('estimated')];
  const isBlank: Question = { formula: `${own.formula}=""`, answer: areaCm2 === undefined };
  return either(isBlank, num(1), either(isZero(estimated), num(0), over(own, estimated)));
}

function partOf(part: Part, { here }: AreaRow, { figure, assume }: Body): Term | undefined {
  if (isBasePart(part)) return undefined;
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
  if (byLength) return times(here('skin'), sumKit(worn, ofHide(assume)), here('scale'));
  return times(here('skin'), sumKit(worn, assume), ofSculpt, here('scale'));
}

function placeBase({ here, put }: AreaRow, { base, baseHighMm, perBase }: Figure): void {
  if (base === undefined) return;
  const [baseLongMm, baseWideMm] =
    base.shape === 'round' ? [base.acrossMm, base.acrossMm] : [base.longMm, base.wideMm];
  put({ base: base.shape, baseLongMm, baseWideMm, baseHighMm, perBase });
  const size = { long: here('baseLongMm'), wide: here('baseWideMm'), high: here('baseHighMm') };
  const { top, edge } = baseCm2(base.shape, size);
  put({
    [partKey('base top')]: over(top, here('perBase')),
    [partKey('base edge')]: over(edge, here('perBase')),
  });
}

/** Of parts whose columns stand side by side. */
const sumParts = ({ here }: AreaRow, of: readonly Part[]): Term =>
  sumSpan(of.map((part) => here(partKey(part))));

/** Cells that stand in a line, added up. */
function sumSpan(cells: readonly Term[]): Term {
  const total = cells.reduce((sum, { result }) => sum + result, 0);
  const ends = [cells[0]?.formula, cells.at(-1)?.formula.replace(/^.*!/, '')];
  return call('SUM', [ends.join(':')], total);
}
