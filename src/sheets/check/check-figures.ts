// Checks: the figures sheet. In: its rows. Out: figures by name; a figure without any surface is told.
import type { Figure } from '../../model/sheets.js';
import { boxBuilds, builds, type KitItem, kitItems } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { joinOr } from './find-nearest.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { kitNear } from './list-words.js';
import type { From } from './open-sheet.js';
import { usualBuild } from './pick-build.js';
import { wordFinder } from './read-cell/read-choice.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';
import { tellRepeat } from './tell-repeat.js';

type FigureSheet = SheetOf<'figures'>;
type Row = RowIn<'figures'>;

export interface CheckedFigures {
  readonly figures: ReadonlyMap<string, Figure>;
  /** Every name with a row, however bad the row; undefined where the sheet or its column is missing. */
  readonly book: NameBook | undefined;
}

/** One Figure for each name; a name that stands twice counts once. */
export function checkFigures(from: From): CheckedFigures {
  const sheet = readRows('figures', from);
  tellNoSize(sheet);
  const book = makeNameBook();
  const first = new Map<string, number>();
  const figures = new Map<string, Figure>();
  for (const row of sheet.rows) {
    const kit = readKit(sheet, row);
    const figure = row.figure === undefined ? undefined : book.add(row.figure);
    checkRow(sheet, row, kit);
    checkBase(sheet, row);
    if (figure === undefined || tellRepeat(sheet, row, { key: 'figure', name: figure, first })) continue;
    const made = figureOf(row, figure, kit);
    if (made !== undefined) figures.set(figure, made);
  }
  recordDefaults(sheet);
  return { figures, book: sheet.has('figure') ? book : undefined };
}

/** Every figure needs one of two columns: where both are missing, that is one problem and not one a row. */
function tellNoSize({ table, findings, indexOf }: FigureSheet): void {
  if (table === undefined || indexOf('eyeMm') !== -1 || indexOf('boxMm') !== -1) return;
  const place = { file: table.file, sheet: table.sheet, column: 'eye mm' };
  findings.problems.push(problem('missing-column', place));
}

const findKit = wordFinder(kitItems);

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
  const isBad = (key: string): boolean => row.bad.includes(key);
  if (row.boxMm !== undefined) checkBox(sheet, row, kit);
  if (row.boxMm !== undefined || isBad('boxMm')) return;
  const isAsked = sheet.has('eyeMm') || sheet.has('boxMm');
  if (isAsked && row.eyeMm === undefined && !isBad('eyeMm')) sheet.blame('no-eye-height', row, 'eyeMm');
  questionEyes(sheet, row);
  if (row.eyeMm !== undefined) checkBuild(sheet, row, ['body', builds]);
  if (row.figure === undefined || row.dress !== 'none' || isBad('base') || isBad('kit')) return;
  const wearsNothing = (row.kit ?? []).every((item) => /^none$/i.test(item));
  if (wearsNothing && hasNoParts(row)) sheet.blame('no-surface', row, 'dress', { found: row.figure });
}

/** In mm: larger figures are busts or stand on a shelf, and few paint an army of them. */
const highestUsual = 80;

/** A lost decimal point makes ten times as much: 28.0 becomes 280. */
function questionEyes(sheet: FigureSheet, row: Row): void {
  if (row.eyeMm === undefined || row.eyeMm <= highestUsual) return;
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
    sheet.blame('box-with-body', row, 'dress', { expected: 'dress' });
  }
  if (kit.size > 0) sheet.blame('box-with-body', row, 'kit', { expected: 'kit' });
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

/** Undefined where a cell could not be read that always gives a value. */
function figureOf(row: Row, figure: string, kit: ReadonlyMap<KitItem, number>): Figure | undefined {
  const { eyeMm, base, baseHighMm, perBase, boxMm, areaCm2, price } = row;
  if (baseHighMm === undefined || perBase === undefined) return undefined;
  const isBox = boxMm !== undefined;
  return {
    figure,
    ...(eyeMm === undefined ? {} : { eyeMm }),
    build: row.build ?? (isBox ? 'closed' : usualBuild(eyeMm)),
    dress: row.dress ?? (isBox ? 'none' : 'clothed'),
    kit: [...kit].map(([item, count]) => ({ item, count })),
    ...(base === undefined || base === 'none' ? {} : { base }),
    baseHighMm,
    perBase,
    ...(boxMm === undefined ? {} : { boxMm }),
    ...(areaCm2 === undefined ? {} : { areaCm2 }),
    ...(price === undefined ? {} : { priceMinor: price }),
  };
}

function recordDefaults(sheet: FigureSheet): void {
  const bodies = sheet.rows.filter(({ boxMm }) => boxMm === undefined);
  const based = sheet.rows.filter(({ base }) => base !== undefined && base !== 'none');
  const used = (of: readonly Row[], key: keyof FigureSheet['columns'] & string): void =>
    sheet.useBlank(key, of.filter((row) => sheet.text(row, key) === '').length);
  used(sheet.rows, 'build');
  for (const key of ['dress', 'kit'] as const) used(bodies, key);
  for (const key of ['baseHighMm', 'perBase'] as const) used(based, key);
}
