// Command line: `halfpot log`. In: a path to sheets, what was used as flags. Out: rows at the end of the log, an exit code.
import type { TypedCells } from '../sheets/append/check-log-rows.js';
import { checkDate, today } from './choose-date.js';
import { completeName } from './complete-name.js';
import { exitCodes, UsageError } from './end-run.js';
import { listEvening } from './list-evening.js';
import { openLedger, writeKnown, writeRows } from './open-ledger.js';
import type { Sheets } from './read-or-show.js';
import { undoRows } from './undo-rows.js';

export interface LogFlags {
  readonly paint?: string;
  readonly unit?: string;
  readonly step?: string;
  readonly steps?: string;
  readonly figures?: string;
  readonly before?: string;
  readonly after?: string;
  readonly used?: string;
  readonly date?: string;
  /** Folder of the pots and log, where it is not that of the army. */
  readonly shelf?: string;
  readonly undo?: true;
}

type TextFlag = Exclude<keyof LogFlags, 'undo' | 'steps' | 'shelf'>;

/** By the columns of the log. */
const flagOf: ReadonlyMap<string, TextFlag> = new Map([
  ['date', 'date'],
  ['paint', 'paint'],
  ['unit', 'unit'],
  ['step', 'step'],
  ['figures', 'figures'],
  ['before g', 'before'],
  ['after g', 'after'],
  ['used ml', 'used'],
]);

/** Checks the rows against the sheets, then writes them; gives 1, with nothing written, where they cannot be. */
export async function runLog(path: string, flags: LogFlags): Promise<number> {
  const place = { path, shelf: flags.shelf };
  const writing = { flagOf, isToday: flags.date === undefined };
  if (flags.undo) return writeKnown(place, (_, ledger) => undoRows(ledger, 'used'), writing);
  if (flags.steps !== undefined)
    return writeKnown(place, (sheets) => listEvening(sheets, flags, dayOf(flags)), writing);
  const typed = typedCells(flags);
  const ledger = await openLedger(place);
  if (ledger === undefined) return exitCodes.problems;
  const { sheets } = ledger;
  const rows = [sheets === undefined ? typed : completeCells(typed, sheets)];
  return writeRows(ledger, { ...writing, rows });
}

const dayOf = ({ date }: LogFlags): string => (date === undefined ? today() : checkDate(date));

/** What the flags say, by column. Throws a UsageError where they leave out what a row is for. */
function typedCells(flags: LogFlags): TypedCells {
  const { paint, before, after, used, unit, step, figures } = flags;
  if (paint === undefined)
    throw new UsageError('Of which paint? Give --paint; or --unit and --steps for all paints of some steps.');
  if ((before === undefined) !== (after === undefined))
    throw new UsageError('One weight alone says nothing. Give both --before and --after, or --used.');
  const isProgress = unit !== undefined && step !== undefined && figures !== undefined;
  if (before === undefined && used === undefined && !isProgress)
    throw new UsageError('How much was used? Give --before and --after in grams, or --used in ml.');
  const given = { ...flags, date: dayOf(flags) };
  const cells = [...flagOf].map(([header, flag]): [string, string] => [header, given[flag]?.trim() ?? '']);
  const blank = cells.find(
    ([header, text]) => text === '' && given[flagOf.get(header) ?? 'date'] !== undefined,
  );
  if (blank !== undefined)
    throw new UsageError(`--${flagOf.get(blank[0])} is blank. Write its value, or leave it out.`);
  return new Map(cells.filter(([, text]) => text !== ''));
}

function completeCells(typed: TypedCells, { paints, army }: Sheets): TypedCells {
  const names: Readonly<Record<string, () => Iterable<string>>> = {
    paint: () => paints.keys(),
    unit: () => army.map(({ unit }) => unit),
  };
  return new Map(
    [...typed].map(([header, text]) => {
      const all = names[header];
      return [header, all === undefined ? text : completeName(text, all())];
    }),
  );
}
