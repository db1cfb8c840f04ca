import { describe, expect, it } from 'vitest';
import { makeRoom } from '../../../src/sheets/read/count-room.js';
import { type CellFormat, plainFormat } from '../../../src/sheets/read/read-format.js';
import { readNumberFormats } from '../../../src/sheets/read/read-number-formats.js';
import { readSharedStrings } from '../../../src/sheets/read/read-shared-strings.js';
import { readWorksheet } from '../../../src/sheets/read/read-worksheet.js';

async function* bytesOf(xml: string): AsyncGenerator<Uint8Array> {
  yield Buffer.from(xml);
}

const percent: CellFormat = { kind: 'percent', unit: '' };
const date: CellFormat = { kind: 'date', unit: '' };
const formats: readonly CellFormat[] = [plainFormat, percent, date];

const read = async (rows: string, { after = '', room = makeRoom() } = {}) =>
  readWorksheet(bytesOf(`<worksheet><sheetData>${rows}</sheetData>${after}</worksheet>`), {
    strings: ['shared'],
    formats,
    date1904: false,
    room,
  });

const rows = async (xml: string): Promise<unknown> =>
  (await read(xml)).rows.map(({ row, cells }) => [row, ...cells]);

describe('readWorksheet', () => {
  it.each([
    ['a number of a formula', '<row r="1"><c r="A1" s="1"><f>B1*2</f><v>3</v></c></row>', [[1, '300%']]],
    [
      'a shared formula',
      '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">B1</f><v>3</v></c></row>',
      [[1, 3]],
    ],
    ['its sharer', '<row r="2"><c r="A2"><f t="shared" si="0"/><v>4</v></c></row>', [[2, 4]]],
    ['text of a formula', '<row r="1"><c r="A1" t="str"><f>B1</f><v>x</v></c></row>', [[1, 'x']]],
    ['an empty text of a formula', '<row r="1"><c r="A1" t="str"><f>""</f><v></v></c></row>', []],
    [
      'an empty text of a shared formula',
      '<row r="1"><c r="A1" t="str"><f t="shared" si="0"/><v/></c></row>',
      [],
    ],
    ['a blank styled cell', '<row r="1"><c r="A1" s="4"/><c r="B1"><v>1</v></c></row>', [[1, '', 1]]],
    ['a blank styled row', '<row r="1" s="4" customFormat="1"/><row r="2"><c r="A2"/></row>', []],
    ['a style that is not there', '<row r="1"><c r="A1" s="99"><v>1</v></c></row>', [[1, 1]]],
    ['a shared text', '<row r="1"><c r="A1" t="s"><v>0</v></c></row>', [[1, 'shared']]],
    [
      'rich text with a reading aid',
      '<row r="1"><c r="A1" t="inlineStr"><is><r><rPr/><t>brick </t></r><r><t>red</t></r><rPh sb="0" eb="1"><t>aid</t></rPh></is></c></row>',
      [[1, 'brick red']],
    ],
    [
      'rows and cells without an address',
      '<row><c><v>1</v></c><c t="b"><v>1</v></c></row><row r="5"><c r="C5"><v>2</v></c><c><v>3</v></c></row><row><c s="1"/><c><v>4</v></c></row>',
      [
        [1, 1, true],
        [5, '', '', 2, 3],
        [6, '', 4],
      ],
    ],
    [
      'rows in disorder and in two pieces',
      '<row r="3"><c r="A3"><v>3</v></c></row><row r="1"><c r="A1"><v>1</v></c></row><row r="3"><c r="C3"><v>5</v></c></row>',
      [
        [1, 1],
        [3, 3, '', 5],
      ],
    ],
  ])('gives of %s what is stored', async (_, xml, expected) => {
    expect(await rows(xml)).toEqual(expected);
  });

  it('takes nothing for a cell that stands elsewhere', async () => {
    const after = '<extLst><ext><row r="9"><c r="A9"><f>x</f><v>9</v></c></row></ext></extLst>';
    expect((await read('<row r="1"><c r="A1"><v>1</v></c></row>', { after })).rows).toHaveLength(1);
  });

  it('lists merged ranges, ten thousand at most', async () => {
    const after = '<mergeCells count="2"><mergeCell ref="A3:A7"/><mergeCell ref="B1:C1"/></mergeCells>';
    expect((await read('', { after })).merges).toEqual(['A3:A7', 'B1:C1']);
    const many = await read('', { after: '<mergeCell ref="A1:B1"/>'.repeat(10_001) });
    expect(many.merges).toHaveLength(10_000);
  });

  it('tells hidden rows that hold something', async () => {
    const xml =
      '<row r="1" hidden="1"><c r="A1"><v>1</v></c></row><row r="2" hidden="1"/><row r="3" hidden="true"><c r="A3"><v>1</v></c></row>';
    expect((await read(xml)).hiddenRows).toEqual(new Set([1, 3]));
  });

  // Microsoft, "Excel specifications and limits": 1,048,576 rows by 16,384 columns (XFD).
  it.each([
    '<row r="1048577"/>',
    '<row r="0"/>',
    '<row r="x"/>',
    '<row r="1"><c r="XFE1"/></row>',
    '<row r="1"><c r="1"/></row>',
  ])('refuses %s, which no spreadsheet has', async (xml) => {
    await expect(read(xml)).rejects.toMatchObject({ fault: 'broken-workbook' });
  });

  it('takes room for every cell up to the last of a row, and for letters', async () => {
    const wide = '<row r="1"><c r="J1"><v>1</v></c></row>';
    const room = { rows: 9, cells: 25, letters: 8 };
    await read(wide, { room });
    await read('<row r="1"><c r="A1" t="str"><v>abc</v></c></row>', { room });
    expect(room).toEqual({ rows: 7, cells: 14, letters: 5 });
    await expect(read(wide + wide.replace(/1"/g, '2"').replace('J2', 'J2'), { room })).rejects.toMatchObject({
      fault: 'too-large-file',
      message: 'more cells',
      most: '2 million',
    });
    await expect(
      read('<row r="1"><c r="A1" t="str"><v>abcdef</v></c></row>', {
        room: { rows: 9, cells: 9, letters: 5 },
      }),
    ).rejects.toThrow('more letters');
  });

  it('keeps of a text that no spreadsheet holds just enough to tell', async () => {
    const [first] = (
      await read(`<row r="1"><c r="A1" t="inlineStr"><is><t>${'ab'.repeat(40_000)}</t></is></c></row>`)
    ).rows;
    expect(String(first?.cells[0]).length).toBe(32_768);
  });
});

describe('readSharedStrings', () => {
  it('joins runs and leaves reading aids out', async () => {
    const xml =
      '<sst><si><t xml:space="preserve"> a &amp; b </t></si><si><r><t>brick</t></r><r><t> red</t></r><rPh><t>x</t></rPh></si><si/></sst>';
    expect(await readSharedStrings(bytesOf(xml), makeRoom())).toEqual(['a & b', 'brick red', '']);
  });

  it('takes room for each', async () => {
    const xml = `<sst>${'<si><t>ab</t></si>'.repeat(4)}</sst>`;
    await expect(readSharedStrings(bytesOf(xml), { rows: 0, cells: 0, letters: 11 })).rejects.toThrow(
      'more letters',
    );
  });
});

describe('readNumberFormats', () => {
  it('gives a format for each cell style', async () => {
    const xml = `<styleSheet><numFmts count="2"><numFmt numFmtId="164" formatCode="[&gt;9]0\\ \\m\\l;0"/><numFmt formatCode="d\\.m\\." numFmtId="165"></numFmt></numFmts>
      <fonts count="1"><font><sz val="11"/></font></fonts><cellStyleXfs count="1"><xf numFmtId="9"/></cellStyleXfs>
      <cellXfs count="6"><xf numFmtId="164" fontId="0" xfId="0"><alignment wrapText="1"/></xf><xf numFmtId="165"/><xf fontId="0"/><xf numFmtId="31"/><xf numFmtId="10"/><xf numFmtId="49"/></cellXfs></styleSheet>`;
    expect(await readNumberFormats(bytesOf(xml))).toEqual([
      { kind: 'number', unit: 'ml' },
      date,
      plainFormat,
      date,
      percent,
      plainFormat,
    ]);
  });

  it('refuses more styles than a spreadsheet has', async () => {
    const xml = `<styleSheet><cellXfs>${'<xf numFmtId="0"/>'.repeat(70_000)}</cellXfs></styleSheet>`;
    await expect(readNumberFormats(bytesOf(xml))).rejects.toMatchObject({ fault: 'too-large-file' });
  });
});
