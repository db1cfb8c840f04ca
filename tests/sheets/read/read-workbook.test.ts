import { describe, expect, it } from 'vitest';
import { readWorkbook } from '../../../src/sheets/read/read-workbook.js';
import type { Cell } from '../../../src/sheets/table.js';
import {
  fourSheets,
  makeCompoundFile,
  makeStyles,
  makeWorkbook,
  makeZip,
  pictureBytes,
  type RawWorkbook,
  rawWorkbook,
} from './make-files.js';

const read = async (bytes: Buffer) => readWorkbook(bytes, 'army.xlsx');

/** Rows of the pots sheet, as number and cells. */
async function pots(bytes: Buffer): Promise<[number, ...Cell[]][]> {
  const { grids, problems } = await read(bytes);
  expect(problems).toEqual([]);
  return (grids.find(({ sheet }) => sheet === 'pots')?.rows ?? []).map(({ row, cells }) => [row, ...cells]);
}

const codes = async (bytes: Buffer): Promise<string[]> =>
  (await read(bytes)).problems.map(({ code }) => code);

const raw = (sheetData: string, more: Partial<RawWorkbook> = {}): Buffer =>
  rawWorkbook({ sheets: { pots: sheetData }, ...more });

describe('cells of a workbook written by exceljs', () => {
  it('come out typed', async () => {
    const bytes = await makeWorkbook({}, (workbook) => {
      const sheet = workbook.addWorksheet('pots');
      sheet.addRow(['paint', 'size ml', 'left', 'price', 'opened', 'ordered', 'place']);
      sheet.addRow([
        { richText: [{ text: 'brick ' }, { text: 'red', font: { bold: true } }] },
        17,
        0.6,
        { formula: 'B2*0.2', result: 3.4 },
        new Date(Date.UTC(2026, 0, 31)),
        true,
        { text: 'rack & 2', hyperlink: 'https://example.org/' },
      ]);
      sheet.getCell('C2').numFmt = '0%';
      sheet.getCell('E2').numFmt = 'dd/mm/yyyy';
      sheet.addRow([
        '  blue ',
        { error: '#N/A' },
        { formula: 'C2/2', result: 0.3 },
        { formula: 'NA()', result: { error: '#N/A' } },
        null,
        false,
        { formula: 'A2', result: 'rack 2' },
      ]);
      sheet.getCell('C3').numFmt = '0.0%';
      sheet.addRow(['green', { formula: 'B2+1' }]);
    });
    expect(await pots(bytes)).toEqual([
      [1, 'paint', 'size ml', 'left', 'price', 'opened', 'ordered', 'place'],
      [2, 'brick red', 17, '60%', 3.4, { kind: 'date', iso: '2026-01-31' }, true, 'rack & 2'],
      [
        3,
        'blue',
        { kind: 'broken', why: 'error value', shown: '#N/A' },
        '30%',
        { kind: 'broken', why: 'error value', shown: '#N/A' },
        '',
        false,
        'rack 2',
      ],
      [4, 'green', { kind: 'broken', why: 'formula without result', shown: '=B2+1' }],
    ]);
  });

  it('keep their place where rows and columns are left blank', async () => {
    const bytes = await makeWorkbook({}, (workbook) => {
      const sheet = workbook.addWorksheet('pots');
      sheet.getCell('B3').value = 'paint';
      sheet.getCell('D5').value = 1;
      sheet.getCell('A900').numFmt = '0%';
    });
    expect(await pots(bytes)).toEqual([
      [3, '', 'paint'],
      [5, '', '', '', 1],
    ]);
  });

  it('come from hidden rows and sheets too, and that is said', async () => {
    const bytes = await makeWorkbook(fourSheets, (workbook) => {
      const sheet = workbook.getWorksheet('pots');
      if (sheet !== undefined) sheet.state = 'veryHidden';
      const row = sheet?.getRow(3);
      if (row !== undefined) row.hidden = true;
      const column = sheet?.getColumn(2);
      if (column !== undefined) column.hidden = true;
    });
    const { grids, problems } = await read(bytes);
    expect(problems).toMatchObject([{ code: 'hidden-sheet', sheet: 'pots' }]);
    expect(grids[0]?.rows).toHaveLength(3);
    expect(grids[0]?.hiddenRows).toEqual(new Set([3]));
    expect(grids[0]?.hiddenColumns).toEqual([{ from: 2, to: 2 }]);
  });

  it('are told to be merged', async () => {
    const bytes = await makeWorkbook(fourSheets, (workbook) =>
      workbook.getWorksheet('schemes')?.mergeCells('A2:A3'),
    );
    const grid = (await read(bytes)).grids.find(({ sheet }) => sheet === 'schemes');
    expect(grid?.merges).toEqual(['A2:A3']);
    expect(grid?.rows[2]?.cells[0]).toBe('');
  });

  it('are found under notes, tables, pictures, dropdowns and colour rules', async () => {
    const bytes = await makeWorkbook({ notes: [['a']], ...fourSheets }, (workbook) => {
      const sheet = workbook.getWorksheet('pots');
      if (sheet === undefined) return;
      sheet.getCell('A2').note = 'half dry';
      sheet.addImage(workbook.addImage({ buffer: pictureBytes as never, extension: 'png' }), 'D1:E5');
      for (const cell of ['C2', 'C3'])
        sheet.getCell(cell).dataValidation = { type: 'list', formulae: ['"full,empty"'] };
      sheet.addConditionalFormatting({
        ref: 'B2:B99',
        rules: [{ type: 'expression', priority: 1, formulae: ['B2=0'], style: {} }],
      });
      sheet.addTable({ name: 'Shelf', ref: 'H1', columns: [{ name: 'x' }], rows: [[1]] });
    });
    const { grids, problems } = await read(bytes);
    expect(problems).toEqual([]);
    expect(grids.map(({ sheet }) => sheet)).toEqual(['pots', 'figures', 'schemes', 'army']);
    expect(grids[0]?.rows[1]?.cells.slice(0, 2)).toEqual(['brick red', 17]);
  });
});

