import { describe, expect, it } from 'vitest';
import {
  addSheet,
  boldFont,
  openWorkbook,
  packWorkbook,
} from '../../../src/report/workbook/open-workbook.js';
import { listParts } from './list-parts.js';

async function makeWorkbook() {
  const workbook = await openWorkbook('2026-03-14');
  const sheet = addSheet(workbook, 'first');
  sheet.columns = [{ width: 4 }, { width: 20 }];
  sheet.addRow(['text', 'text', '<&>"']).font = boldFont;
  sheet.addRow([1, { formula: 'A2*2', result: 2 }, { error: '#DIV/0!' }]).getCell(1).numFmt = '0.00';
  addSheet(workbook, 'second').getCell('C3').value = 'alone';
  return workbook;
}

describe('addSheet', () => {
  it('puts a sheet on one page, and a wide one on several, each with what its rows are about', async () => {
    const workbook = await openWorkbook('2026-03-14');
    const paper = (width: number) => addSheet(workbook, `${width} wide`, width).pageSetup;
    expect(paper(200)).toMatchObject({ fitToWidth: 1, fitToHeight: 0, printTitlesRow: '1:1' });
    expect(addSheet(workbook, 'narrow').pageSetup).not.toHaveProperty('printTitlesColumn');
    expect(paper(201)).toMatchObject({ fitToWidth: 2, fitToHeight: 0, printTitlesColumn: 'A:B' });
  });
});

describe('packWorkbook', () => {
  it('packs the files that the library itself writes', async () => {
    const theirs = await listParts(
      new Uint8Array(
        await (await makeWorkbook()).xlsx.writeBuffer({ useStyles: true, useSharedStrings: true }),
      ),
    );
    const ours = await listParts(await packWorkbook(await makeWorkbook(), '2026-03-14'));
    expect(ours).toEqual(theirs);
    expect(Object.keys(ours)).toContain('xl/worksheets/sheet2.xml');
  });

  // ECMA-376 part 2 names this file; many readers look for it first.
  it('has the list of contents first', async () => {
    const bytes = await packWorkbook(await makeWorkbook(), '2026-03-14');
    expect(Object.keys(await listParts(bytes))[0]).toBe('[Content_Types].xml');
  });
});
