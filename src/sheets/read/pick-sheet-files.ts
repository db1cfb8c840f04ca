// Readers: which files of a folder are sheets. In: file names. Out: the files of each sheet, and names to ask
// about.
import { extname } from 'node:path';
import { type SheetName, sheetNames } from '../../model/words.js';
import { matchSheetName, matchSheetPart, nearSheetName } from './match-sheet-name.js';

const TEXT_ENDINGS: readonly string[] = ['.csv', '.tsv', '.txt'];
export const WORKBOOK_ENDINGS: readonly string[] = ['.xlsx', '.xlsm', '.ods'];
const OTHER_ENDINGS: readonly string[] = [...WORKBOOK_ENDINGS, '.xls', '.xlsb', '.numbers'];
/** In it the program goes on with a log whose file lacks columns or is a workbook: neither is ever rewritten. */
export const nextLog = 'log 2.csv';
/** A text file called `shop.txt` may be any note. */
const SHEET_ENDINGS: readonly string[] = ['.csv', '.tsv'];
const QUESTIONED_ENDINGS: readonly string[] = [...SHEET_ENDINGS, ...WORKBOOK_ENDINGS];

interface SheetFile {
  readonly file: string;
  readonly sheet: SheetName;
  /** `.csv`, as written. */
  readonly ending: string;
}

export interface PickedFiles {
  /** In the order of the sheets; one file each, unless the painter has two of one sheet, or it stands in parts. */
  readonly sheets: ReadonlyMap<SheetName, readonly string[]>;
  /** Those whose files are all named as a part of it, with these files: text and workbooks. */
  readonly inParts: ReadonlyMap<SheetName, readonly string[]>;
  /** Named as a part of a sheet that is there under its own name. */
  readonly besides: readonly SheetFile[];
  /** Names close to that of a sheet. */
  readonly near: readonly SheetFile[];
  /** Named as a sheet that is not there as text, but of a type that is not read from a folder. */
  readonly ofOtherType: readonly SheetFile[];
  /** That of `nextLog`, as written; undefined: not there. */
  readonly nextLog: string | undefined;
  readonly workbooks: readonly string[];
  /** The only one, in a folder without any sheet as text but those that may stand beside a workbook. */
  readonly loneWorkbook: string | undefined;
}

/** Sorts file names out; the lock and shadow files that programs leave behind are not looked at. */
export function pickSheetFiles(names: readonly string[]): PickedFiles {
  const isNext = (name: string): boolean => name.toLowerCase() === nextLog;
  const visible = names.filter((name) => !/^[.~]/.test(name) && !isNext(name)).sort();
  const sheets = new Map<SheetName, readonly string[]>();
  for (const sheet of sheetNames) {
    const files = visible.filter(
      (name) => endsIn(name, TEXT_ENDINGS) && matchSheetName(baseOf(name)) === sheet,
    );
    if (files.length > 0) sheets.set(sheet, files);
  }
  const parts = visible.flatMap((file) => {
    const sheet = endsIn(file, QUESTIONED_ENDINGS) ? matchSheetPart(baseOf(file)) : undefined;
    return sheet === undefined ? [] : [{ file, sheet, ending: extname(file) }];
  });
  const isWhole = (sheet: SheetName): boolean =>
    sheets.has(sheet) ||
    visible.some((file) => endsIn(file, WORKBOOK_ENDINGS) && matchSheetName(baseOf(file)) === sheet);
  const inParts = new Map<SheetName, readonly string[]>();
  for (const { file, sheet } of parts)
    if (!isWhole(sheet)) inParts.set(sheet, [...(inParts.get(sheet) ?? []), file]);
  for (const [sheet, files] of inParts) {
    const texts = files.filter((file) => endsIn(file, SHEET_ENDINGS));
    if (texts.length > 0) sheets.set(sheet, texts);
  }
  const besides = parts.filter(({ sheet }) => !inParts.has(sheet));
  const near = visible.flatMap((file) => {
    const sheet = endsIn(file, QUESTIONED_ENDINGS) ? nearSheetName(baseOf(file)) : undefined;
    return sheet === undefined ? [] : [{ file, sheet, ending: extname(file) }];
  });
  const ofOtherType = visible.flatMap((file) => {
    const sheet = endsIn(file, OTHER_ENDINGS) ? matchSheetName(baseOf(file)) : undefined;
    return sheet === undefined || sheets.has(sheet) ? [] : [{ file, sheet, ending: extname(file) }];
  });
  const workbooks = visible.filter((name) => endsIn(name, WORKBOOK_ENDINGS));
  const isLone =
    workbooks.length === 1 &&
    [...sheets.keys()].every(isBesideBook) &&
    visible.every((name) => !endsIn(name, SHEET_ENDINGS) || isBesideBook(matchSheetName(baseOf(name))));
  return {
    sheets,
    inParts,
    besides,
    near,
    ofOtherType,
    nextLog: names.find(isNext),
    workbooks,
    loneWorkbook: isLone ? workbooks[0] : undefined,
  };
}

/** Sheets that are kept as text beside a workbook. */
export const isBesideBook = (sheet: SheetName | undefined): boolean => sheet === 'log' || sheet === 'columns';

/** A text that holds a sheet, if it is called so. */
export const isSheetText = (name: string): boolean => endsIn(name, SHEET_ENDINGS);

const endsIn = (name: string, endings: readonly string[]): boolean =>
  endings.includes(extname(name).toLowerCase());

const baseOf = (name: string): string => name.slice(0, name.length - extname(name).length);
