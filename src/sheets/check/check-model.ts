// Checks: the model files of a figure. In: a row of figures, files as measured. Out: the model in cm2; what is wrong is told.

import type { FigureModel } from '../../model/figure.js';
import type { MeasuredModel, MeasuredPiece } from '../../model/measured.js';
import { isBasePart } from '../../model/zones.js';
import type { Details, ProblemCode } from '../../problems/catalogue.js';
import type { ModelFile, ModelFiles } from '../model-file.js';
import { tidyName } from './fold-name.js';
import type { NameBook } from './keep-names.js';

/** What a row says of its model. */
export interface ModelRow {
  readonly model: readonly string[] | undefined;
  readonly modelHighMm: number | undefined;
  readonly eyeMm: number | undefined;
  readonly base: unknown;
}

type Blame = (
  code: ProblemCode,
  key: 'model' | 'modelHighMm' | 'base' | 'areaCm2',
  details?: Details,
) => void;

interface Beside {
  /** Undefined where nobody asks for areas. */
  readonly files: ModelFiles | undefined;
  /** Parts of models, spelled as the known ones are where they are known. */
  readonly parts: NameBook;
  readonly blame: Blame;
}

/** Undefined where there is none, or where one of its files cannot be used. */
export function checkModel(row: ModelRow, beside: Beside): FigureModel | undefined {
  const { files, blame } = beside;
  if (row.model === undefined) {
    if (row.modelHighMm !== undefined) blame('high-without-model', 'modelHighMm');
    return undefined;
  }
  if (files === undefined) return undefined;
  const models = row.model.map((name) => measuredOf(name, files.get(name), blame));
  const measured = models.filter((model) => model !== undefined);
  if (measured.length === 0 || measured.length < models.length) return undefined;
  const scale = scaleOf(row, measured, blame);
  if (scale === undefined) return undefined;
  const pieces = row.model.flatMap((name, index) =>
    piecesOf(name, measured[index] as MeasuredModel, { row, scale, parts: beside.parts }),
  );
  if (row.base !== undefined && pieces.some(({ part }) => isBasePart(part))) blame('model-has-base', 'base');
  return { files: row.model, pieces };
}

function measuredOf(found: string, file: ModelFile | undefined, blame: Blame): MeasuredModel | undefined {
  if (file === undefined || !('model' in file)) {
    blame(file?.fault ?? 'model-missing', 'model', { found, expected: file?.detail ?? '' });
    return undefined;
  }
  const { unreal, isInsideOut } = file.model;
  if (unreal > 0) blame('model-unreal', 'model', { found, expected: unreal.toLocaleString('en') });
  if (isInsideOut) blame('model-inside-out', 'model', { found });
  return file.model;
}

/** In mm: from a beast of the smallest scale to a house of the largest. */
const usualHeights = [4, 400] as const;
/** Of the height of the eyes: from a figure in pieces to one with a pike. */
const usualToEyes = [0.4, 5] as const;

/** Whether a height in a file without a unit can be millimetres of a print. */
export function canBeMm(high: number, eyeMm?: number): boolean {
  const [least, most] = eyeMm === undefined ? usualHeights : usualToEyes.map((times) => times * eyeMm);
  return high >= (least ?? 0) && high <= (most ?? 0);
}

/** What lengths in mm, as the files have them, are multiplied with: the printed height is that of the first file. */
function scaleOf(
  { model, modelHighMm, eyeMm }: ModelRow,
  measured: readonly MeasuredModel[],
  blame: Blame,
): number | undefined {
  const [first] = measured;
  if (modelHighMm !== undefined) return modelHighMm / mmOf(first);
  const highest = measured.reduce((most, one) => Math.max(most, mmOf(one)), 0);
  if (measured.every(({ unitMm }) => unitMm !== undefined) || canBeMm(highest, eyeMm)) return 1;
  const at = measured.findIndex((one) => mmOf(one) === highest);
  blame('model-unit', 'model', {
    found: model?.[at] ?? '',
    expected: String(Number(highest.toPrecision(3))),
  });
  return undefined;
}

/** What a file without a unit says is taken as mm. */
const mmOf = (model: MeasuredModel | undefined): number => (model?.high ?? 0) * (model?.unitMm ?? 1);

const cm2PerMm2 = 0.01;

interface Placed {
  readonly row: ModelRow;
  readonly scale: number;
  readonly parts: NameBook;
}

/** Areas in cm2. A file that is not divided is itself a part where there are several. */
function piecesOf(
  file: string,
  { pieces, unitMm = 1 }: MeasuredModel,
  { row, scale, parts }: Placed,
): MeasuredPiece[] {
  const isOne = new Set(pieces.map(({ part }) => part)).size === 1;
  const areMany = (row.model?.length ?? 0) > 1;
  const nameOf = (part: string): string => (areMany && (isOne || part === '') ? bareName(file) : part);
  const toCm2 = (unitMm * scale) ** 2 * cm2PerMm2;
  return pieces.map((piece) => {
    const name = readable(nameOf(piece.part));
    return { ...piece, part: name === '' ? '' : parts.add(name), area: piece.area * toCm2 };
  });
}

/** `left arm` of `pieces/left arm.stl`. */
const bareName = (file: string): string => file.replace(/^.*[\\/]/, '').replace(/\.\w+$/, '');

const longest = 60;

/** Without what parts lists, and what no sheet shows. */
const readable = (name: string): string =>
  tidyName(tidyName(name.replace(/[,;\p{C}]/gu, ' ')).slice(0, longest));
