// What the columns sheet settles, read from real files: headers that nobody could know, and some that would be known otherwise.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { readSheets } from '../../../src/sheets/read-sheets.js';
import { writeSheets } from '../../problems/problem-case.js';
import { makeWorkbook } from '../read/make-files.js';

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'halfpot-settle-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

const read = async (path = dir) => readSheets(path, { assumptions: registry, today: '2026-11-02' });

async function readPots(pots: string, columns: string) {
  writeSheets(dir, { 'pots.csv': pots, 'columns.csv': `sheet,column,called\n${columns}\n` });
  const { sheets, problems, read: how } = await read();
  const [table] = how;
  return { pots: sheets?.pots, codes: problems.map(({ code, column }) => `${code} ${column}`), table };
}

it('finds the header row by words that nobody else knows', async () => {
  const text = 'My rack\n\nJar,Vol,Dregs\nbrick red,17,50%\nearth wash,24,25%\n';
  const { pots, codes, table } = await readPots(text, 'pots,paint,Jar\npots,size ml,vol\npots,left,DREGS');
  // A half of 17 ml, a quarter of 24 ml.
  expect(pots?.map(({ paint, sizeMl, left }) => [paint, sizeMl, left])).toEqual([
    ['brick red', 17, expect.objectContaining({ share: 0.5 })],
    ['earth wash', 24, expect.objectContaining({ share: 0.25 })],
  ]);
  expect(codes).toEqual(['rows-above-header undefined']);
  expect(table).toMatchObject({ headerRow: 3, columns: [{ header: 'Jar', column: 'paint' }, {}, {}] });
});

it('comes before what a header means elsewhere, and a blank leaves it alone', async () => {
  const text = 'paint,size ml,left,In the pot,price\nbrick red,17,Tuesday,50%,dear\n';
  const { pots, codes, table } = await readPots(text, 'pots,left,In the pot\npots,,price');
  expect(codes).toEqual([]);
  expect(pots?.[0]).toMatchObject({ left: { share: 0.5 } });
  expect(pots?.[0]?.priceMinor).toBeUndefined();
  expect(table?.columns).toEqual([
    { header: 'paint', column: 'paint', isOwn: true },
    { header: 'size ml', column: 'size ml', isOwn: true },
    { header: 'left', isOwn: false },
    { header: 'In the pot', column: 'left', isOwn: false },
    { header: 'price', isOwn: false },
  ]);
});

it('settles questions, and none that still bears a question mark', async () => {
  const text = 'paint,size ml,In the pot\nbrick red,17,50%\n';
  const asked = ['column-maybe-meant In the pot'];
  expect((await readPots(text, 'pots,left?,In the pot')).codes).toEqual(asked);
  expect((await readPots(text, 'pots,,In the pot')).codes).toEqual([]);
  expect((await readPots(text, 'pots,left,In the pot')).codes).toEqual([]);
});

it('does not hide in which currency a header says that prices are', async () => {
  const settings = 'name,value\ncurrency,EUR\n';
  writeFileSync(join(dir, 'settings.csv'), settings);
  const text = (sign: string) => `paint,size ml,Given (${sign})\nbrick red,17,3.50\n`;
  expect((await readPots(text('USD'), 'pots,price,Given (USD)')).codes).toEqual([
    'other-currency Given (USD)',
  ]);
  const right = await readPots(text('€'), 'pots,price,Given (€)');
  expect([right.codes, right.pots?.[0]?.priceMinor]).toEqual([[], 350]);
});

it('has one row for a column and one for a header', async () => {
  const text = 'paint,size ml,a,b\nbrick red,17,10%,20%\n';
  const twice = await readPots(text, 'pots,left,a\npots,left,b');
  expect(twice.codes).toEqual(['repeated-name column']);
  expect((await readPots(text, 'pots,left,a\npots,place,A')).codes).toEqual(['repeated-name called']);
  expect((await readPots(text, 'pots,,a\npots,,b')).codes).toEqual([]);
});

it('may stand beside a workbook, which is then still read by its folder', async () => {
  const pots = [
    ['Jar', 'Vol'],
    ['brick red', 17],
  ];
  writeFileSync(join(dir, 'shelf.xlsx'), await makeWorkbook({ pots }));
  expect((await read()).sheets).toBeUndefined();
  writeFileSync(join(dir, 'columns.csv'), 'sheet,column,called\npots,paint,Jar\npots,size ml,Vol\n');
  for (const path of [dir, join(dir, 'shelf.xlsx')])
    expect((await read(path)).sheets?.pots).toMatchObject([{ paint: 'brick red', sizeMl: 17 }]);
});

it('of another program beside a workbook is left alone', async () => {
  writeFileSync(
    join(dir, 'shelf.xlsx'),
    await makeWorkbook({
      pots: [
        ['paint', 'size ml'],
        ['brick red', 17],
      ],
    }),
  );
  writeFileSync(join(dir, 'columns.csv'), 'name,width\na,3\n');
  const { problems, sheets } = await read();
  expect([problems, sheets?.pots.length]).toEqual([[], 1]);
});
