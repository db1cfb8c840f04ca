// Starter: the page of explanations. In: the starter sheets. Out: its lines, for a text file or a worksheet.
import { armySheets } from '../../model/words.js';
import { bodyParts, parts, readyMadeZones } from '../../model/zones.js';
import { wordColumn, wordSheet } from '../columns/columns.js';
import type { StarterSheet } from './list-starter-sheets.js';

/** Lines that open the page. */
export const howToStart: readonly string[] = [
  'These sheets hold a small invented army. Replace its rows with your own.',
  'Its figures and schemes are kinds and ways of working to keep: copy the rows of one, give them a name of your own and your paints.',
  'Or write one row that is like it, as stone is like drybrushed: only what differs is said.',
  `An army takes ${armySheets.join(', ')}; pots alone are told by themselves. Any sheet may be deleted. Blank cells mean what is said below.`,
  'Columns may stand in any order, and columns of your own are left alone.',
];

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
