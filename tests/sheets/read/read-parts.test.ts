// A sheet in parts, through readers and checks: one sheet, and what is wrong names the file or worksheet and the row.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { wordProblem } from '../../../src/problems/word-problem.js';
import { readSheets } from '../../../src/sheets/read-sheets.js';
import { fourShortSheets, writeSheets } from '../../problems/problem-case.js';
import { fourSheets, makeOds, makeWorkbook, odsText, useFolder } from './make-files.js';

const newFolder = useFolder();
const known = { assumptions: registry, today: '2026-11-02' };

async function read(files: Readonly<Record<string, string | Uint8Array>>) {
  const { 'pots.csv': _, ...others } = fourShortSheets;
  const dir = newFolder();
  writeSheets(dir, { ...others, ...files });
  const { sheets, problems } = await readSheets(dir, known);
  return { sheets, says: problems.filter(({ code }) => code !== 'sheet-of-parts').map(wordProblem) };
}

const attic = 'Pots in the attic\n\npaint,size ml,left\nbrick red,17,60%\nslate,17,\n';
const desk = 'Füllstand;Farbe;Größe\n40%;earth wash;24\nleer;brick red;17\n';

describe('two files of one sheet, each with its own header row', () => {
  it('are read as one', async () => {
    const { sheets, says } = await read({ 'pots attic.csv': attic, 'Kiste 2.csv': desk });
    expect(says).toEqual([
      'pots attic.csv: what stands above the header row was not read: row 1 ("Pots in the attic"). A title may stay there; what is meant as a row belongs below the header row.',
    ]);
    expect(sheets?.pots.map(({ row, paint, left }) => [row, paint, left])).toEqual([
      [2, 'earth wash', { how: 'by eye', share: 0.4 }],
      [3, 'brick red', { how: 'by eye', share: 0 }],
      [4, 'brick red', { how: 'by eye', share: 0.6 }],
      [5, 'slate', { how: 'by eye', share: 1 }],
    ]);
    expect(
      sheets?.defaults.filter(({ sheet, column }) => sheet === 'pots' && column === 'left'),
    ).toMatchObject([{ rows: 1 }]);
  });

  it('are told wrong by file, row and column', async () => {
    const { sheets, says } = await read({
      'pots attic.csv': 'paint,size ml,kind\nbrick red,17,wash\nearth wash,24,\n',
      'pots desk.csv': 'size ml,paint,kind\na dab,slate,\n17,brick red,metallic\n',
    });
    expect(sheets).toBeUndefined();
    expect(says).toEqual([
      'pots desk.csv row 2, "size ml" (A2): "a dab" is not a volume. Write a number of millilitres, such as 12.5.',
      'pots desk.csv row 3, "kind" (C3): "metallic" does not agree with "wash" in row 2 of pots attic.csv. A paint can have one value only: write the same in both places, or leave one blank.',
    ]);
  });

  it('may be units of an army, of which none may stand in both', async () => {
    const { says } = await read({
      'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24\n',
    });
    expect(says).toEqual([]);
    const dir = newFolder();
    const { 'army.csv': _, ...others } = fourShortSheets;
    writeSheets(dir, {
      ...others,
      'army left.csv': 'unit,figure,count\nfirst spears,spearman,20\n',
      'army right.csv': 'unit,figure,count\nsecond spears,spearman,10\nFirst spears,spearman,20\n',
    });
    const { problems } = await readSheets(dir, known);
    expect(problems.filter(({ code }) => code === 'repeated-name').map(wordProblem)).toEqual([
      'army right.csv row 3, "unit" (A3): "First spears" already stands in row 2 of army left.csv. Give each a name of its own, or take one of the rows out.',
    ]);
  });
});

describe('worksheets', () => {
  it('that are parts are one sheet, and told by their names', async () => {
    const { pots: _, ...others } = fourSheets;
    const path = join(newFolder(), 'army.xlsx');
    const parts = {
      'Pots attic': [
        ['paint', 'size ml'],
        ['brick red', 17],
      ],
      'Pots desk': [
        ['size ml', 'paint'],
        [24, 'earth wash'],
        [0, 'slate'],
      ],
    };
    writeFileSync(path, await makeWorkbook({ ...others, ...parts }));
    const { problems } = await readSheets(path, known);
    expect(problems.map(wordProblem)).toEqual([
      'army.xlsx, sheet Pots attic: the pots sheet was read from "Pots attic", "Pots desk". Rename what is not meant to count, so that its name begins otherwise.',
      'army.xlsx, sheet Pots desk, row 3, "size ml" (A3): "0" is zero, and a volume never is. Write the true value, or take the row out.',
    ]);
  });
});

