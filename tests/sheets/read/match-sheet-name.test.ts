import { describe, expect, it } from 'vitest';
import { sheetNames } from '../../../src/model/words.js';
import { headerKey, nameKey } from '../../../src/sheets/match-header.js';
import { matchSheetName, matchSheetPart, nearSheetName } from '../../../src/sheets/read/match-sheet-name.js';
import { pickSheetFiles } from '../../../src/sheets/read/pick-sheet-files.js';

describe('headerKey', () => {
  it.each([
    ['Size ML', 'sizeml'],
    [' size_ml ', 'sizeml'],
    ['size-ml', 'sizeml'],
    ['size\u00a0ml', 'sizeml'],
    ['area cm²', 'areacm2'],
    ['area %', 'area%'],
    ['Area (%)', 'area%'],
    ['size [ml]', 'sizeml'],
    ['__proto__', 'proto'],
    ['', ''],
  ])('makes %j to %j', (header, key) => {
    expect(headerKey(header)).toBe(key);
  });

  it('keeps the brackets of a name that is no header', () => {
    expect(nameKey('Pots (2)')).toBe('pots(2)');
  });
});

describe('sheet names', () => {
  it.each(['pots', 'Pots', ' POTS ', 'po ts'])('takes %j for the pots', (name) => {
    expect(matchSheetName(name)).toBe('pots');
    expect(nearSheetName(name)).toBeUndefined();
  });

  it.each([
    ['pot', 'pots'],
    ['Ptos', 'pots'],
    ['figure', 'figures'],
    ['figrues', 'figures'],
    ['sceme', 'schemes'],
    ['shop', 'shops'],
    ['logs', 'log'],
    ['setings', 'settings'],
    ['armmy', 'army'],
  ])('finds %j near %s', (name, sheet) => {
    expect(matchSheetName(name)).toBeUndefined();
    expect(nearSheetName(name)).toBe(sheet);
  });

  it.each(['notes', 'sheet1', 'lid', 'art', 'order', 'units', 'spots2', ''])('finds %j near none', (name) => {
    expect(nearSheetName(name)).toBeUndefined();
  });

  it('finds no sheet near another', () => {
    for (const name of sheetNames) expect(nearSheetName(name)).toBeUndefined();
  });
});

describe('a part of a sheet', () => {
  it.each([
    ['pots attic', 'pots'],
    ['Pots-2', 'pots'],
    ['pots (2)', 'pots'],
    ['Kiste 1', 'pots'],
    ['my paints desk', 'pots'],
    ['Farben_Keller', 'pots'],
    ['price list 2026', 'offers'],
    ['army of the lock', 'army'],
  ])('%s is one of %s', (name, sheet) => {
    expect(matchSheetPart(name)).toBe(sheet);
  });

  it.each([
    'pots',
    'Kiste',
    'pots old',
    'pots to buy',
    'pots wishlist',
    'Farben (Kopie)',
    'log 2025',
    'settings 2',
    'attic pots',
    'potshards 1',
  ])('%s is none', (name) => {
    expect(matchSheetPart(name)).toBeUndefined();
  });
});

describe('pickSheetFiles', () => {
  it('takes parts where the whole is not there', () => {
    const parts = [
      'pots attic.csv',
      'pots desk.tsv',
      'pots old.csv',
      'pots list.txt',
      'army.csv',
      'army 2.csv',
    ];
    const { sheets, inParts, besides } = pickSheetFiles(parts);
    expect([...sheets]).toEqual([
      ['army', ['army.csv']],
      ['pots', ['pots attic.csv', 'pots desk.tsv']],
    ]);
    expect([...inParts.keys()]).toEqual(['pots']);
    expect(besides).toEqual([{ file: 'army 2.csv', sheet: 'army', ending: '.csv' }]);
    expect([...pickSheetFiles(['pots.xlsx', 'pots 2.csv']).inParts]).toEqual([]);
    expect([...pickSheetFiles(['pots b.xlsx', 'pots a.csv', 'army 1.ods']).inParts]).toEqual([
      ['army', ['army 1.ods']],
      ['pots', ['pots a.csv', 'pots b.xlsx']],
    ]);
  });

  it('takes csv, tsv and txt in the order of the sheets', () => {
    const picked = pickSheetFiles([
      'Army.TSV',
      'pots.csv',
      'zones.txt',
      'notes.md',
      'reorder.csv',
      'pots.csv.bak',
    ]);
    expect([...picked.sheets]).toEqual([
      ['pots', ['pots.csv']],
      ['zones', ['zones.txt']],
      ['army', ['Army.TSV']],
    ]);
    expect(picked).toMatchObject({ near: [], ofOtherType: [] });
  });

  it('finds two files for one sheet', () => {
    expect(pickSheetFiles(['pots.txt', 'Pots.csv']).sheets.get('pots')).toEqual(['Pots.csv', 'pots.txt']);
  });

  it('asks about names close to a sheet, but not about text notes', () => {
    const picked = pickSheetFiles(['pot.csv', 'figure.xlsx', 'shop.txt', 'shop.png']);
    expect(picked.near).toEqual([
      { file: 'figure.xlsx', sheet: 'figures', ending: '.xlsx' },
      { file: 'pot.csv', sheet: 'pots', ending: '.csv' },
    ]);
  });

  it('asks about a sheet of another type unless it is there as text', () => {
    const picked = pickSheetFiles(['army.xlsx', 'army.csv', 'pots.ods', 'figures.numbers']);
    expect(picked.ofOtherType.map(({ file }) => file)).toEqual(['figures.numbers', 'pots.ods']);
    expect(picked.workbooks).toEqual(['army.xlsx', 'pots.ods']);
  });

  it('does not look at lock and shadow files', () => {
    expect(pickSheetFiles(['~$army.xlsx', '._pots.csv', '.~lock.pots.csv#', '.pots.csv'])).toEqual({
      sheets: new Map(),
      inParts: new Map(),
      besides: [],
      near: [],
      ofOtherType: [],
      workbooks: [],
    });
  });
});
