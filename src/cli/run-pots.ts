// Command line: `halfpot bought`, `halfpot arrived`, `halfpot count`. In: a path to sheets, flags. Out: rows at the end of the
// log, an exit code.
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { stdin, stdout } from 'node:process';
import { createInterface } from 'node:readline/promises';
import { reorderWords } from '../report/reorder/words.js';
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { readOrder } from '../sheets/append/read-order.js';
import { foldName } from '../sheets/check/fold-name.js';
import { askCounts } from './ask-counts.js';
import { checkDate, today } from './choose-date.js';
import { completeName } from './complete-name.js';
import { UsageError } from './end-run.js';
import { listArrived, listCount, tellBoughtBefore } from './list-pots.js';
import { nameFault } from './name-fault.js';
import { writeKnown } from './open-ledger.js';
import type { Sheets } from './read-or-show.js';
import { undoRows } from './undo-rows.js';

interface DayFlags {
  readonly date?: string;
  /** Folder of the pots and log, where it is not that of the army. */
  readonly shelf?: string;
  readonly undo?: true;
}

export interface BoughtFlags extends DayFlags {
  readonly shop?: string;
  readonly again?: true;
}

export interface ArrivedFlags extends DayFlags {
  readonly shop?: string;
}

export interface CountFlags extends DayFlags {
  readonly paint?: string;
  readonly left?: string;
  readonly size?: string;
  readonly pots?: string;
}

const writingOf = (flags: DayFlags) => ({
  flagOf: new Map(['date', 'shop', 'paint', 'left', 'pots'].map((one) => [one, one])).set('size ml', 'size'),
  isToday: flags.date === undefined,
});

const dayOf = ({ date }: DayFlags): string => (date === undefined ? today() : checkDate(date));

const withDay = (rows: readonly TypedCells[], flags: DayFlags): TypedCells[] =>
  rows.map((cells) => new Map([['date', dayOf(flags)], ...cells]));

/** Writes the order, of one shop or of all, as bought: its pots are on their way. */
export function runBought(path: string, file: string, flags: BoughtFlags): Promise<number> {
  const make = async (sheets: Sheets): Promise<TypedCells[]> => {
    const order = readOrder(
      await readFile(file).catch((error: unknown) => fail(error, file)),
      file,
      orderWords,
    );
    if (order === undefined)
      throw new UsageError(`${file} is not a reorder list. Name the reorder.csv of your plan.`);
    const shops = order.rows.map((cells) => cells.get('shop') ?? '');
    const shop = flags.shop === undefined ? undefined : completeName(flags.shop, shops);
    const rows = order.rows.filter((cells) => isFrom(cells.get('shop'), shop));
    if (rows.length === 0)
      throw new UsageError(`${file} has nothing to buy${shop === undefined ? '' : ` at ${shop}`}.`);
    if (flags.again !== true) tellBoughtBefore(sheets, rows, order.planOf);
    return withDay(rows, flags);
  };
  return writeKnown(
    { path, shelf: flags.shelf },
    (sheets, ledger) => (flags.undo ? undoRows(ledger, 'bought') : make(sheets)),
    writingOf(flags),
  );
}

function fail(error: unknown, file: string): never {
  throw nameFault(error, file);
}

const orderWords = { columns: reorderWords.columns, ...reorderWords.entries };

const isFrom = (shop: string | undefined, wanted: string | undefined): boolean =>
  wanted === undefined || foldName(shop ?? '') === foldName(wanted);

/** Writes that what is on its way, from one shop or from all, stands on the shelf. */
export function runArrived(path: string, flags: ArrivedFlags): Promise<number> {
  const make = (sheets: Sheets) => withDay(listArrived(sheets, flags.shop), flags);
  return writeKnown(
    { path, shelf: flags.shelf },
    (sheets, ledger) => (flags.undo ? undoRows(ledger, 'arrived') : make(sheets)),
    writingOf(flags),
  );
}

/** Writes what is left in the pot in use of a paint; in a terminal and without a paint it asks for one after the other. */
export function runCount(path: string, flags: CountFlags): Promise<number> {
  const isAsking = flags.paint === undefined && flags.left === undefined && stdin.isTTY;
  const make = async (sheets: Sheets) =>
    withDay(isAsking ? await askInTerminal(sheets) : [listCount(sheets, flags)], flags);
  return writeKnown(
    { path, shelf: flags.shelf },
    (sheets, ledger) => (flags.undo ? undoRows(ledger, 'counted') : make(sheets)),
    writingOf(flags),
  );
}

async function askInTerminal(sheets: Sheets): Promise<TypedCells[]> {
  const terminal = createInterface({ input: stdin, output: stdout });
  const closed = once(terminal, 'close').then(() => undefined);
  const rows = await askCounts(sheets, (question) => Promise.race([terminal.question(question), closed]));
  terminal.close();
  return rows;
}
