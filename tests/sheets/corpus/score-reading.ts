// Tests: the program's answer against a person's reading. In: both. Out: how many cells are read right, asked about, left
// alone or wrong.
import { isTold, type Spot } from './is-told.js';
import type { Answer, AnswerSheet } from './read-answer.js';
import type { Reading, SheetReading } from './reading.js';

export interface Score {
  /** Headers and cells that a person reads, or has to ask about; a file of which nothing can be read counts as one. */
  readonly cells: number;
  /** Read as by a person, or asked about where a person would ask. */
  readonly right: number;
  /** Told, where a person reads it. */
  readonly asked: number;
  /** Not read, which is said of the column. */
  readonly left: number;
  /** How many errors have to be mended before anything is planned. */
  readonly errors: number;
  /** Where anything else was read than a person reads, or nothing, without a word: `pots!C5`, `pots!row 14`. */
  readonly wrong: readonly string[];
}

type Outcome = 'right' | 'asked' | 'left' | 'wrong';

/** `top` is the name of the file or folder that was read. */
export function scoreReading(reading: Reading, answer: Answer, top: string): Score {
  const scored = reading.told === true ? [scoreTold(answer, top)] : scoreSheets(reading, answer, top);
  const outcomes = scored.map(([, outcome]) => outcome);
  const count = (of: Outcome): number => outcomes.filter((outcome) => outcome === of).length;
  const asked = count('asked');
  const isFine = reading.orTold === true;
  return {
    cells: scored.length,
    right: count('right') + (isFine ? asked : 0),
    asked: isFine ? 0 : asked,
    left: count('left'),
    errors: answer.problems.filter(({ severity }) => severity === 'error').length,
    wrong: [
      ...scored.filter(([, outcome]) => outcome === 'wrong').map(([place]) => place),
      ...readBesides(reading.sheets, answer),
    ],
  };
}

type Scored = readonly [place: string, outcome: Outcome];

/** One error has to say it, and of no table may anything be taken; `readBesides` finds what was. */
function scoreTold({ problems }: Answer, top: string): Scored {
  return [top, problems.some(({ severity }) => severity === 'error') ? 'right' : 'wrong'];
}

function scoreSheets({ sheets }: Reading, answer: Answer, top: string): Scored[] {
  return sheets.flatMap((sheet) => {
    const read = answer.sheets.find((one) => isSame(sheet, one));
    return spotsOf(sheet, top, read).map(
      (spot): Scored => [placeOf(sheet, spot), outcomeOf(spot, answer, read)],
    );
  });
}

const isSame = (sheet: SheetReading, read: AnswerSheet): boolean =>
  sheet.is === read.is &&
  (sheet.file === undefined || sheet.file === read.file) &&
  sheet.worksheet === read.worksheet;

const placeOf = ({ is, file, worksheet }: SheetReading, { letter, row }: Spot): string =>
  `${[file, worksheet, is].filter((name) => name !== undefined).join('/')}!${letter}${row}`;

/** The headers, then the cells that are not blank to a person. */
function spotsOf(sheet: SheetReading, top: string, read: AnswerSheet | undefined): Spot[] {
  const { is, headerRow, columns } = sheet;
  const isUnread = read === undefined;
  const at = { top, file: sheet.file ?? read?.file ?? top, is, headerRow, isUnread };
  const headers = Object.entries(columns);
  const called = headers.filter(([, name]) => name !== '?');
  const cells = Object.entries(sheet.rows).flatMap(([row, readings]) =>
    called.map(([letter, name], place) => {
      return { ...at, row: Number(row), letter, called: name, reading: readings[place] ?? '' };
    }),
  );
  return [
    ...headers.map(([letter, name]) => ({ ...at, row: headerRow, letter, called: name, reading: name })),
    ...cells.filter(({ reading }) => reading !== ''),
  ];
}

function outcomeOf(spot: Spot, answer: Answer, read: AnswerSheet | undefined): Outcome {
  const told = isTold(answer.problems, spot);
  if (told) return spot.reading === '?' ? 'right' : 'asked';
  if (read !== undefined && isRead(spot, read)) return 'right';
  // A column that has to be asked about is not settled by leaving it alone.
  const isOpen = spot.reading === '?' && spot.row === spot.headerRow;
  return !isOpen && isLeftAlone(spot, answer) ? 'left' : 'wrong';
}

/** Of two tables in one sheet, the columns of the second stand under the name of the first. */
function isLeftAlone({ file, letter, is }: Spot, { sheets, leftAlone }: Answer): boolean {
  const read =
    sheets.find((one) => one.file === file && one.is === is) ?? sheets.find((one) => one.file === file);
  const header = read?.headers[letter] ?? '';
  return leftAlone.some(({ sheet, headers }) => sheet === read?.is && headers.includes(header));
}

function isRead(spot: Spot, { columns, rows }: AnswerSheet): boolean {
  if (spot.row === spot.headerRow) return columns[spot.letter] === spot.called;
  return isAlike(spot.reading, rows[spot.row]?.[spot.called]);
}

/** What the program shows of a cell, against a reading; see `CellReading`. */
export function isAlike(reading: string, shown: string | undefined): boolean {
  return reading.split(' or ').some((one) => (one === '-' ? shown === undefined : isOne(one, shown ?? '')));
}

/** A wider error than a person would give is not wrong; a narrower one is. */
function isOne(reading: string, shown: string): boolean {
  const isRough = shown.startsWith('~');
  if (reading.startsWith('~')) return isRough && isOne(reading.slice(1), shown);
  const plain = isRough ? shown.slice(1) : shown;
  const [, low, high] = /^([\d.]+)\.\.([\d.]+)%$/.exec(reading) ?? [];
  if (low === undefined || high === undefined) return reading === plain;
  const share = /^([\d.]+)%$/.exec(plain)?.[1];
  return share !== undefined && Number(low) <= Number(share) && Number(share) <= Number(high);
}

/** Rows that a person leaves alone, and whole sheets that a person takes for none, but were read without a word. */
function readBesides(sheets: readonly SheetReading[], { sheets: all, problems }: Answer): string[] {
  return all.flatMap((read) => {
    const wanted = sheets.find((sheet) => isSame(sheet, read));
    const errors = problems.filter(({ severity, sheet }) => severity === 'error' && sheet === read.is);
    if (wanted === undefined && errors.length > 0) return [];
    const rows = Object.entries(read.rows).filter(([row, values]) => {
      const isTaken = Object.keys(values).length > 0 && wanted?.rows[row] === undefined;
      return isTaken && !errors.some((error) => error.row === Number(row) || error.row === undefined);
    });
    return rows.map(([row]) => `${read.is}!row ${row}`);
  });
}
