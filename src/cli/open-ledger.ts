// Command line: the log of some sheets. In: a path to sheets. Out: the log and what it may say; rows written to its end.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { stderr, stdout } from 'node:process';
import { registry, takeShelfNow } from '../plan-army.js';
import { saysOf } from '../problems/catalogue.js';
import { checkLogRows, type TypedCells } from '../sheets/append/check-log-rows.js';
import { checkTables } from '../sheets/check/check-tables.js';
import { type FoundLog, findLog } from '../sheets/read/find-log.js';
import { readTables } from '../sheets/read/read-tables.js';
import { columnKey } from '../sheets/spell-headers.js';
import { appendLines } from './append-lines.js';
import { today } from './choose-date.js';
import { exitCodes, UsageError } from './end-run.js';
import { makeLogLines } from './make-log-lines.js';
import type { Sheets } from './read-or-show.js';
import { showPlain } from './show-plain.js';
import { type Problem, showProblems } from './show-problems.js';
import { tellShelf } from './tell-shelf.js';

type ReadTables = Awaited<ReturnType<typeof readTables>>;

export interface Ledger {
  readonly read: ReadTables;
  readonly found: FoundLog;
  /** The log that rows go to; it may have to be made. */
  readonly file: string;
  /** Undefined where any problem is an error. */
  readonly sheets: Sheets | undefined;
  readonly errors: readonly Problem[];
}

const known = () => ({ assumptions: registry, today: today() });

/** Undefined where there are no sheets, which is told. Throws a UsageError where the log is somebody else's. */
export async function openLedger(path: string): Promise<Ledger | undefined> {
  const read = await readTables(path);
  const found = read.tables.length === 0 ? undefined : await findLog(path);
  if (found === undefined) {
    refuse(read.problems.filter(({ severity }) => severity === 'error'));
    return undefined;
  }
  checkPlace(found, read.problems);
  const { sheets, problems } = checkTables(read, known());
  const errors = problems.filter(({ severity }) => severity === 'error');
  return { read, found, file: found.files[0] ?? 'log.csv', sheets, errors };
}

/** What a command writes that must know what the sheets say; without that nothing. */
export async function writeKnown(
  path: string,
  makeRows: (sheets: Sheets, ledger: Ledger) => readonly TypedCells[] | Promise<readonly TypedCells[]>,
  writing: Omit<Writing, 'rows'>,
): Promise<number> {
  const ledger = await openLedger(path);
  if (ledger === undefined) return exitCodes.problems;
  if (ledger.sheets === undefined) return refuse(ledger.errors);
  const rows = await makeRows(ledger.sheets, ledger);
  if (rows.length > 0) return writeRows(ledger, { ...writing, rows });
  stdout.write('Nothing was written.\n');
  return exitCodes.done;
}

/** Throws where a log.csv in that folder is, or would be taken for, somebody else's. */
function checkPlace({ folder, files, otherSheets }: FoundLog, problems: readonly Problem[]): void {
  if (otherSheets.length > 0)
    throw new UsageError(
      `A log.csv in ${folder} belongs to the CSV sheets there (${otherSheets.join(', ')}). Give the workbook a folder of its own.`,
    );
  if (problems.some(({ code }) => code === 'log-of-something-else'))
    throw new UsageError(
      `${join(folder, files[0] ?? '')} has no paint column and stays as it is. Rename or move it.`,
    );
}

interface Writing {
  /** By header. */
  readonly rows: readonly TypedCells[];
  /** By the columns that the painter typed. */
  readonly flagOf: ReadonlyMap<string, string>;
  /** Nobody typed the day: that it lies after the date of the settings is no slip. */
  readonly isToday: boolean;
}

/** Checks the rows against the sheets, writes them at once and says what then stands; 1, with nothing written, where one cannot be. */
export async function writeRows({ read, found, file }: Ledger, writing: Writing): Promise<number> {
  const written = new Date().toISOString();
  const typed = writing.rows.map((cells) => new Map([...cells, ['written', written]]));
  const checked = checkLogRows(read, { file, typed }, known());
  const isAhead = ({ code }: Problem): boolean => writing.isToday && code === 'date-ahead';
  const lacking = checked.elsewhere.filter(({ code }) => code === 'missing-column');
  if (lacking.length > 1) tellColumns(lacking);
  showFlagProblems(
    checked.ofRows.filter((one) => !isAhead(one)),
    writing.flagOf,
  );
  const { cells: rows, sheets } = checked;
  if (rows === undefined || sheets === undefined) return refuse(checked.elsewhere);
  const pots = read.tables.find(({ sheet }) => sheet === 'pots')?.file;
  const model = pots === undefined || found.workbooks.length > 0 ? undefined : join(found.folder, pots);
  const likeness = model === undefined ? undefined : await readFile(model).catch(() => undefined);
  await appendLines(join(found.folder, file), (held) => makeLogLines({ file, rows, held, likeness }));
  stdout.write(`${showPlain(`Written to ${join(found.folder, file)}:`)}\n`);
  for (const cells of rows) stdout.write(`  ${showPlain(toldOf(cells))}\n`);
  tellShelf(await takeShelfNow(sheets), new Set(rows.flatMap((cells) => cells.get('paint') ?? [])));
  for (const { found: day, expected } of checked.ofRows.filter(isAhead).slice(0, 1)) tellAhead(day, expected);
  return exitCodes.done;
}

const toldOf = (cells: TypedCells): string =>
  [...cells].flatMap(([header, cell]) => (header === 'written' ? [] : `${header} ${cell}`)).join(', ');

function tellAhead(day: string, ofSettings: string): void {
  stderr.write(
    `The settings sheet has the date ${ofSettings}, and this row the day of today, ${day}. It counts all the same; to plan as of today, take the date out of the settings sheet.\n`,
  );
}

/** A log that is older than these columns is the painter's file, so its header stays as it is. */
function tellColumns(lacking: readonly Problem[]): never {
  const headers = lacking.map(({ column }) => column).join(', ');
  throw new UsageError(
    `${lacking[0]?.file} has no columns for that. Write these behind the last of its header row, and try again: ${headers}`,
  );
}

/** Says why nothing was written. */
function refuse(errors: readonly Problem[]): number {
  showProblems(errors);
  stderr.write('Nothing was written.\n');
  return exitCodes.problems;
}

/** Of new rows: by their flags, since no sheet shows them yet; alike ones once. */
function showFlagProblems(problems: readonly Problem[], flagOf: Writing['flagOf']): void {
  const flagOfKey = new Map([...flagOf].map(([header, flag]) => [columnKey({ sheet: 'log' }, header), flag]));
  const lines = problems.map((one) => {
    const flag = flagOfKey.get(columnKey({ sheet: 'log' }, one.column ?? ''));
    const place = flag === undefined ? one.file : `--${flag}`;
    return `${one.severity}: ${showPlain(`${place}: ${saysOf(one)}. ${one.hint}`)}\n`;
  });
  for (const line of new Set(lines)) stderr.write(line);
}
