// Starter: the page of explanations. In: the starter sheets. Out: its lines, for a text file or a worksheet.
import { neededSheets, type SheetName } from '../../model/words.js';
import { bodyParts, parts, readyMadeZones } from '../../model/zones.js';
import type { Column } from '../columns.js';
import type { StarterSheet } from './list-starter-sheets.js';

/** What a sheet is for, in one line. */
const purposes: Readonly<Record<SheetName, string>> = {
  pots: 'What stands on your shelf, one row a pot.',
  paints: 'What the paints are like: colour, kind, names.',
  offers: 'What shops sell, one row for each kind of pot in an offer.',
  shops: 'What each shop asks for postage.',
  figures: 'The sculpts of your army, one row each.',
  zones: 'Names of your own for groups of parts.',
  schemes: 'The steps in which a figure is painted, one row each.',
  swaps: 'What you use instead of a paint of the schemes.',
  army: 'Your units, one row each.',
  extras: 'What else is used up: brushes, flock, thinner.',
  log: 'What you used, as you paint. It lowers the pots, counts as progress, and weighings correct the estimate.',
  settings: 'Currency and the like.',
};

/** Lines that open the page. */
export const howToStart: readonly string[] = [
  'These sheets hold a small invented army. Replace its rows with your own.',
  `Needed are ${neededSheets.join(', ')}; any other sheet may be deleted. Blank cells mean what is said below.`,
  'Columns may stand in any order, and columns of your own are left alone.',
];

/** One line a sheet: its name, whether it is needed, what it is for. */
export function wordSheet(sheet: SheetName): string {
  const isNeeded = neededSheets.some((one) => one === sheet);
  return `${purposes[sheet]}${isNeeded ? ' Needed.' : ''}`;
}

/** What a column takes: its line, and the words it knows. */
export function wordColumn({ says, choices }: Column): string {
  return choices === undefined ? says : `${says} One of: ${choices.join(', ')}.`;
}

/** Lines that close the page: what the zone column knows without a row in the zones sheet. */
export function wordZones(): string[] {
  const zones = [...readyMadeZones.keys()].filter((zone) => !parts.some((part) => part === zone));
  const others = parts.filter((part) => !bodyParts.some((body) => body === part));
  return [
    `Parts of a body: ${bodyParts.join(', ')}.`,
    `Other parts, where a figure has them: ${others.join(', ')}.`,
    `Ready-made zones: ${zones.join(', ')}.`,
  ];
}

/** The whole page as plain text with CRLF line ends. */
export function writeHowTo(sheets: readonly StarterSheet[]): string {
  const lines = sheets.flatMap(({ sheet, columns }) => [
    '',
    `${sheet}: ${wordSheet(sheet)}`,
    ...columns.map(
      (column) => `  ${column.header}${column.needed ? ' (needed)' : ''}: ${wordColumn(column)}`,
    ),
  ]);
  return [...howToStart, ...lines, '', ...wordZones(), ''].join('\r\n');
}
