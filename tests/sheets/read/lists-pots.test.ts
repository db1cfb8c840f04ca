// A list that is not called as a sheet is: read as pots where its headers leave no doubt.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { wordProblem } from '../../../src/problems/word-problem.js';
import { readTables } from '../../../src/sheets/read/read-tables.js';
import { writeSheets } from '../../problems/problem-case.js';
import { fourSheets, makeOds, makeWorkbook, odsText, useFolder } from './make-files.js';

const newFolder = useFolder();

const list = [
  ['Name', 'Volume', 'Cost'],
  ['brick red', '17ml', 3],
] as const;

async function tablesIn(name: string, bytes: Uint8Array | string) {
  const dir = newFolder();
  writeSheets(dir, { [name]: bytes });
  const { tables } = await readTables(join(dir, name));
  return tables.map(({ sheet }) => sheet);
}

describe('the only worksheet of a workbook', () => {
  it('is pots, whatever it is called, where its headers are those of paints and sizes', async () => {
    expect(await tablesIn('Collection.xlsx', await makeWorkbook({ Sheet1: list }))).toEqual(['pots']);
    const rows = [
      [odsText('Farbe'), odsText('Inhalt')],
      [odsText('Ziegelrot'), odsText('17 ml')],
    ].map((cells) => `<table:table-row>${cells.join('')}</table:table-row>`);
    const ods = makeOds(`<table:table table:name="Tabelle1">${rows.join('')}</table:table>`);
    expect(await tablesIn('Sammlung.ods', ods)).toEqual(['pots']);
  });

  it('is not where it has no sizes, names shops, or is meant to be set aside', async () => {
    const named = async (name: string, ...headers: string[]) =>
      tablesIn('Collection.xlsx', await makeWorkbook({ [name]: [headers, ['a', 17, 'b']] }));
    expect(await named('Sheet1', 'Name', 'Volume', 'Bought')).toEqual(['pots']);
    expect(await named('Sheet1', 'Name', 'Bought')).toEqual([]);
    expect(await named('Sheet1', 'Name', 'Volume', 'Shop')).toEqual([]);
    expect(await named('Wishlist', 'Name', 'Volume')).toEqual([]);
    expect(await named('potts', 'Name', 'Volume')).toEqual([]);
  });

  it('is the sheet that its workbook is called, also where that is named itself', async () => {
    const figures = await makeWorkbook({ Sheet1: fourSheets.figures ?? [] });
    expect(await tablesIn('figures.xlsx', figures)).toEqual(['figures']);
  });

  it('is not looked for among several', async () => {
    expect(await tablesIn('a.xlsx', await makeWorkbook({ Sheet1: list, Sheet2: list }))).toEqual([]);
  });
});

describe('a sheet called paints', () => {
  const sheetsOf = async (files: Readonly<Record<string, string>>) => {
    const dir = newFolder();
    writeSheets(dir, files);
    const { tables, problems } = await readTables(dir);
    return { sheets: tables.map(({ sheet, file }) => `${sheet} ${file}`), problems };
  };

  it('is pots where it has their sizes and nothing else is', async () => {
    const { sheets, problems } = await sheetsOf({ 'paints.csv': 'paint,ml,left\nbrick red,17,half\n' });
    expect({ sheets, problems }).toEqual({ sheets: ['pots paints.csv'], problems: [] });
  });

  it('is paints beside pots, and without sizes', async () => {
    const paints = 'paint,size ml,hex\nbrick red,17,#8a2b2b\n';
    const both = await sheetsOf({ 'paints.csv': paints, 'pots.csv': 'paint,size ml\nbrick red,17\n' });
    expect(both.sheets).toEqual(['pots pots.csv', 'paints paints.csv']);
    expect((await sheetsOf({ 'paints.csv': 'paint,hex\nbrick red,#8a2b2b\n' })).sheets).toEqual([
      'paints paints.csv',
    ]);
  });

  it('names the workbook in which pots are missing, not its folder', async () => {
    const dir = join(newFolder(), 'my sheets');
    mkdirSync(dir);
    const paints = [
      ['paint', 'hex'],
      ['brick red', '#8a2b2b'],
    ];
    writeSheets(dir, { 'army.xlsx': await makeWorkbook({ paints }) });
    expect((await readTables(dir)).problems.map(wordProblem)).toEqual([
      'army.xlsx, sheet pots: this sheet is needed and is not there. Add it, with at least these columns: paint, size ml.',
    ]);
  });
});
