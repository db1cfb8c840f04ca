// OpenDocument spreadsheets, as ISO/IEC 26300 has them: repeated cells and rows, notes on cells, stored results, merged ranges.
import { describe, expect, it } from 'vitest';
import { readOds } from '../../../src/sheets/read/read-ods.js';
import { readWorkbook } from '../../../src/sheets/read/read-workbook.js';
import { openZip } from '../../../src/unpack/open-zip.js';
import { makeOds as ods, odsText as text } from './make-files.js';

const pots = async (rows: string) => {
  const all = await readOds(await openZip(ods(`<table:table table:name="pots">${rows}</table:table>`)));
  return all?.[0];
};

describe('an OpenDocument worksheet', () => {
  it.each<[string, unknown]>([
    [text('brick<text:s text:c="2"/>red'), 'brick  red'],
    [
      '<table:table-cell office:value-type="string"><text:p>a</text:p><text:p>b</text:p></table:table-cell>',
      'a\nb',
    ],
    [
      '<table:table-cell office:value-type="string"><office:annotation><text:p>old</text:p></office:annotation><text:p>oat</text:p></table:table-cell>',
      'oat',
    ],
    [
      '<table:table-cell office:value-type="float" office:value="17"><text:p>17</text:p></table:table-cell>',
      17,
    ],
    [
      '<table:table-cell office:value-type="float" office:value="17"><text:p>17 ml</text:p></table:table-cell>',
      { kind: 'measured', value: 17, unit: 'ml' },
    ],
    [
      '<table:table-cell office:value-type="percentage" office:value="0.55"><text:p>55%</text:p></table:table-cell>',
      '55%',
    ],
    [
      '<table:table-cell office:value-type="float" office:value="0.55"><text:p>55%</text:p></table:table-cell>',
      '55%',
    ],
    [
      '<table:table-cell office:value-type="currency" office:currency="EUR" office:value="3.25"><text:p>3,25 €</text:p></table:table-cell>',
      { kind: 'measured', value: 3.25, unit: 'EUR' },
    ],
    [
      '<table:table-cell office:value-type="date" office:date-value="2026-03-14T00:00:00"><text:p>14.3.26</text:p></table:table-cell>',
      { kind: 'date', iso: '2026-03-14' },
    ],
    ['<table:table-cell office:value-type="boolean" office:boolean-value="true"/>', true],
    ['<table:table-cell table:formula="of:=[.A1]+1" office:value-type="float" office:value="2"/>', 2],
    [
      '<table:table-cell table:formula="of:=[.A1]"/>',
      { kind: 'broken', why: 'formula without result', shown: '=[.A1]' },
    ],
  ])('holds %s', async (cell, expected) => {
    const read = await pots(`<table:table-row>${cell}</table:table-row>`);
    expect(read?.rows).toEqual([{ row: 1, cells: [expected] }]);
  });

  it('repeats cells and rows, and leaves blank ones out', async () => {
    const read = await pots(
      `<table:table-row table:number-rows-repeated="3"><table:table-cell table:number-columns-repeated="1024"/></table:table-row>
       <table:table-row table:number-rows-repeated="2" table:visibility="collapse"><table:table-cell/>${text('a').replace('<table:table-cell', '<table:table-cell table:number-columns-repeated="2"')}</table:table-row>
       <table:table-row table:number-rows-repeated="1048000"><table:table-cell/></table:table-row>`,
    );
    expect(read?.rows).toEqual([
      { row: 4, cells: ['', 'a', 'a'] },
      { row: 5, cells: ['', 'a', 'a'] },
    ]);
    expect([...(read?.hiddenRows ?? [])]).toEqual([4]);
  });

  it('has merged ranges', async () => {
    const merged = text('a').replace(
      '<table:table-cell',
      '<table:table-cell table:number-columns-spanned="2" table:number-rows-spanned="3"',
    );
    const read = await pots(`<table:table-row>${merged}<table:covered-table-cell/></table:table-row>`);
    expect(read?.merges).toEqual(['A1:B3']);
  });
});

describe('an OpenDocument workbook', () => {
  const codes = async (bytes: Buffer) =>
    (await readWorkbook(bytes, 'a.ods')).problems.map(({ code }) => code);
  const row = (cells: string, times = 1): string =>
    `<table:table name="pots"><table:table-row number-rows-repeated="${times}">${cells}</table:table-row></table:table>`;

  it('is no longer than what may be read, however often a row is said to stand', async () => {
    expect(await codes(ods(row(text('a'), 150_000)))).toEqual([]);
    expect(await codes(ods(row(text('a'), 150_001)))).toEqual(['too-large-file']);
    expect(
      await codes(ods(row(text('a').replace('office:', 'number-columns-repeated="16385" office:')))),
    ).toEqual(['broken-workbook']);
  });

  it('that is locked says so', async () => {
    const manifest = '<manifest:manifest><manifest:encryption-data/></manifest:manifest>';
    expect(await codes(ods(row(text('a')), manifest))).toEqual(['locked-workbook']);
  });
});
