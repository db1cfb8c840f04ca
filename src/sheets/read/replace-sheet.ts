// Readers: another file in the place of a sheet. In: what was read, a sheet, a CSV file. Out: the same with that file's rows instead.
import { basename } from 'node:path';
import type { SheetName } from '../../model/words.js';
import type { ReadGrids } from './grid.js';
import { readCsvFile } from './read-csv.js';

export interface Replacement {
  readonly sheet: SheetName;
  /** A CSV file, whatever its name. */
  readonly path: string;
}

/** What was wrong with the sheet that goes is no longer said; a file that cannot be read is. */
export function replaceSheet<Read extends ReadGrids>(read: Read, { sheet, path }: Replacement): Read {
  const place = { file: basename(path), sheet };
  const instead = readCsvFile(path, place);
  const isOther = (one: { readonly sheet?: SheetName | undefined }): boolean => one.sheet !== sheet;
  return {
    ...read,
    grids: [...read.grids.filter(isOther), ...(instead.grid === undefined ? [] : [instead.grid])],
    seen: new Set([...read.seen, sheet]),
    problems: [...read.problems.filter(isOther), ...instead.problems],
  };
}
