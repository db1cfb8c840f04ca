// Command line: the log of some sheets. In: a path to sheets. Out: the log and what it may say; rows written to its end.
import { readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { stderr, stdout } from 'node:process';
import { registry, takeShelfNow } from '../plan-army.js';
import { saysOf } from '../problems/catalogue.js';
import { checkLogRows, type TypedCells } from '../sheets/append/check-log-rows.js';
import { nameOfArmy } from '../sheets/armies/name-shelf-units.js';
import { fileIn } from '../sheets/armies/source.js';
import { checkTables } from '../sheets/check/check-tables.js';
import { type FoundLog, findLog } from '../sheets/read/find-log.js';
import { readArmyTables } from '../sheets/read-sheets.js';
import { columnKey } from '../sheets/spell-headers.js';
import { appendLines } from './append-lines.js';
import { today } from './choose-date.js';
import { exitCodes, UsageError } from './end-run.js';
import { makeLogLines } from './make-log-lines.js';
import { pickLogFile } from './pick-log-file.js';
import type { Sheets } from './read-or-show.js';
import { showPlain } from './show-plain.js';
import { type Problem, showProblems } from './show-problems.js';
import { tellShelf } from './tell-shelf.js';

type Joined = Awaited<ReturnType<typeof readArmyTables>>;

export interface Ledger {
  /** Of the army and its shelf. */
  readonly read: Joined['read'];
  /** The sheets beside the log, as they name themselves. */
  readonly home: Joined['read'];
  readonly found: FoundLog;
  /** A file beside the log as `read` names it. */
  readonly inTables: (file: string) => string;
  /** Where the log is that of a shelf, the army that its rows have to name. */
  readonly army: string | undefined;
  /** Undefined where any problem is an error. */
  readonly sheets: Sheets | undefined;
  readonly errors: readonly Problem[];
}

/** Where the sheets are; a shelf that is named has the log, as one that their settings name. */
export interface Place {
  readonly path: string;
  readonly shelf?: string | undefined;
}

const known = () => ({ assumptions: registry, today: today() });

/** Undefined where there are no sheets, which is told. Throws a UsageError where the log is somebody else's. */
export async function openLedger({ path, shelf: named }: Place): Promise<Ledger | undefined> {
  const { read, home, names, shelf } = await readArmyTables([path], { shelf: named });
  const isThere = home !== undefined && home.read.tables.length > 0;
  const found = isThere ? findLog(home.path) : undefined;
  if (home === undefined || found === undefined) {
    refuse(read.problems.filter(({ severity }) => severity === 'error'));
    return undefined;
  }
  checkPlace(found, read.problems);
  const { sheets, problems } = checkTables(read, known());
  const errors = problems.filter(({ severity }) => severity === 'error');
  const inTables = (file: string): string => (shelf === undefined ? file : fileIn(home.name, file));
  const army = shelf === undefined ? undefined : names[0];
  return { read, home: home.read, found, inTables, army, sheets, errors };
}

/** What a command writes that must know what the sheets say; without that nothing. */
export async function writeKnown(
  place: Place,
  makeRows: (sheets: Sheets, ledger: Ledger) => readonly TypedCells[] | Promise<readonly TypedCells[]>,
  writing: Omit<Writing, 'rows'>,
): Promise<number> {
  const ledger = await openLedger(place);
  if (ledger === undefined) return exitCodes.problems;
  if (ledger.sheets === undefined) return refuse(ledger.errors);
  const rows = await makeRows(ledger.sheets, ledger);
  if (rows.length > 0) return writeRows(ledger, { ...writing, rows });
  stdout.write('Nothing was written.\n');
  return exitCodes.done;
}

/** Throws where a log.csv in that folder is, or would be taken for, somebody else's. */
function checkPlace({ folder, otherSheets }: FoundLog, problems: readonly Problem[]): void {
  if (otherSheets.length > 0)
    throw new UsageError(
      `A log.csv in ${folder} belongs to the CSV sheets there (${otherSheets.join(', ')}). Give the workbook a folder of its own.`,
    );
  const other = problems.find(({ code }) => code === 'log-of-something-else');
  if (other !== undefined)
    throw new UsageError(
      `${join(folder, basename(other.file))} has no paint column and stays as it is. Rename or move it.`,
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
export async function writeRows(ledger: Ledger, writing: Writing): Promise<number> {
  const { read, found, inTables } = ledger;
  const written = new Date().toISOString();
  const typed = writing.rows.map((cells) => new Map([...cells, ['written', written]]));
  const file = pickLogFile(ledger, typed);
  const checked = checkLogRows(read, { file: inTables(file), typed }, known());
  const isAhead = ({ code }: Problem): boolean => writing.isToday && code === 'date-ahead';
  const lacking = checked.elsewhere.filter(({ code }) => code === 'missing-column');
  if (lacking.length > 1) tellColumns(lacking);
  showFlagProblems(
    checked.ofRows.filter((one) => !isAhead(one)),
    writing.flagOf,
  );
  const { sheets } = checked;
  const rows = checked.cells?.map((cells) => withArmy(cells, ledger));
  if (rows === undefined || sheets === undefined) return refuse(checked.elsewhere);
  const path = join(found.folder, file);
  const likeness = await readLikeness(ledger);
  await appendLines(path, (held) => makeLogLines({ file, rows, held, likeness }));
  stdout.write(`${showPlain(`Written to ${path}:`)}\n`);
  for (const cells of rows) stdout.write(`  ${showPlain(toldOf(cells))}\n`);
  tellShelf(await takeShelfNow(sheets), new Set(rows.flatMap((cells) => cells.get('paint') ?? [])));
  for (const { found: day, expected } of checked.ofRows.filter(isAhead).slice(0, 1)) tellAhead(day, expected);
  return exitCodes.done;
}

/** Other armies use the shelf too. */
function withArmy(cells: TypedCells, { army }: Ledger): TypedCells {
  const unit = cells.get('unit');
  return unit === undefined || army === undefined
    ? cells
    : new Map([...cells, ['unit', nameOfArmy(unit, army)]]);
}

/** A sheet beside the log, after which a new one takes. */
async function readLikeness({ home, found }: Ledger): Promise<Uint8Array | undefined> {
  const pots = home.tables.find(({ sheet }) => sheet === 'pots')?.file;
  const file = found.files[0] ?? (found.workbooks.length > 0 ? undefined : pots);
  return file === undefined ? undefined : readFile(join(found.folder, file)).catch(() => undefined);
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
