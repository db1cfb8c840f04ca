// Command line: `halfpot log`. In: a path to sheets, the row as flags. Out: the row at the end of the log, an exit code.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { stderr, stdout } from 'node:process';
import { registry } from '../plan-army.js';
import { saysOf } from '../problems/catalogue.js';
import { checkLogRow } from '../sheets/append/check-log-row.js';
import { type FoundLog, findLog } from '../sheets/read/find-log.js';
import { readTables } from '../sheets/read/read-tables.js';
import { columnKey } from '../sheets/spell-headers.js';
import { appendLines } from './append-lines.js';
import { checkDate, today } from './choose-date.js';
import { exitCodes, UsageError } from './end-run.js';
import { makeLogLines } from './make-log-lines.js';
import { showPlain } from './show-plain.js';
import { type Problem, showProblems } from './show-problems.js';

export interface LogFlags {
  readonly paint: string;
  readonly unit?: string;
  readonly step?: string;
  readonly figures?: string;
  readonly before?: string;
  readonly after?: string;
  readonly used?: string;
  readonly date?: string;
}

/** By the columns of the log. */
const flagOf: ReadonlyMap<string, keyof LogFlags> = new Map([
  ['date', 'date'],
  ['paint', 'paint'],
  ['unit', 'unit'],
  ['step', 'step'],
  ['figures', 'figures'],
  ['before g', 'before'],
  ['after g', 'after'],
  ['used ml', 'used'],
]);

/** Checks the row against the sheets, then writes it; gives 1, with nothing written, where it cannot be. */
export async function runLog(path: string, flags: LogFlags): Promise<number> {
  const typed = typedCells(flags);
  const read = await readTables(path);
  const errors = read.problems.filter(({ severity }) => severity === 'error');
  const found = read.tables.length === 0 ? undefined : await findLog(path);
  if (found === undefined) return refuse(errors);
  checkPlace(found, read.problems);
  const file = found.files[0] ?? 'log.csv';
  const checked = checkLogRow(read, { file, typed }, { assumptions: registry, today: today() });
  // Nobody typed the day of today: that it lies after the date of the settings is no slip of this row.
  const isAhead = ({ code }: Problem): boolean => flags.date === undefined && code === 'date-ahead';
  showFlagProblems(checked.ofRow.filter((one) => !isAhead(one)));
  const { cells } = checked;
  if (cells === undefined) return refuse(checked.elsewhere);
  const pots = read.tables.find(({ sheet }) => sheet === 'pots')?.file;
  const model = pots === undefined || found.workbooks.length > 0 ? undefined : join(found.folder, pots);
  const likeness = model === undefined ? undefined : await readFile(model).catch(() => undefined);
  await appendLines(join(found.folder, file), (held) => makeLogLines({ file, cells, held, likeness }));
  const told = [...cells].map(([header, cell]) => `${header} ${cell}`).join(', ');
  stdout.write(`${showPlain(`Written to ${join(found.folder, file)}:`)}\n  ${showPlain(told)}\n`);
  for (const { found: day, expected } of checked.ofRow.filter(isAhead)) tellAhead(day, expected);
  return exitCodes.done;
}

/** What the flags say, by column. Throws a UsageError where they leave out what a row is for. */
function typedCells(flags: LogFlags): ReadonlyMap<string, string> {
  const { before, after, used, unit, step, figures } = flags;
  if ((before === undefined) !== (after === undefined))
    throw new UsageError('One weight alone says nothing. Give both --before and --after, or --used.');
  const isProgress = unit !== undefined && step !== undefined && figures !== undefined;
  if (before === undefined && used === undefined && !isProgress)
    throw new UsageError('How much was used? Give --before and --after in grams, or --used in ml.');
  const given = { ...flags, date: flags.date === undefined ? today() : checkDate(flags.date) };
  const cells = [...flagOf].map(([header, flag]): [string, string] => [header, given[flag]?.trim() ?? '']);
  const blank = cells.find(
    ([header, text]) => text === '' && given[flagOf.get(header) ?? 'date'] !== undefined,
  );
  if (blank !== undefined)
    throw new UsageError(`--${flagOf.get(blank[0])} is blank. Write its value, or leave it out.`);
  return new Map(cells.filter(([, text]) => text !== ''));
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

function tellAhead(day: string, ofSettings: string): void {
  stderr.write(
    `The settings sheet has the date ${ofSettings}, and this row the day of today, ${day}. It counts all the same; to plan as of today, take the date out of the settings sheet.\n`,
  );
}

function refuse(errors: readonly Problem[]): number {
  showProblems(errors);
  stderr.write('Nothing was written.\n');
  return exitCodes.problems;
}

/** Of the row: by its flags, since no sheet shows it yet. */
function showFlagProblems(problems: readonly Problem[]): void {
  const flagOfKey = new Map([...flagOf].map(([header, flag]) => [columnKey({ sheet: 'log' }, header), flag]));
  for (const one of problems) {
    const flag = flagOfKey.get(columnKey({ sheet: 'log' }, one.column ?? ''));
    const place = flag === undefined ? one.file : `--${flag}`;
    stderr.write(`${one.severity}: ${showPlain(`${place}: ${saysOf(one)}. ${one.hint}`)}\n`);
  }
}
