// Readers: which worksheets of a workbook are sheets, by their names. In: names. Out: those of each sheet, and what is to be
// said of the rest.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import type { FoundProblem } from './grid.js';
import { isSetAside, matchSheetName, matchSheetPart, nearSheetName } from './match-sheet-name.js';

export interface Listed {
  readonly name: string;
  readonly isHidden: boolean;
}

export interface PickedWorksheets<W extends Listed> {
  /** One of each sheet, unless it stands in parts. */
  readonly wanted: ReadonlyMap<SheetName, readonly W[]>;
  readonly problems: FoundProblem[];
}

const sheetOfOne = ([only]: readonly Listed[], called?: SheetName): SheetName | undefined =>
  called ?? (only !== undefined && mayListPots(only) ? 'pots' : undefined);

/** Not called as any sheet is, nor nearly so. */
export const mayListPots = ({ name }: Listed): boolean =>
  (matchSheetName(name) ?? matchSheetPart(name) ?? nearSheetName(name)) === undefined && !isSetAside(name);

/** Named as a part of a sheet. */
export const isPart = ({ name }: Listed): boolean => matchSheetPart(name) !== undefined;

/**
 * Of two worksheets that are one sheet by their names the first counts; parts count where no worksheet is the whole. One by
 * itself with no such name is the sheet that its workbook is `called`; else it may list pots, which its headers tell.
 */
export function pickWorksheets<W extends Listed>(
  worksheets: readonly W[],
  file: string,
  called?: SheetName,
): PickedWorksheets<W> {
  const wanted = new Map<SheetName, readonly W[]>();
  const problems: FoundProblem[] = [];
  for (const worksheet of worksheets) {
    const sheet = matchSheetName(worksheet.name);
    const other = sheet === undefined ? undefined : wanted.get(sheet)?.[0];
    if (sheet === undefined) problems.push(...asked(worksheet, file));
    else if (other === undefined) wanted.set(sheet, [worksheet]);
    else problems.push(twice(sheet, [other, worksheet], file));
  }
  problems.push(...addParts(worksheets, wanted, file));
  const sheet = worksheets.length === 1 && wanted.size === 0 ? sheetOfOne(worksheets, called) : undefined;
  if (sheet !== undefined) wanted.set(sheet, worksheets);
  for (const [sheet, picked] of wanted)
    if (picked.some(({ isHidden }) => isHidden)) problems.push(problem('hidden-sheet', { file, sheet }));
  return { wanted, problems };
}

function addParts<W extends Listed>(
  worksheets: readonly W[],
  wanted: Map<SheetName, readonly W[]>,
  file: string,
): FoundProblem[] {
  const whole = new Set(wanted.keys());
  return worksheets.flatMap((worksheet) => {
    const sheet = matchSheetPart(worksheet.name);
    if (sheet === undefined) return [];
    const place = { file: `${file}, sheet ${worksheet.name}` };
    if (whole.has(sheet)) return [problem('part-beside-sheet', place, { expected: sheet })];
    wanted.set(sheet, [...(wanted.get(sheet) ?? []), worksheet]);
    return [];
  });
}

function twice(expected: SheetName, of: readonly Listed[], file: string): FoundProblem {
  return problem('two-of-one-sheet', { file }, { found: of.map(({ name }) => name).join(', '), expected });
}

function asked({ name }: Listed, file: string): FoundProblem[] {
  const near = nearSheetName(name);
  return near === undefined
    ? []
    : [problem('near-worksheet-name', { file }, { found: name, expected: near })];
}
