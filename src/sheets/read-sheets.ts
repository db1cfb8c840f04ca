// Sheets, the whole stage: folders or workbooks in; checked rows, or every problem there is with them, out.
import { basename, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { problem } from '../problems/catalogue.js';
import { findShelf } from './armies/find-shelf.js';
import { type JoinedArmies, joinArmies, rankArmies } from './armies/join-armies.js';
import type { Source } from './armies/source.js';
import { type CheckedSheets, checkTables, type Known } from './check/check-tables.js';
import { listModelFiles } from './check/list-model-files.js';
import type { ModelFile } from './model-file.js';
import type { FoundProblem } from './read/grid.js';
import { readTables } from './read/read-tables.js';
import type { Replacement } from './read/replace-sheet.js';

export type { DefaultUsed, SheetRead } from '../model/sheets.js';
export type { CheckedSheets } from './check/check-tables.js';

/**
 * Reads a folder of CSV files or one workbook and checks all of it in one run. `sheets` is undefined where any
 * problem is an error; warnings leave it whole. Sheets that are optional and not there give empty lists.
 * `instead`: files read in the place of sheets of the path.
 */
export const readSheets = (
  path: string,
  known: Known,
  instead: readonly Replacement[] = [],
): Promise<CheckedSheets> => readArmies([path], known, { instead });

export interface CheckedArmies extends CheckedSheets {
  /** Where their shelf stands, if it does so by itself. */
  readonly shelf?: string;
}

/** Tables of armies and their shelf as if they were one. */
export interface JoinedTables extends Pick<JoinedArmies, 'read' | 'sources' | 'armyOf'> {
  /** Of the armies, in their order. */
  readonly names: readonly string[];
  /** Among whose sheets the log stands, as written there: the shelf, else the army that keeps it, else the first. */
  readonly home: Source | undefined;
  /** Where their shelf stands, if it does so by itself. */
  readonly shelf?: string;
}

interface Beside {
  readonly shelf?: string | undefined;
  readonly instead?: readonly Replacement[];
}

/** What stands there, not checked yet; the shelf is the one that is named or that their settings name. One of the armies may keep it. */
export async function readArmyTables(paths: readonly string[], beside: Beside = {}): Promise<JoinedTables> {
  const armies: Source[] = [];
  for (const [at, path] of paths.entries()) {
    const read = await readTables(path, beside.instead);
    armies.push({ name: nameOf(path, at, paths), path, isShelf: false, read });
  }
  const names = armies.map(({ name }) => name);
  const found = findShelf(armies, beside.shelf);
  const keeper = armies.find(({ path }) => resolve(path) === found.path);
  const apart = keeper === undefined ? found.path : undefined;
  const [only, ...others] = armies;
  if (only !== undefined && others.length === 0 && apart === undefined)
    return { names, home: only, read: only.read, sources: [only], armyOf: new Map() };
  const all = [...(await readShelf(apart)), ...armies];
  const { read, ...joined } = joinArmies(all);
  const problems = [...read.problems, ...found.problems];
  const shelf = apart === undefined ? {} : { shelf: apart };
  return { names, home: keeper ?? all[0], ...joined, read: { ...read, problems }, ...shelf };
}

/** The same of several armies, the first of them before the second. Each unit then bears its army's name, where there are several. */
export async function readArmies(
  paths: readonly string[],
  known: Known,
  beside: Beside = {},
): Promise<CheckedArmies> {
  const { names, read, sources, armyOf, shelf } = await readArmyTables(paths, beside);
  const problems = [...read.problems];
  const models = await readModels(sources, problems);
  const checked = checkTables({ ...read, problems }, { ...known, ...models });
  const { sheets } = checked;
  const shelfOf = shelf === undefined ? {} : { shelf };
  if (sheets === undefined || names.length < 2) return { ...checked, ...shelfOf };
  return { ...checked, ...shelfOf, sheets: rankArmies(sheets, armyOf, names) };
}

async function readShelf(path: string | undefined): Promise<Source[]> {
  if (path === undefined) return [];
  return [{ name: basename(path), path, isShelf: true, read: await readTables(path) }];
}

/** Its last folder or file; the whole path where that is another's too. */
function nameOf(path: string, at: number, paths: readonly string[]): string {
  const name = basename(resolve(path));
  const isShared = paths.some((other, place) => place !== at && basename(resolve(other)) === name);
  return isShared ? path : name;
}

/** Loaded where a figure names a model. Of two files with one name the first counts, and they have to be alike. */
async function readModels(sources: readonly Source[], problems: FoundProblem[]) {
  const models = new Map<string, ModelFile>();
  const firstOf = new Map<string, string>();
  for (const { name: source, path, read } of sources) {
    const names = listModelFiles(read);
    if (names.size === 0) continue;
    const { readModels: measure } = await import('./read/models/read-models.js');
    for (const [name, file] of await measure(path, names)) {
      const before = models.get(name);
      const expected = firstOf.get(name) ?? source;
      if (before !== undefined && !isDeepStrictEqual(before, file))
        problems.push(
          problem('names-of-armies-differ', { file: `${source}/${name}` }, { found: name, expected }),
        );
      if (before === undefined) models.set(name, file);
      firstOf.set(name, expected);
    }
  }
  return models.size === 0 ? {} : { models };
}
