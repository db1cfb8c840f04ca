// The log.csv beside a workbook: read with it, or left alone and said.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { readTables } from '../../../src/sheets/read/read-tables.js';
import { readSheets } from '../../../src/sheets/read-sheets.js';
import { fourSheets, makeWorkbook, useFolder } from './make-files.js';

const newFolder = useFolder();
const known = { assumptions: registry, today: '2026-11-02' };

async function folderWith(files: Readonly<Record<string, string>>, more: typeof fourSheets = {}) {
  const dir = newFolder();
  writeFileSync(join(dir, 'army.xlsx'), await makeWorkbook({ ...fourSheets, ...more }));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(dir, name), text);
  return dir;
}

const ownLog = {
  log: [
    ['date', 'paint', 'used ml'],
    ['2026-03-01', 'brick red', 0.4],
  ],
};

describe('a log.csv beside a workbook', () => {
  it('is read with the log of the workbook, each row with its file', async () => {
    const dir = await folderWith({ 'log.csv': 'paint;date;used ml\nearth wash;2026-03-02;0,5\n' }, ownLog);
    const { sheets, problems } = await readSheets(join(dir, 'army.xlsx'), known);
    expect(problems).toEqual([]);
    expect(sheets?.log).toEqual([
      { row: 2, file: 'army.xlsx', date: '2026-03-01', paint: 'brick red', usedMl: 0.4 },
      { row: 2, file: 'log.csv', date: '2026-03-02', paint: 'earth wash', usedMl: 0.5 },
    ]);
  });

  it.each(['log.csv', 'Log.CSV', 'log.tsv'])('is read as %s without a log in the workbook', async (name) => {
    const dir = await folderWith({ [name]: 'date,paint,used ml\n2026-03-02,brick red,0.5\n' });
    const { sheets } = await readSheets(join(dir, 'army.xlsx'), known);
    expect(sheets?.log).toMatchObject([{ row: 2, file: name }]);
  });

  const german = 'Wann;Töpfchen;verbraucht\n2026-03-02;brick red;0,5\n';

  it.each([
    ['in words of another language', { 'log.csv': 'Datum;Farbe;verbraucht\n2026-03-02;brick red;0,5\n' }, {}],
    [
      'as columns.csv beside the workbook says',
      { 'log.csv': german, 'columns.csv': 'sheet,column,called\nlog,date,Wann\nlog,paint,Töpfchen\n' },
      {},
    ],
    [
      'as the columns sheet of the workbook says',
      { 'log.csv': german },
      {
        columns: [
          ['sheet', 'column', 'called'],
          ['log', 'date', 'Wann'],
          ['log', 'paint', 'Töpfchen'],
        ],
      },
    ],
  ])('is read with its headers %s', async (_, files, more) => {
    const dir = await folderWith(files as Readonly<Record<string, string>>, more as typeof fourSheets);
    const { sheets, problems } = await readSheets(join(dir, 'army.xlsx'), known);
    expect(problems).toEqual([]);
    expect(sheets?.log).toEqual([
      { row: 2, file: 'log.csv', date: '2026-03-02', paint: 'brick red', usedMl: 0.5 },
    ]);
  });

  it('of another program, which speaks of colours and of no day, is left alone', async () => {
    const dir = await folderWith({ 'log.csv': 'colour,level\nred,warning\n' });
    const { problems } = await readSheets(join(dir, 'army.xlsx'), known);
    expect(problems.map(({ code }) => code)).toEqual(['log-of-something-else']);
  });

  it('has its problems told by its own name, after those of the workbook', async () => {
    const dir = await folderWith(
      { 'log.csv': 'date,paint,used ml\n2026-03-02,brick rod,0.5\n' },
      {
        log: [
          ['date', 'paint', 'used ml'],
          ['2026-03-01', 'brick red', 0.4],
          ['2026-03-01', 'moss', 1],
        ],
      },
    );
    const { problems } = await readSheets(join(dir, 'army.xlsx'), known);
    expect(problems.map(({ file, row, code }) => [file, row, code])).toEqual([
      ['army.xlsx', 3, 'unknown-paint'],
      ['log.csv', 2, 'unknown-paint'],
    ]);
  });

  it('is not looked for beside a folder, in folders or as a text of any kind', async () => {
    const dir = await folderWith({ 'log.txt': 'date,paint\n2026-03-01,nothing known\n' });
    mkdirSync(join(dir, 'log.csv'));
    const { tables, problems } = await readTables(join(dir, 'army.xlsx'));
    expect([tables.length, problems]).toEqual([4, []]);
  });

  it('is left alone where it belongs to CSV sheets', async () => {
    const dir = await folderWith({ 'log.csv': 'date,paint\n', 'pots.csv': 'paint,size ml\n' });
    const { tables, problems } = await readTables(join(dir, 'army.xlsx'));
    expect(tables.map(({ sheet }) => sheet)).not.toContain('log');
    expect(problems).toMatchObject([{ code: 'log-of-csv-sheets', file: 'log.csv', found: 'pots.csv' }]);
  });

  it('is left alone where it speaks of no paint', async () => {
    const dir = await folderWith({ 'log.csv': 'date,level,message\n2026-03-01,info,hello\n' });
    const { tables, problems } = await readTables(join(dir, 'army.xlsx'));
    expect(tables.map(({ sheet }) => sheet)).not.toContain('log');
    expect(problems.map(({ code }) => code)).toEqual(['log-of-something-else']);
  });

  it('counts for each workbook there, which is said', async () => {
    const dir = await folderWith({ 'log.csv': 'date,paint,used ml\n2026-03-01,brick red,1\n' });
    writeFileSync(join(dir, 'army old.xlsx'), await makeWorkbook(fourSheets));
    const { sheets, problems } = await readSheets(join(dir, 'army.xlsx'), known);
    expect(sheets?.log).toHaveLength(1);
    expect(problems).toMatchObject([{ code: 'log-of-two-workbooks', found: 'army old.xlsx, army.xlsx' }]);
  });

  it('that is empty, twice there or no text is told', async () => {
    const codes = async (files: Readonly<Record<string, string>>) => {
      const { problems } = await readTables(join(await folderWith(files), 'army.xlsx'));
      return problems.map(({ code }) => code);
    };
    expect(await codes({ 'log.csv': '' })).toEqual(['empty-optional-sheet']);
    expect(await codes({ 'log.csv': 'date,paint\n', 'log.tsv': 'date\tpaint\n' })).toEqual([
      'two-of-one-sheet',
    ]);
    expect(await codes({ 'log.csv': '\0\x01\0\0\x02' })).toEqual(['csv-is-not-text']);
  });

  it('is not read where the workbook cannot be', async () => {
    const dir = await folderWith({ 'log.csv': 'date,paint\n2026-03-01,brick red\n' });
    writeFileSync(join(dir, 'army.xlsx'), 'no workbook');
    expect((await readTables(join(dir, 'army.xlsx'))).tables).toEqual([]);
  });
});
