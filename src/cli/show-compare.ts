// Command line: two plans side by side. In: their view, the files written. Out: a table on the console, 80 columns wide.
import { stdout } from 'node:process';
import type { CompareRow, CompareView } from '../report/compare/view-compare.js';
import { compareWords } from '../report/compare/words.js';
import { showPlain } from './show-plain.js';

const [firstWide, otherWide] = [26, 18];
/** More paints and more rows of sheets are in the page. */
const mostRows = 12;

/** Sums, paints and what differs in the sheets, then where the files are. */
export function showCompare(view: CompareView, files: readonly string[]): void {
  const { names, notes, isSame, sums, paints, alike, sheets, sheetNotes } = view;
  const { columns, headings } = compareWords;
  const head = { what: '', a: columns.a, b: columns.b, difference: columns.difference };
  const lines = [
    `${columns.a}: ${showPlain(names.a)}`,
    `${columns.b}: ${showPlain(names.b)}`,
    ...(isSame ? ['', compareWords.same] : []),
    '',
    ...[head, ...sums].map(wordRow),
    ...notes,
    '',
    headings.paints,
    ...cut(paints, (row) => [wordRow(row)]),
    ...(alike === '' ? [] : [alike]),
    '',
    headings.sheets,
    ...cut(sheets, wordSheet),
    ...sheetNotes,
    '',
    'Written:',
    ...files.map((file) => `  ${showPlain(file)}`),
  ];
  stdout.write(`${lines.join('\n')}\n`);
}

function cut(rows: readonly CompareRow[], word: (row: CompareRow) => readonly string[]): readonly string[] {
  const shown = rows.slice(0, mostRows).flatMap(word);
  return rows.length > mostRows ? [...shown, compareWords.more(rows.length - mostRows)] : shown;
}

const wordRow = ({ what, a, b, difference }: CompareRow): string =>
  `${shorten(showPlain(what), firstWide).padEnd(firstWide)}${[a, b, difference]
    .map((text) => ` ${showPlain(text).padStart(otherWide - 1)}`)
    .join('')}`.trimEnd();

const wordSheet = ({ what, a, b }: CompareRow): string[] => [
  `  ${showPlain(what)}`,
  `    ${compareWords.columns.a}: ${showPlain(a)}`,
  `    ${compareWords.columns.b}: ${showPlain(b)}`,
];

const shorten = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most - 1)}…` : text;
