import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findLog } from '../../../src/sheets/read/find-log.js';
import { readTables } from '../../../src/sheets/read/read-tables.js';
import { fourShortSheets, writeSheets } from '../../problems/problem-case.js';
import { fourSheets, makeCompoundFile, makeWorkbook, useFolder } from './make-files.js';

const newFolder = useFolder();

/** A folder with the four short sheets and more; a file of `undefined` is left out. */
function folderOf(files: Readonly<Record<string, string | Uint8Array | undefined>>): string {
  const dir = newFolder();
  const all = { ...fourShortSheets, ...files };
  writeSheets(
    dir,
    Object.fromEntries(
      Object.entries(all).flatMap(([name, text]) => (text === undefined ? [] : [[name, text]])),
    ),
  );
  return dir;
}

const codesIn = async (path: string): Promise<string[]> =>
  (await readTables(path)).problems.map(({ code }) => code);

describe('a folder of CSV files', () => {
  it('is read without a problem', async () => {
    const { tables, problems } = await readTables(folderOf({}));
    expect(problems).toEqual([]);
    expect(tables.map(({ sheet, file }) => [sheet, file])).toEqual([
      ['pots', 'pots.csv'],
      ['figures', 'figures.csv'],
      ['schemes', 'schemes.csv'],
      ['army', 'army.csv'],
    ]);
    expect(tables[0]).toMatchObject({
      headerRow: 1,
      headers: ['paint', 'size ml'],
      rows: [{ row: 2, cells: ['brick red', '17'] }, { row: 3 }],
    });
  });

  it('may hold notes, pictures and folders of its own', async () => {
    const dir = folderOf({ 'notes.txt': 'buy more', 'shelf.png': 'x', 'README.md': '# pots' });
    mkdirSync(join(dir, 'pots'));
    mkdirSync(join(dir, 'zones'));
    expect(await codesIn(dir)).toEqual([]);
    mkdirSync(join(dir, 'zones.csv'));
    expect(await codesIn(dir)).toEqual(['folder-for-sheet']);
  });

  it('may mix endings and cases', async () => {
    const dir = folderOf({ 'pots.csv': undefined, 'POTS.TSV': 'paint\tsize ml\nbrick red\t17\n' });
    expect(await codesIn(dir)).toEqual([]);
  });

  it('misses what an army is not whole without, by file', async () => {
    const { problems } = await readTables(folderOf({ 'schemes.csv': undefined, 'army.csv': undefined }));
    expect(problems).toMatchObject([
      { code: 'missing-sheet', file: 'schemes.csv', sheet: 'schemes' },
      { code: 'missing-sheet', file: 'army.csv', sheet: 'army', expected: 'unit, figure, count' },
    ]);
  });

  it('may hold pots and no army, or an army and no pots; offers alone miss the pots', async () => {
    const none = { 'figures.csv': undefined, 'schemes.csv': undefined, 'army.csv': undefined };
    expect(await codesIn(folderOf(none))).toEqual([]);
    expect(await codesIn(folderOf({ 'pots.csv': undefined }))).toEqual([]);
    const offers = { 'offers.csv': 'shop,offer,price,paint,size ml\nQuay,brick,3.50,brick red,17\n' };
    expect(
      (await readTables(folderOf({ ...none, 'pots.csv': undefined, ...offers }))).problems,
    ).toMatchObject([{ code: 'missing-sheet', file: 'pots.csv', expected: 'paint, size ml' }]);
  });

  it('is missed too where nothing stands below its headers, unless the others do without', async () => {
    const headers = {
      'figures.csv': 'figure,eye mm\n',
      'schemes.csv': 'scheme,step\n',
      'army.csv': 'unit\n',
    };
    expect(await codesIn(folderOf(headers))).toEqual([]);
    expect(await codesIn(folderOf({ ...headers, 'pots.csv': 'paint,size ml\n' }))).toEqual(['header-only']);
    expect(await codesIn(folderOf({ 'figures.csv': headers['figures.csv'] }))).toEqual(['header-only']);
    expect(await codesIn(folderOf({ 'pots.csv': 'paint,size ml\n' }))).toEqual([]);
  });

  it('does not miss a sheet that is there but cannot be read', async () => {
    const dir = folderOf({ 'pots.csv': makeCompoundFile('Workbook'), 'army.csv': '' });
    expect(await codesIn(dir)).toEqual(['csv-is-workbook', 'empty-sheet']);
  });

  it('says what is wrong in all files at once', async () => {
    const dir = folderOf({
      'pots.csv': 'paint,size ml\n"Red,17\n',
      'figures.csv': 'figure,eye mm\nspearman,28,5\n',
      'shops.csv': ' ',
    });
    expect(await codesIn(dir)).toEqual(['unclosed-quote', 'empty-optional-sheet', 'extra-cell']);
  });

  it('reports a row with a broken quotation mark once, though it comes apart', async () => {
    expect(await codesIn(folderOf({ 'pots.csv': 'paint,size ml\n"Red, dark,17\nBlue,24\n' }))).toEqual([
      'unclosed-quote',
    ]);
  });

  it('reads the first of two files of one sheet', async () => {
    const { tables, problems } = await readTables(folderOf({ 'pots.txt': 'paint,size ml\nBlue,9\n' }));
    expect(problems).toMatchObject([
      { code: 'two-of-one-sheet', file: 'pots.csv', found: 'pots.csv, pots.txt' },
    ]);
    expect(tables.filter(({ sheet }) => sheet === 'pots')).toHaveLength(1);
  });

  it('holds links to files that are gone', async () => {
    const dir = folderOf({});
    symlinkSync(join(dir, 'gone.csv'), join(dir, 'shops.csv'));
    expect((await readTables(dir)).problems).toMatchObject([{ code: 'unreadable-file', file: 'shops.csv' }]);
  });

  it('holds files that are too large', async () => {
    const dir = folderOf({ 'log.csv': '' });
    truncateSync(join(dir, 'log.csv'), 64 * 2 ** 20 + 1);
    expect((await readTables(dir)).problems).toMatchObject([
      { code: 'too-large-file', file: 'log.csv', found: '65 MB', expected: '64 MB' },
    ]);
  });

  it('without any sheet is told in one problem', async () => {
    expect(await codesIn(newFolder())).toEqual(['empty-folder']);
    const dir = newFolder();
    writeFileSync(join(dir, 'notes.txt'), 'x');
    expect(await codesIn(dir)).toEqual(['no-sheets']);
    writeFileSync(join(dir, 'tolls.csv'), 'day,toll\n');
    writeFileSync(join(dir, 'low sluice.xlsx'), await makeWorkbook(fourSheets));
    expect((await readTables(dir)).problems).toMatchObject([
      { code: 'no-sheets', hint: expect.stringContaining('low sluice.xlsx') },
    ]);
  });
});

