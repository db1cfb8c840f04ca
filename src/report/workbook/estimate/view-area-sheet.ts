// Report view: areas of figures by part. In: measured figures, assumptions. Out: the sheet, and cells to go on from.
import { at } from '../../../model/at.js';

import type { Figure } from '../../../model/sheets.js';
import type { KitItem } from '../../../model/words.js';
import type { FigureArea } from '../../../model/work.js';
import { bodyParts, type Part, parts } from '../../../model/zones.js';
import { columnWords } from './column-words.js';
import { baseCm2, boxCm2 } from './measure-shapes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
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

const partColumns: Readonly<Record<string, ColumnOf>> = Object.fromEntries(
  parts.map((part): [Part, ColumnOf] => [part, [part, 11, 3]]),
);

const names = columnWords.areas;
const columns = {
  figure: [names.figure, 22],
  eyeMm: [names.eyeMm, 8],
  skin: [names.skin, 12, 3],
  dress: [names.dress, 10],
  dressFactor: [names.dressFactor, 11],
  build: [names.build, 14],
  buildFactor: [names.buildFactor, 11],
  kit: [names.kit, 10],
  relief: [names.relief, 8],
  longMm: [names.longMm, 11],
  wideMm: [names.wideMm, 11],
  highMm: [names.highMm, 11],
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
  ...partColumns,
} as const satisfies Record<string, ColumnOf>;

type AreaTable = SheetTable<string>;

export interface AreaSheet {
  readonly table: AreaTable;
  /** The row of a figure; it is measured when first asked for. */
  readonly rowOf: (figure: string) => number;
}

export const firstPart: Part = parts[0] ?? 'head';
export const lastPart: Part = parts.at(-1) ?? 'base edge';

/** Figures that a unit uses, each in a row of its own. */
export function openAreas(figures: ReadonlyMap<string, FigureArea>, assume: Assume): AreaSheet {
  const table: AreaTable = new SheetTable(sheetWords.areas.name, columns);
  const rows = new Map<string, number>();
  const rowOf = (name: string): number => {
    const known = rows.get(name);
    if (known !== undefined) return known;
    const area = figures.get(name);
    if (area === undefined) throw new Error(`the plan has no areas of ${name}`);
    const row = measureRow(table, area, assume);
    rows.set(name, row);
    return row;
  };
  return { table, rowOf };
}

function measureRow(table: AreaTable, { figure, parts: own }: FigureArea, assume: Assume): number {
  const row = table.add({ figure: figure.figure });
  const here = (key: string): Term => table.here(key, row);
  if (figure.boxMm === undefined) estimateBody(table, row, { figure, own, assume });
  else {
    const { longMm, wideMm, highMm } = figure.boxMm;
    table.put(row, { longMm, wideMm, highMm, build: figure.build, relief: assume(`relief ${figure.build}`) });
    const sides = { long: here('longMm'), wide: here('wideMm'), high: here('highMm') };
    table.put(row, { estimated: times(boxCm2(sides), here('relief')) });
  }
  table.put(row, { ownCm2: figure.areaCm2, scale: scaleOf(figure, here) });
  for (const part of own.keys()) table.put(row, { [part]: partOf(part, { figure, here, assume }) });
  placeBase(table, row, figure);
  const sum = (last: Part): Term => sumParts(table, row, last);
  table.put(row, { whole: sum('hull'), withBase: sum(lastPart) });
  return row;
}

interface Body {
  readonly figure: Figure;
  readonly own: ReadonlyMap<Part, number>;
  readonly assume: Assume;
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
  });
  if (own.has('head')) {
    table.put(row, { dressFactor: assume(`dress ${figure.dress}`) });
    table.put(row, { buildFactor: figure.build === 'true scale' ? 1 : assume(`build ${figure.build}`) });
  }
  // A body that is not there has blank factors, which count as 0.
  const body = plus(times(here('dressFactor'), here('buildFactor')), here('kit'));
  table.put(row, { estimated: times(here('skin'), body, here('relief')) });
}

const kitFactor = (item: KitItem, count: number, assume: Assume): Term =>
  count === 1 ? assume(`kit ${item}`) : times(num(count), assume(`kit ${item}`));

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
  if (part === 'hull') return times(here('estimated'), here('scale'));
  const share = bodyParts.find((one) => one === part);
  if (share !== undefined) {
    const shares = bodyParts.map((one) => assume(`share ${one}`));
    const all = shares.reduce((total, { result }) => total + result, 0);
    const body = times(here('skin'), here('dressFactor'), here('buildFactor'), here('relief'));
    const ofBody = over(assume(`share ${share}`), call('SUM', spanOf(shares), all));
    return times(body, ofBody, here('scale'));
  }
  const worn = figure.kit.filter(({ item }) => item === part);
  const factors = worn.map(({ item, count }) => kitFactor(item, count, assume));
  return times(here('skin'), plus(...factors), here('relief'), here('scale'));
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
  table.put(row, { 'base top': over(top, here('perBase')), 'base edge': over(edge, here('perBase')) });
}

function sumParts(table: AreaTable, row: number, last: Part): Term {
  const upTo = parts.slice(0, parts.indexOf(last) + 1);
  const total = upTo.reduce((sum, part) => sum + table.number(part, row), 0);
  return call('SUM', [`${table.here(firstPart, row).formula}:${table.here(last, row).formula}`], total);
}
