import exceljs from 'exceljs';
import { beforeAll, describe, expect, it } from 'vitest';
import { sheetNames as allSheets, layers, type SheetName } from '../../../src/model/words.js';
import { readyMadeZones } from '../../../src/model/zones.js';
import { choicesOf } from '../../../src/sheets/columns/column.js';
import { columns } from '../../../src/sheets/columns/columns.js';
import { splitRecords } from '../../../src/sheets/read/split-records.js';
import { exampleRows } from '../../../src/sheets/starter/example-rows.js';
import { listStarterSheets } from '../../../src/sheets/starter/list-starter-sheets.js';
import { writeStarterCsv } from '../../../src/sheets/starter/write-starter-csv.js';
import { writeStarterWorkbook } from '../../../src/sheets/starter/write-starter-workbook.js';

const sheets = listStarterSheets();
/** Headers that are their columns' own need no columns sheet. */
const sheetNames = allSheets.filter((sheet) => sheet !== 'columns');
const files = new Map(writeStarterCsv().map(({ name, content }) => [name, String(content)]));

describe('the starter sheets', () => {
  it('are all twelve, each but log and swaps with rows, and only with known columns', () => {
    expect(sheets.map(({ sheet }) => sheet)).toEqual([...sheetNames]);
    for (const sheet of sheetNames) {
      const known = new Set(columns[sheet].map(({ header }) => header));
      expect(exampleRows[sheet].length > 0).toBe(sheet !== 'log' && sheet !== 'swaps');
      for (const row of exampleRows[sheet]) for (const header of row.keys()) expect(known).toContain(header);
    }
  });

  it('fill every needed cell, but the price, which stands once in a set, and what another cell spares', () => {
    for (const { sheet, columns: shown, rows } of sheets)
      for (const [at, { header, needed, unless }] of shown.entries())
        if (needed && header !== 'price')
          for (const row of rows) {
            const sparing = shown.findIndex((one) => one.header === unless);
            expect(`${row[at]}${row[sparing] ?? ''}`, `${sheet} ${header}`).not.toBe('');
          }
  });

  it('hold figures of all kinds, and all layers but one in schemes, and fit a screen each', () => {
    const cells = (sheet: SheetName, header: string): Set<string | undefined> =>
      new Set(exampleRows[sheet].map((row) => row.get(header)));
    const kinds = ['foot with shield', 'bow', 'rider', 'gun crew', 'gun', 'beast', 'wagon', 'wall', 'house'];
    expect(cells('figures', 'figure')).toEqual(new Set(kinds));
    expect(cells('army', 'figure')).toEqual(new Set(kinds));
    expect(cells('army', 'scheme')).toEqual(cells('schemes', 'scheme'));
    expect(layers.filter((layer) => !cells('schemes', 'layer').has(layer))).toEqual(['glaze']);
    for (const { rows } of sheets) expect(rows.length).toBeLessThanOrEqual(30);
  });

  it('carry codes with a right check digit, of the range for use inside a shop', () => {
    // GS1 General Specifications 7.9: weights 3 and 1 from the right; 1.4: prefixes 200 to 299 are for restricted use.
    const codes = sheets.flatMap(({ columns: shown, rows }) => {
      const at = shown.findIndex(({ header }) => header === 'code');
      return rows.map((row) => row[at] ?? '').filter((code) => code !== '');
    });
    expect(codes.length).toBeGreaterThan(15);
    for (const code of codes) {
      expect(code).toMatch(/^2\d{12}$/);
      const sum = [...code].reduce((total, digit, at) => total + Number(digit) * (at % 2 === 0 ? 1 : 3), 0);
      expect(sum % 10).toBe(0);
    }
  });
});

describe('as CSV', () => {
  it.each(sheets.map((sheet) => [sheet.sheet, sheet] as const))(
    '%s.csv reads back as written',
    (name, sheet) => {
      const text = files.get(`${name}.csv`) ?? '';
      expect(text.startsWith('\ufeff')).toBe(true);
      expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      const { records, troubles } = splitRecords(text.slice(1).replaceAll('\r\n', '\n'), ',');
      expect(troubles).toEqual([]);
      expect(records).toEqual([sheet.columns.map(({ header }) => header), ...sheet.rows, ['']]);
    },
  );

  it('explain every column and name every ready-made zone', () => {
    const lines = (files.get('how-to.txt') ?? '').split('\r\n');
    const text = lines.join('\n');
    for (const { columns: shown } of sheets)
      for (const { header, says } of shown)
        expect(lines.some((line) => line.startsWith(`  ${header}`) && line.includes(says))).toBe(true);
    for (const zone of readyMadeZones.keys()) expect(text).toContain(zone);
  });
});

describe('as a workbook', () => {
  const workbook = new exceljs.Workbook();
  beforeAll(async () => {
    const { content } = await writeStarterWorkbook();
    await workbook.xlsx.load((content as Uint8Array).buffer as ArrayBuffer);
  });

  const validationsOf = (sheet: string): Record<string, exceljs.DataValidation> => {
    const worksheet = workbook.getWorksheet(sheet) as unknown as {
      dataValidations: { model: Record<string, exceljs.DataValidation> };
    };
    return worksheet.dataValidations.model;
  };

  it('has a page of explanations, then a sheet for each, with frozen headers', () => {
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(['how to', ...sheetNames]);
    for (const sheet of sheetNames)
      expect(workbook.getWorksheet(sheet)?.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    const said = workbook.getWorksheet('how to')?.getColumn(4).values.map(String) ?? [];
    for (const { columns: shown } of sheets)
      for (const { says } of shown) expect(said.some((line) => line.startsWith(says))).toBe(true);
  });

  it('offers every closed list of words as a dropdown, and no other word', () => {
    for (const { sheet, columns: shown } of sheets)
      for (const [at, column] of shown.entries()) {
        const choices = choicesOf(column);
        if (choices.length === 0) continue;
        const letter = workbook.getWorksheet(sheet)?.getColumn(at + 1).letter;
        for (const row of [2, 500, 1000]) {
          const validation = validationsOf(sheet)[`${letter}${row}`];
          expect(validation, `${sheet} ${letter}${row}`).toMatchObject({
            type: 'list',
            allowBlank: true,
            errorStyle: 'stop',
          });
          expect(validation?.formulae).toEqual([`"${choices.join(',')}"`]);
          // ECMA-376 part 1, 18.3.1.42 with Excel's published limit: a list written out has 255 characters at the most.
          expect(choices.join(',').length).toBeLessThanOrEqual(255);
        }
      }
  });

  it('offers names of other sheets, and takes new ones', () => {
    expect(validationsOf('army').B2).toMatchObject({ type: 'list', formulae: ['figures!$A$2:$A$1000'] });
    expect(validationsOf('army').B2?.errorStyle).not.toBe('stop');
  });

  it('holds numbers and shares as such, and codes as text', () => {
    const pots = workbook.getWorksheet('pots');
    expect(pots?.getCell('B2').value).toBe(400);
    expect(pots?.getCell('C2').value).toBe(0.1);
    expect(pots?.getCell('C2').numFmt).toBe('0%');
    const code = pots?.getColumn(
      (sheets
        .find(({ sheet }) => sheet === 'pots')
        ?.columns.findIndex(({ header }) => header === 'code') as number) + 1,
    );
    expect(code?.values[2]).toBe('2000310000019');
    expect(code?.numFmt).toBe('@');
  });
});