/** `rows` in the only worksheet, under the name that every new workbook has there. */
const bookOf = (rows: Parameters<typeof makeWorkbook>[0][string], name = 'Sheet1') =>
  makeWorkbook({ [name]: rows });

describe('workbooks that are parts of one sheet', () => {
  const attic = [['paint', 'size ml'], ['brick red', 17], [], ['slate', 0]] as const;
  const desk = [
    ['Farbe', 'Inhalt in ml'],
    ['earth wash', 24],
  ] as const;

  it('are read as one, and told wrong by the name of each', async () => {
    const { says } = await read({
      'pots attic.xlsx': await bookOf(attic),
      'Kiste 2.xlsx': await bookOf(desk, 'Tabelle1'),
    });
    expect(says).toEqual([
      'pots attic.xlsx, sheet pots, row 4, "size ml" (B4): "0" is zero, and a volume never is. Write the true value, or take the row out.',
    ]);
  });

  it('may stand beside text, and an OpenDocument file may be one', async () => {
    const table = `<table:table table:name="Sheet1"><table:table-row>${['paint', 'size ml'].map(odsText).join('')}</table:table-row><table:table-row>${['earth wash', '24'].map(odsText).join('')}</table:table-row></table:table>`;
    const { sheets, says } = await read({
      'pots attic.csv': 'paint,size ml\nbrick red,17\n',
      'pots desk.ods': makeOds(table),
      'pots van.xlsx': await bookOf([
        ['size ml', 'paint'],
        [17, 'slate'],
      ]),
    });
    expect(says).toEqual([]);
    expect(sheets?.pots.map(({ paint }) => paint)).toEqual(['brick red', 'earth wash', 'slate']);
    expect(sheets?.read?.filter(({ sheet }) => sheet === 'pots').map(({ file }) => file)).toEqual([
      'pots attic.csv',
      'pots desk.ods',
      'pots van.xlsx',
    ]);
  });

  it('are left alone beside the whole sheet, which is said', async () => {
    const { sheets, says } = await read({
      'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24\n',
      'pots attic.xlsx': await bookOf(attic),
    });
    expect(sheets?.pots).toHaveLength(2);
    expect(says).toEqual([
      'pots attic.xlsx: this was left alone, as the pots sheet is there under its own name. If both are to count, name them by what they hold, such as pots 1 and pots 2.',
    ]);
  });

  it('need no text beside them, where each holds but the sheet that it is called', async () => {
    const { pots = [], figures = [], schemes = [], army = [] } = fourSheets;
    const dir = newFolder();
    writeSheets(dir, {
      'pots attic.xlsx': await bookOf(pots.slice(0, 2)),
      'pots desk.xlsx': await bookOf([...pots.slice(0, 1), ...pots.slice(2)]),
      'figures.xlsx': await bookOf(figures),
      'schemes.xlsx': await bookOf(schemes),
      'army.xlsx': await bookOf(army),
    });
    const { sheets } = await readSheets(dir, known);
    expect(sheets?.pots.map(({ paint }) => paint)).toEqual(['brick red', 'earth wash']);
    expect(sheets?.army).toHaveLength(1);
  });

  it('are no parts where each holds a whole army: one of them is to be named', async () => {
    const dir = newFolder();
    writeSheets(dir, {
      'army 2024.xlsx': await makeWorkbook(fourSheets),
      'army 2025.xlsx': await makeWorkbook(fourSheets),
    });
    const { problems } = await readSheets(dir, known);
    expect(problems.map(wordProblem)).toEqual([
      expect.stringContaining(
        'none of the sheets is here. If they are in army 2024.xlsx or army 2025.xlsx, name that workbook instead of the folder.',
      ),
    ]);
  });
});

describe('the same pots twice', () => {
  it('as CSV and as a workbook count once: the text does', async () => {
    const { sheets, says } = await read({
      'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24\n',
      'pots.xlsx': await makeWorkbook({ pots: fourSheets.pots ?? [] }),
    });
    expect(says).toEqual([]);
    expect(sheets?.pots).toHaveLength(2);
  });

  it('in two workbooks are asked about', async () => {
    const pots = await makeWorkbook({ pots: fourSheets.pots ?? [] });
    const { says } = await read({ 'pots.xlsx': pots, 'colours.xlsx': pots });
    expect(says).toEqual([
      'pots.xlsx: the pots sheet is there more than once: colours.xlsx, pots.xlsx. Keep one of them and rename or remove the rest.',
    ]);
  });
});