describe('a folder with one workbook and no sheet of CSV', () => {
  const log = 'date,paint,used ml\n2026-03-14,brick red,1\n';

  it('is read as that workbook, with its log', async () => {
    const dir = newFolder();
    writeFileSync(join(dir, 'low sluice.xlsx'), await makeWorkbook(fourSheets));
    writeSheets(dir, { 'notes.txt': 'x', '~$low sluice.xlsx': 'x' });
    expect(await readTables(dir)).toEqual(await readTables(join(dir, 'low sluice.xlsx')));
    expect((await readTables(dir)).tables).toHaveLength(4);
    writeSheets(dir, { 'log.csv': log });
    expect(await readTables(dir)).toEqual(await readTables(join(dir, 'low sluice.xlsx')));
    expect((await readTables(dir)).tables.map(({ file }) => file).at(-1)).toBe('log.csv');
  });

  it('has its log written beside it', async () => {
    const dir = newFolder();
    writeSheets(dir, { 'army.xlsx': await makeWorkbook(fourSheets), 'log.csv': log });
    expect(await findLog(dir)).toEqual(await findLog(join(dir, 'army.xlsx')));
  });

  it('is read as its CSV files where there are any, or another workbook', async () => {
    const dir = folderOf({ 'army.xlsx': 'no workbook' });
    expect((await readTables(dir)).tables.map(({ file }) => file)).toContain('pots.csv');
    const two = newFolder();
    writeSheets(two, {
      'low sluice.xlsx': await makeWorkbook(fourSheets),
      'other.xlsx': 'x',
      'log.csv': log,
    });
    expect(await readTables(two)).toMatchObject({ tables: [], problems: [{ code: 'no-sheets' }] });
  });
});

