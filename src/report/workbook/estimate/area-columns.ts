// Report view: columns of the areas' sheet, and of parts. In: parts. Out: columns.
import type { Part } from '../../../model/zones.js';
import { columnWords } from './column-words.js';
import type { ColumnOf } from './sheet-table.js';

/** No part of a model is named as a column is. */
export const partKey = (part: Part): string => `part-${part}`;

/** A column for each part. */
export function partColumns(ofFigures: readonly Part[], digits?: number): Readonly<Record<string, ColumnOf>> {
  const column = (part: Part): ColumnOf => (digits === undefined ? [part, 11] : [part, 11, digits]);
  return Object.fromEntries(ofFigures.map((part) => [partKey(part), column(part)]));
}

const names = columnWords.areas;
export const areaColumns = {
  figure: [names.figure, 22],
  eyeMm: [names.eyeMm, 8],
  skin: [names.skin, 12, 3],
  dress: [names.dress, 10],
  dressFactor: [names.dressFactor, 11],
  build: [names.build, 14],
  buildFactor: [names.buildFactor, 11],
  kit: [names.kit, 10],
  relief: [names.relief, 8],
  sculpt: [names.sculpt, 8],
  lengthMm: [names.lengthMm, 10],
  longMm: [names.longMm, 11],
  wideMm: [names.wideMm, 11],
  highMm: [names.highMm, 11],
  ridgeMm: [names.ridgeMm, 11],
  estimated: [names.estimated, 12, 3],
  ownCm2: [names.ownCm2, 12],
  scale: [names.scale, 10, 4],
  base: [names.base, 10],
  baseLongMm: [names.baseLongMm, 12],
  baseWideMm: [names.baseWideMm, 12],
  baseHighMm: [names.baseHighMm, 12],
  perBase: [names.perBase, 13],
  whole: [names.whole, 10, 3],
  withBase: [names.withBase, 12, 3],
} as const satisfies Record<string, ColumnOf>;
