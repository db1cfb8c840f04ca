// Checks: the figures sheet. In: its rows. Out: figures by name; a figure without any surface is told.
import type { Figure, FigureModel } from '../../model/figure.js';
import { usualBuild } from '../../model/usual-build.js';
import {
  boxBuilds,
  builds,
  creatureKit,
  isCreature,
  isMeasuredByLength,
  type KitItem,
  kitItems,
  lengthBuilds,
  lengthOf,
} from '../../model/words.js';
import { readyMadeZones } from '../../model/zones.js';
import { problem } from '../../problems/catalogue.js';
import { kitWords } from '../columns/choice-words.js';
import type { ModelFiles } from '../model-file.js';
import { checkModel } from './check-model.js';
import { joinOr } from './find-nearest.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { kitNear } from './list-words.js';
import type { From } from './open-sheet.js';
import { wordFinder } from './read-cell/read-choice.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';
import { tellRepeat } from './tell-names.js';
import { whatIsKnown } from './what-is-known.js';

type FigureSheet = SheetOf<'figures'>;
type Row = RowIn<'figures'>;

export interface CheckedFigures {
  readonly figures: ReadonlyMap<string, Figure>;
  /** Every name with a row, however bad the row; undefined where the sheet or its column is missing. */
  readonly book: NameBook | undefined;
  /** Parts that models name, known ones spelled as they are known; undefined where a model could not be used. */
  readonly modelParts: NameBook | undefined;
}

interface Given extends From {
  readonly models?: ModelFiles | undefined;
}

/** One Figure for each name; a name that stands twice counts once. */
export function checkFigures({ models, ...from }: Given): CheckedFigures {
  const sheet = readRows('figures', from);
  tellNoSize(sheet);
  const book = makeNameBook();
  const first = new Map<string, string>();
  const figures = new Map<string, Figure>();
  const modelParts = makeNameBook();
  const modelOf = openModels(sheet, models, modelParts);
  let areModelsKnown = true;
  for (const row of sheet.rows) {
    const kit = readKit(sheet, row);
    const figure = row.figure === undefined ? undefined : book.add(row.figure);
    checkRow(sheet, row, kit);
    checkBase(sheet, row);
    const model = modelOf(row);
    if (model === undefined && (row.model !== undefined || row.bad.includes('model'))) areModelsKnown = false;
    if (figure === undefined || tellRepeat(sheet, row, { key: 'figure', name: figure, first })) continue;
    const made = figureOf(row, figure, { kit, model });
    if (made !== undefined) figures.set(figure, made);
  }
  recordDefaults(sheet);
  return {
    figures,
    book: sheet.has('figure') ? book : undefined,
    modelParts: areModelsKnown ? modelParts : undefined,
  };
}

/** Only names that a model has are put into the book of parts, known ones spelled as they are known. */
function openModels(sheet: FigureSheet, files: ModelFiles | undefined, parts: NameBook) {
  const known = makeNameBook();
  for (const name of readyMadeZones.keys()) known.add(name);
  const add = (name: string): string => parts.add(known.find(name) ?? name);
  return (row: Row): FigureModel | undefined => {
    const { model, modelHighMm, eyeMm, base, areaCm2 } = row;
    if (model !== undefined && areaCm2 !== undefined) sheet.blame('model-and-area', row, 'areaCm2');
    const blame: Parameters<typeof checkModel>[1]['blame'] = (code, key, details) =>
      sheet.blame(code, row, key, details);
    return checkModel(
      { model, modelHighMm, eyeMm, base: base === 'none' ? undefined : base },
      { files, parts: { ...parts, add }, blame },
    );
  };
}

/** Every figure needs one of four columns: where all are missing, that is one problem and not one a row. */
function tellNoSize({ table, findings, indexOf }: FigureSheet): void {
  if (table === undefined || ['eyeMm', 'longMm', 'boxMm', 'model'].some((key) => indexOf(key) !== -1)) return;
  const place = { file: table.file, sheet: table.sheet, column: 'eye mm' };
  findings.problems.push(problem('missing-column', place));
}

const findKit = wordFinder(kitItems, kitWords);

/** Items with their number, in the order of their first mention; unknown ones are told. `none` is nothing. */
function readKit(sheet: FigureSheet, row: Row): ReadonlyMap<KitItem, number> {
  const kit = new Map<KitItem, number>();
  for (const found of row.kit ?? []) {
    const item = findKit(found);
    if (item !== undefined) kit.set(item, (kit.get(item) ?? 0) + 1);
    else if (!/^none$/i.test(found)) {
      sheet.blame('unknown-kit', row, 'kit', { found, expected: kitNear(found) });
    }
  }
  return kit;
}

function checkRow(sheet: FigureSheet, row: Row, kit: ReadonlyMap<KitItem, number>): void {
  tellUnusedLength(sheet, row);
  if (row.boxMm !== undefined) checkBox(sheet, row, kit);
  if (row.boxMm !== undefined || row.bad.includes('boxMm')) return;
  questionEyes(sheet, row);
  if (row.eyeMm !== undefined) checkBuild(sheet, row, ['body', builds]);
  else checkLength(sheet, row, kit);
  if (row.model !== undefined || row.bad.includes('model') || isByLength(row)) return;
  checkPerson(sheet, row);
}

/** Where the build could not be read, a length says that it would be one of these. */
const isByLength = ({ build, longMm, bad }: Row): boolean =>
  build === undefined ? longMm !== undefined && bad.includes('build') : isMeasuredByLength(build);

function tellUnusedLength(sheet: FigureSheet, row: Row): void {
  if (row.longMm === undefined || (isByLength(row) && row.boxMm === undefined)) return;
  sheet.blame('length-unused', row, 'longMm', { expected: joinOr(lengthBuilds) });
}