describe('a workbook', () => {
  it.each(['army.xlsx', 'Army.XLSX', 'army.xlsm'])('is read as %s', async (name) => {
    const path = join(newFolder(), name);
    writeFileSync(path, await makeWorkbook(fourSheets));
    const { tables, problems } = await readTables(path);
    expect(problems).toEqual([]);
    expect(tables.map(({ sheet, file }) => [sheet, file])).toEqual([
      ['pots', name],
      ['figures', name],
      ['schemes', name],
      ['army', name],
    ]);
    expect(tables[0]?.rows[0]).toEqual({ row: 2, cells: ['brick red', 17] });
  });

  it('gives the same cells as a folder, but for numbers', async () => {
    const path = join(newFolder(), 'army.xlsx');
    writeFileSync(path, await makeWorkbook(fourSheets));
    const [book, folder] = [await readTables(path), await readTables(folderOf({}))];
    const asText = (tables: typeof book.tables) =>
      tables.map(({ headers, rows }) => [headers, rows.map(({ row, cells }) => [row, ...cells.map(String)])]);
    expect(asText(book.tables)).toEqual(asText(folder.tables));
  });

  it('misses needed sheets by worksheet', async () => {
    const path = join(newFolder(), 'army.xlsx');
    const { figures: _, ...rest } = fourSheets;
    writeFileSync(path, await makeWorkbook(rest));
    expect((await readTables(path)).problems).toMatchObject([
      { code: 'missing-sheet', file: 'army.xlsx', sheet: 'figures' },
    ]);
  });

  it('with an empty worksheet and a bare header', async () => {
    const path = join(newFolder(), 'army.xlsx');
    writeFileSync(
      path,
      await makeWorkbook({ ...fourSheets, pots: [], army: [['unit', 'figure', 'count']], log: [] }),
    );
    expect(await codesIn(path)).toEqual(['empty-sheet', 'empty-optional-sheet', 'header-only']);
  });
});

describe('other paths', () => {
  it.each([
    ['pots.csv', 'lone-sheet'],
    ['army.numbers', 'unknown-file-type'],
    ['army', 'unknown-file-type'],
    ['army.xlsb', 'unknown-file-type'],
  ])('such as the file %s are told', async (name, code) => {
    const path = join(newFolder(), name);
    writeFileSync(path, 'paint,size ml\n');
    expect(await codesIn(path)).toEqual([code]);
  });

  it('that lead nowhere are told', async () => {
    const dir = folderOf({});
    expect(await codesIn(join(dir, 'nowhere'))).toEqual(['missing-path']);
    expect(await codesIn(join(dir, 'pots.csv', 'within'))).toEqual(['missing-path']);
    expect((await readTables(join(dir, 'nowhere'))).problems[0]?.file).toBe('nowhere');
  });

  it('of the system are told', async () => {
    expect(await codesIn('/dev/null')).toEqual(['unknown-file-type']);
    const dir = newFolder();
    symlinkSync(join(dir, 'loop'), join(dir, 'loop'));
    expect(await codesIn(join(dir, 'loop'))).toEqual(['unreadable-file']);
  });
});

describe('more than can be read', () => {
  it('is counted over all files of a folder', async () => {
    const cells = ','.repeat(1_200_000);
    const { problems } = await readTables(folderOf({ 'shops.csv': cells, 'log.csv': cells }));
    const told = problems.filter(({ code }) => code === 'too-large-file');
    expect(told).toMatchObject([{ file: 'log.csv', found: 'more cells', expected: '2 million' }]);
  });

  it('is one problem in letters, too', async () => {
    const { problems } = await readTables(folderOf({ 'log.csv': 'x'.repeat(17_000_000) }));
    expect(problems).toMatchObject([{ code: 'too-large-file', found: 'more letters' }]);
  });

  it('is never waited for: a pipe is no sheet', async ({ skip }) => {
    const dir = folderOf({});
    const made = spawnSync('mkfifo', [join(dir, 'log.csv')]);
    skip(made.status !== 0, 'needs mkfifo');
    expect((await readTables(dir)).problems).toMatchObject([
      { code: 'unreadable-file', file: 'log.csv', found: 'it is no ordinary file' },
    ]);
  });

  it('is not believed: a device says that it is empty', async ({ skip }) => {
    skip(!existsSync('/dev/zero'), 'needs /dev/zero');
    const dir = folderOf({});
    symlinkSync('/dev/zero', join(dir, 'log.csv'));
    expect((await readTables(dir)).problems).toMatchObject([{ code: 'unreadable-file', file: 'log.csv' }]);
  });
});
