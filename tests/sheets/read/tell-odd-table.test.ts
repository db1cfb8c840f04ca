// Tables that stand otherwise than below their headers, at the edges of what counts as one.
import { describe, expect, it } from 'vitest';
import { makeTable } from '../../../src/sheets/read/make-table.js';
import { readCsv } from '../../../src/sheets/read/read-csv.js';

function made(text: string) {
  const { grid } = readCsv(Buffer.from(text), { file: 'pots.csv', sheet: 'pots' });
  if (grid === undefined) throw new Error('no text');
  const { table, problems } = makeTable(grid);
  return { codes: problems.map(({ code }) => code), rows: table?.rows.map(({ row }) => row), table };
}

const pots = 'paint,size ml\nbrick red,17\nearth wash,24\n';

describe('headers below other rows', () => {
  it('are found in row 20, and told in row 21', () => {
    expect(made(`${'an evening\n'.repeat(19)}${pots}`)).toMatchObject({
      codes: ['rows-above-header'],
      rows: [21, 22],
    });
    expect(made(`${'an evening\n'.repeat(20)}${pots}`).codes).toEqual(['headers-far-below']);
  });

  it('are no matter to a sheet that has what it needs, nor is one word', () => {
    const rows = 'brick red,17\n'.repeat(25);
    expect(made(`${pots}${rows}paint,size ml,left\n`).codes).toEqual(['extra-cell']);
    expect(made(`shade,size ml\n${rows}paint,17\n`).codes).toEqual([]);
  });
});

describe('headers in the first column', () => {
  it('are told of two, where fewer stand in the first row', () => {
    expect(made('paint,brick red\nsize ml,17\n').codes).toEqual(['sheet-on-its-side']);
    expect(made('paint,left\nsize ml,half\n').codes).toEqual([]);
  });
});

describe('sums of another table', () => {
  it('end in sums on the right and below', () => {
    expect(made('Rows,desk,Total\nbrick red,1,1\nTotal,1,1\n').codes).toEqual(['sheet-of-sums']);
    expect(made('Rows,desk,Total\nbrick red,1,1\n').codes).toEqual([]);
    expect(made('paint,desk,Total\nbrick red,1,1\nTotal,1,1\n').codes).not.toContain('sheet-of-sums');
  });
});

describe('headers that stand once more', () => {
  it('are left alone only where all are there', () => {
    expect(made(`${pots}paint,size ml\nsilt,17\n`)).toMatchObject({
      codes: ['headers-again'],
      rows: [2, 3, 5],
    });
    expect(made(`${pots}paint,17\n`)).toMatchObject({ codes: [], rows: [2, 3, 4] });
  });
});

describe('a table beside another', () => {
  it('has all that its sheet needs, in two columns or more, behind a blank one', () => {
    const beside = (headers: string) => made(`paint,size ml,${headers}\nbrick red,17,,the ferry,30\n`).codes;
    expect(beside(',shop,free from')).toEqual(['table-beside']);
    expect(beside(',shop,my notes')).toEqual([]);
    expect(beside(',postage,free from')).toEqual([]);
    expect(beside('left,shop,free from')).toEqual([]);
  });

  it('is cut off with its headers and its rows, though the first has some of those headers too', () => {
    const { codes, table } = made(
      'paint,size ml,price,,item,price,serves\nred,17,3,,brush,6,80\n,,,,flock,9,80\n',
    );
    expect(codes).toEqual(['table-beside']);
    expect(table).toMatchObject({ headers: ['paint', 'size ml', 'price'], rows: [{ row: 2 }] });
    // The size is that of the first, by whichever name.
    const { table: named } = made('paint,ml,,shop,paint,price,size\nred,17,,a,blue,3,24\n');
    expect(named).toMatchObject({ headers: ['paint', 'ml'], rows: [{ cells: ['red', '17'] }] });
  });

  it('stays where the first lacks what only it has', () => {
    const { codes, table } = made('paint,price,,shop,offer,price,paint,size ml\nred,3,,a,b,3,red,17\n');
    expect(codes).not.toContain('table-beside');
    expect(table?.headers).toHaveLength(8);
  });

  it('may lack a column, if it begins as its sheet does and has none of another', () => {
    const beside = (headers: string) => made(`paint,size ml,,${headers}\nbrick red,17,,a,b,c\n`).codes;
    expect(beside('shop,paint,price')).toEqual(['table-beside']);
    expect(beside('offer,paint,price')).not.toContain('table-beside');
    expect(beside('shop,paint,parcel')).not.toContain('table-beside');
  });
});