function checkPerson(sheet: FigureSheet, row: Row): void {
  const isBad = (key: string): boolean => row.bad.includes(key);
  const isAsked = ['eyeMm', 'boxMm', 'model'].some((key) => sheet.indexOf(key) !== -1);
  if (isAsked && row.eyeMm === undefined && !isBad('eyeMm')) sheet.blame('no-eye-height', row, 'eyeMm');
  if (row.figure === undefined || row.dress !== 'none' || isBad('base') || isBad('kit')) return;
  const wearsNothing = (row.kit ?? []).every((item) => /^none$/i.test(item));
  if (wearsNothing && hasNoParts(row)) sheet.blame('no-surface', row, 'dress', { found: row.figure });
}

/** A creature or a thing: one length, no dress; kit only what its build does not bring along. */
function checkLength(sheet: FigureSheet, row: Row, kit: ReadonlyMap<KitItem, number>): void {
  const { build = '' } = row;
  if (!isMeasuredByLength(build)) return;
  const what = `${/^[aeiou]/.test(build) ? 'an' : 'a'} ${build === 'winged' ? 'winged creature' : build}`;
  if (row.longMm === undefined && row.model === undefined && !row.bad.includes('longMm'))
    sheet.blame('no-length', row, 'longMm', { found: build, expected: lengthOf[build] });
  if (row.dress !== undefined && row.dress !== 'none')
    sheet.blame('box-with-body', row, 'dress', { expected: `${what} takes no dress` });
  const taken: readonly KitItem[] = isCreature(build) ? creatureKit : [];
  const left = [...kit.keys()].filter((item) => !taken.includes(item));
  if (left.length > 0)
    sheet.blame('box-with-body', row, 'kit', { expected: `${what} takes no ${joinOr(left)}` });
}

/** In mm: larger figures are busts or stand on a shelf, and few paint an army of them. */
const highestUsual = 80;

/** A lost decimal point makes ten times as much: 28.0 becomes 280. */
function questionEyes(sheet: FigureSheet, row: Row): void {
  if (row.eyeMm === undefined || row.eyeMm <= highestUsual || row.build === 'giant') return;
  sheet.blame('eyes-high', row, 'eyeMm', { expected: String(Number((row.eyeMm / 10).toFixed(3))) });
}

function checkBase(sheet: FigureSheet, row: Row): void {
  if ((row.base !== undefined && row.base !== 'none') || row.bad.includes('base')) return;
  for (const key of ['baseHighMm', 'perBase'] as const) {
    if (sheet.text(row, key) !== '') sheet.blame('without-base', row, key);
  }
}

function checkBox(sheet: FigureSheet, row: Row, kit: ReadonlyMap<KitItem, number>): void {
  checkBuild(sheet, row, ['box', boxBuilds]);
  if (row.dress !== undefined && row.dress !== 'none') {
    sheet.blame('box-with-body', row, 'dress', { expected: 'a box takes no dress' });
  }
  if (kit.size > 0) sheet.blame('box-with-body', row, 'kit', { expected: 'a box takes no kit' });
}

/** Bodies and boxes have builds of their own. */
function checkBuild(
  sheet: FigureSheet,
  row: Row,
  [what, known]: readonly [what: string, known: readonly string[]],
): void {
  if (row.build === undefined || known.includes(row.build)) return;
  sheet.blame('wrong-build', row, 'build', { expected: `a ${what} (${joinOr(known)})` });
}

/** Without body and kit; an area of the painter's own needs parts to lie on. */
const hasNoParts = ({ base, areaCm2 }: Row): boolean =>
  base === undefined || base === 'none' || areaCm2 !== undefined;

interface Worn {
  readonly kit: ReadonlyMap<KitItem, number>;
  readonly model: FigureModel | undefined;
}

/** Undefined where a cell could not be read that always gives a value. */
function figureOf(row: Row, figure: string, { kit, model }: Worn): Figure | undefined {
  const { eyeMm, base, baseHighMm, perBase, areaCm2, price } = row;
  if (baseHighMm === undefined || perBase === undefined) return undefined;
  return {
    figure,
    ...whatIsKnown({ eyeMm }),
    ...shapeOf(row),
    kit: [...kit].map(([item, count]) => ({ item, count })),
    ...whatIsKnown({ base: base === 'none' ? undefined : base }),
    baseHighMm,
    perBase,
    ...whatIsKnown({ model, areaCm2, priceMinor: price }),
  };
}

/** Build and dress of a box, of what one length measures, and of a body. */
function shapeOf({
  boxMm,
  longMm,
  build,
  dress,
  eyeMm,
}: Row): Pick<Figure, 'build' | 'dress' | 'boxMm' | 'longMm'> {
  if (boxMm !== undefined) return { boxMm, build: build ?? 'closed', dress: dress ?? 'none' };
  if (build === undefined || !isMeasuredByLength(build))
    return { build: build ?? usualBuild(eyeMm), dress: dress ?? 'clothed' };
  return { ...whatIsKnown({ longMm }), build, dress: dress ?? 'none' };
}

function recordDefaults(sheet: FigureSheet): void {
  const estimated = sheet.rows.filter(({ model }) => model === undefined);
  const bodies = estimated.filter(
    ({ boxMm, build = '' }) => boxMm === undefined && !isMeasuredByLength(build),
  );
  const based = sheet.rows.filter(({ base }) => base !== undefined && base !== 'none');
  const used = (of: readonly Row[], key: keyof FigureSheet['columns'] & string): void =>
    sheet.useBlank(key, of.filter((row) => sheet.text(row, key) === '').length);
  used(estimated, 'build');
  for (const key of ['dress', 'kit'] as const) used(bodies, key);
  for (const key of ['baseHighMm', 'perBase'] as const) used(based, key);
}
