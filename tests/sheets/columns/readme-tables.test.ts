// What README says of sheets and columns is what the table of columns says; `npm run golden` writes it anew.
import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { type SheetName, sheetNames } from '../../../src/model/words.js';
import type { Column } from '../../../src/sheets/columns/column.js';
import { columns, isNeeded, purposes, wordColumn } from '../../../src/sheets/columns/columns.js';

const readme = new URL('../../../README.md', import.meta.url);
const [begin, end] = ['<!-- columns -->', '<!-- /columns -->'];

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heads, heads.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');

const bold = (name: string, isBold: boolean): string => (isBold ? `**${name}**` : name);

const sheetRow = (sheet: SheetName): string[] => [
  bold(sheet, isNeeded(sheet)),
  `${purposes[sheet]}${isNeeded(sheet) ? ' (needed for an army)' : ''}`,
];

/** The columns of paints stand in both sheets alike, and are listed once. */
const ownColumns = (sheet: SheetName): readonly Column[] => {
  const shared = new Set(columns.paints.slice(1));
  return sheet === 'pots' ? columns.pots.filter((one) => !shared.has(one)) : columns[sheet];
};

const columnRows = (sheet: SheetName): string[][] => [
  ...ownColumns(sheet).map((one, at) => [
    at === 0 ? sheet : '',
    bold(one.header, one.needed),
    wordColumn(one),
  ]),
  ...(sheet === 'pots' ? [['', '', 'Any column of the paints sheet may stand here too.']] : []),
];

it('README lists every sheet and column as the table has them', async () => {
  const text = await readFile(readme, 'utf8');
  const [before, after] = [text.split(begin)[0], text.split(end)[1]];
  const tables = [
    table(['sheet', 'what it lists'], sheetNames.map(sheetRow)),
    'What goes into each column:',
    table(['sheet', 'column', 'what goes in'], sheetNames.flatMap(columnRows)),
  ];
  expect(text.split(begin)).toHaveLength(2);
  const wanted = `${before}${begin}\n\n${tables.join('\n\n')}\n\n${end}${after}`;
  await expect(wanted).toMatchFileSnapshot(readme.pathname);
});