describe('cells of workbooks by other programs', () => {
  it('hold the stored results of shared formulas', async () => {
    const rows = [
      '<row r="1"><c r="A1" t="inlineStr"><is><t>paint</t></is></c></row>',
      '<row r="2"><c r="B2"><f t="shared" ref="B2:B4" si="0">C2*2</f><v>34</v></c></row>',
      '<row r="3"><c r="B3"><f t="shared" si="0"/><v>48</v></c></row>',
      '<row r="4"><c r="B4"><f t="shared" si="0"/></c></row>',
    ];
    expect(await pots(raw(rows.join('')))).toEqual([
      [1, 'paint'],
      [2, '', 34],
      [3, '', 48],
      [4, '', expect.objectContaining({ kind: 'broken', why: 'formula without result' })],
    ]);
  });

  it('are blank where a formula gave an empty text', async () => {
    const row =
      '<row r="1"><c r="A1" t="str"><f>IF(1,"","x")</f><v></v></c><c r="B1" t="str"><f>"y"</f><v>y</v></c></row>';
    expect(await pots(raw(row))).toEqual([[1, '', 'y']]);
  });

  it('hold text of formulas in date cells', async () => {
    const row =
      '<row r="1"><c r="A1" s="2" t="str"><f>"soon"</f><v>soon</v></c><c r="B1" s="2"><f>TODAY()</f><v>46053</v></c></row>';
    expect(await pots(raw(row, { styles: makeStyles() }))).toEqual([
      [1, 'soon', { kind: 'date', iso: '2026-01-31' }],
    ]);
  });

  it('count days from 1904 where the workbook says so', async () => {
    const row =
      '<row r="1"><c r="A1" s="2"><v>44591</v></c><c r="B1" s="2"><f>A1+1</f><v>44592</v></c></row>';
    expect(await pots(raw(row, { styles: makeStyles(), date1904: true }))).toEqual([
      [1, { kind: 'date', iso: '2026-01-31' }, { kind: 'date', iso: '2026-02-01' }],
    ]);
    expect(await pots(raw(row, { styles: makeStyles() }))).toMatchObject([[1, { iso: '2022-01-30' }, {}]]);
  });

  it('stay numbers under formats with letters in them, and keep a unit or currency that those write', async () => {
    const shown = (unit: string) => ({ kind: 'measured', value: 12.34, unit });
    const styles = makeStyles([
      '0.0\\ \\m\\l',
      '0.0&quot; ml&quot;',
      '#,##0.00\\ [$€-407]',
      '0.0&quot; pots&quot;',
      'dd\\.mm\\.yyyy',
    ]);
    const cells = ['A', 'B', 'C', 'D'].map(
      (letter, at) => `<c r="${letter}1" s="${at + 3}"><v>12.34</v></c>`,
    );
    expect(
      await pots(raw(`<row r="1">${cells.join('')}<c r="E1" s="7"><v>46053</v></c></row>`, { styles })),
    ).toEqual([[1, shown('ml'), shown('ml'), shown('€'), 12.34, { kind: 'date', iso: '2026-01-31' }]]);
  });

  it('hold ISO dates of strict workbooks', async () => {
    const row = '<row r="1"><c r="A1" t="d"><v>2026-01-31T00:00:00</v></c></row>';
    expect(await pots(raw(row))).toEqual([[1, { kind: 'date', iso: '2026-01-31' }]]);
  });

  it('are found under a prefix, and without addresses', async () => {
    const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
    const sheet = `<x:worksheet xmlns:x="${main}"><x:sheetData><x:row><x:c><x:v>1</x:v></x:c><x:c t="b"><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    expect(await pots(raw(sheet))).toEqual([[1, 1, true]]);
  });

  it('are found wherever the workbook keeps its parts', async () => {
    const link = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const bytes = makeZip({
      '_rels/.rels': `<Relationships><Relationship Id="r" Type="${link}/officeDocument" Target="/book/main.xml"/></Relationships>`,
      'book/main.xml': `<x:workbook xmlns:x="m" xmlns:r="r"><x:sheets><x:sheet name="Tall &amp; thin" sheetId="1" r:id="a"/><x:sheet name='Pots' sheetId="2" r:id="b"/><x:sheet name="army" sheetId="3" r:id="c"/></x:sheets></x:workbook>`,
      'book/_rels/main.xml.rels': `<Relationships><Relationship Id="a" Type="${link}/worksheet" Target="x.xml"/><Relationship Id="b" Type="${link}/worksheet" Target="../leaves/one.xml"/><Relationship Id="c" Type="${link}/chartsheet" Target="c.xml"/></Relationships>`,
      'leaves/one.xml':
        '<worksheet><sheetData><row r="1"><c r="A1"><v>7</v></c></row></sheetData></worksheet>',
    });
    expect(await pots(bytes)).toEqual([[1, 7]]);
  });
});

describe('worksheets', () => {
  it('are matched by name, others left alone', async () => {
    const bytes = await makeWorkbook({
      ' POTS': [['paint']],
      Notes: [['x']],
      pots2: [['paint']],
      Shop: [['shop']],
    });
    const { grids, problems, seen } = await read(bytes);
    expect(grids.map(({ sheet }) => sheet)).toEqual(['pots']);
    expect(seen).toEqual(new Set(['pots']));
    expect(problems).toMatchObject([
      { code: 'near-worksheet-name', found: 'pots2', expected: 'pots' },
      { code: 'near-worksheet-name', found: 'Shop', expected: 'shops' },
    ]);
  });

  it('are reported where two are one sheet', async () => {
    const { grids, problems } = await read(
      await makeWorkbook({ pots: [['paint']], 'po ts': [['paint'], ['Red']] }),
    );
    expect(problems).toMatchObject([{ code: 'two-of-one-sheet', found: 'pots, po ts' }]);
    expect(grids).toHaveLength(1);
  });

  it('are missed in one sentence where none is a sheet', async () => {
    expect(await codes(await makeWorkbook({ Sheet1: [['paint', 'tin']] }))).toEqual(['no-sheets']);
  });
});

describe('what is no readable workbook', () => {
  it.each<[string, Buffer, string]>([
    ['locked', makeCompoundFile('EncryptionInfo', 'EncryptedPackage'), 'locked-workbook'],
    ['old', makeCompoundFile('Workbook'), 'old-workbook'],
    ['a text document', makeCompoundFile('WordDocument'), 'not-a-workbook'],
    ['a picture', pictureBytes, 'not-a-workbook'],
    ['plain text', Buffer.from('paint,size ml\n'), 'not-a-workbook'],
    ['no bytes', Buffer.alloc(0), 'broken-workbook'],
    ['some other zip', makeZip({ 'word/document.xml': '<w/>' }), 'not-a-workbook'],
    ['a binary workbook', makeZip({ 'xl/workbook.bin': 'x' }), 'not-a-workbook'],
    ['a zip with a password', makeZip({ 'xl/workbook.xml': 'x' }, 1), 'locked-workbook'],
    [
      'without the part of a sheet',
      rawWorkbook({
        sheets: { pots: '' },
        more: {
          'xl/_rels/workbook.xml.rels':
            '<Relationships><Relationship Id="rId1" Type="t/worksheet" Target="gone.xml"/></Relationships>',
        },
      }),
      'broken-workbook',
    ],
    ['without its shared texts', raw('<row r="1"><c r="A1" t="s"><v>0</v></c></row>'), 'broken-workbook'],
    ['of cut off XML', raw('<worksheet><sheetData><row r="1"><c r="A1"><v>1</v>'), 'broken-workbook'],
    [
      'of malformed XML',
      raw('<worksheet><sheetData><row r="1"><c r="A1"></v></c></row></sheetData></worksheet>'),
      'broken-workbook',
    ],
  ])('is told: %s', async (_, bytes, code) => {
    expect(await codes(bytes)).toEqual([code]);
  });

  it('is told wherever a workbook is cut off', async () => {
    const bytes = await makeWorkbook(fourSheets);
    for (const share of [0.1, 0.5, 0.9, 0.99]) {
      expect(await codes(bytes.subarray(0, Math.floor(bytes.length * share)))).toEqual(['broken-workbook']);
    }
  });

  it('is told before it is unpacked', async () => {
    const bytes = raw('');
    // The worksheet's entry in the directory (PKWARE APPNOTE 4.3.12) says that it unpacks to 257 MB.
    bytes.writeUInt32LE(257 * 2 ** 20, bytes.lastIndexOf('xl/worksheets/sheet1.xml') - 46 + 24);
    expect((await read(bytes)).problems).toMatchObject([
      { code: 'too-large-file', found: '258 MB unpacked', expected: '256 MB' },
    ]);
  });
});
