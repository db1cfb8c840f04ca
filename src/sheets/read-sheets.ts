// Sheets, the whole stage: folders or workbooks in; checked rows, or every problem there is with them, out.
import { basename, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { problem } from '../problems/catalogue.js';
import { findShelf } from './armies/find-shelf.js';
import { joinArmies, rankArmies } from './armies/join-armies.js';
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

/**
 * The same of several armies, the first of them before the second, and of the shelf that is named or that their settings name.
 * Each unit then bears its army's name, where there are several.
 */
export async function readArmies(
  paths: readonly string[],
  known: Known,
  {
    shelf,
    instead = [],
  }: { readonly shelf?: string | undefined; readonly instead?: readonly Replacement[] } = {},
): Promise<CheckedArmies> {
  const armies: Source[] = [];
  for (const [at, path] of paths.entries())
    armies.push({
      name: nameOf(path, at, paths),
      path,
      isShelf: false,
      read: await readTables(path, instead),
    });
  const found = findShelf(armies, shelf);
  const [only, ...others] = armies;
  if (only !== undefined && others.length === 0 && found.path === undefined)
    return checkTables(only.read, { ...known, ...(await readModels([only])) });
  const joined = joinArmies([...(await readShelf(found.path)), ...armies]);
  const problems = [...joined.read.problems, ...found.problems];
  const models = await readModels(joined.sources, problems);
  const checked = checkTables({ ...joined.read, problems }, { ...known, ...models });
  const { sheets } = checked;
  const names = armies.map(({ name }) => name);
  const shelfOf = found.path === undefined ? {} : { shelf: found.path };
  if (sheets === undefined || others.length === 0) return { ...checked, ...shelfOf };
  return { ...checked, ...shelfOf, sheets: rankArmies(sheets, joined.armyOf, names) };
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
async function readModels(sources: readonly Source[], problems: FoundProblem[] = []) {
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
