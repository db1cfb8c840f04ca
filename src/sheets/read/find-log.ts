// Readers: where the log that can be written to stands. In: a path to sheets. Out: its folder, its file, what is beside it.
import { readdirSync, statSync } from 'node:fs';
import { dirname, extname } from 'node:path';
import { neededSheets } from '../../model/words.js';
import { pickSheetFiles } from './pick-sheet-files.js';

export interface FoundLog {
  readonly folder: string;
  /** Files that are a log by their name; none where it has to be made. */
  readonly files: readonly string[];
  /** The file of the program's own in which the log goes on; undefined: not there. */
  readonly next: string | undefined;
  /** For a workbook: files that are a columns sheet by their name. */
  readonly columns: readonly string[];
  /** For a workbook: CSV files of needed sheets in its folder, to which a log there belongs. */
  readonly otherSheets: readonly string[];
  /** For a workbook: itself and the others in its folder. */
  readonly workbooks: readonly string[];
}

/**
 * The log of a folder of CSV files is one of them; that of a workbook (or of a folder that holds one and no other sheets), which is never written to, is a log.csv beside it.
 * A log.txt beside a workbook may be anything. Throws what the file system says where the folder cannot be listed.
 */
export function findLog(path: string): FoundLog {
  const isFolder = statSync(path).isDirectory();
  const folder = isFolder ? path : dirname(path);
  const entries = readdirSync(folder, { withFileTypes: true });
  const picked = pickSheetFiles(entries.filter((entry) => !entry.isDirectory()).map(({ name }) => name));
  const logs = picked.sheets.get('log') ?? [];
  if (isFolder && picked.loneWorkbook === undefined)
    return { folder, files: logs, next: picked.nextLog, columns: [], otherSheets: [], workbooks: [] };
  const otherSheets = neededSheets.flatMap((sheet) => picked.sheets.get(sheet) ?? []);
  const isNoNote = (name: string): boolean => extname(name).toLowerCase() !== '.txt';
  const files = logs.filter(isNoNote);
  const columns = picked.sheets.get('columns')?.filter(isNoNote) ?? [];
  return { folder, files, next: picked.nextLog, columns, otherSheets, workbooks: picked.workbooks };
}
