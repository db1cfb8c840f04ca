// A reorder list as rows of the log: what was paid for each pot, and for the delivery.
import { describe, expect, it } from 'vitest';
import { reorderWords } from '../../../src/report/reorder/words.js';
import { readOrder } from '../../../src/sheets/append/read-order.js';

const words = { columns: reorderWords.columns, ...reorderWords.entries };
const headers = 'for,entry,shop,offer,paint,size ml,pots in all,cost,currency,plan of';
const read = (...rows: readonly string[]) =>
  readOrder(Buffer.from([headers, ...rows, ''].join('\n')), 'reorder.csv', words)?.rows.map((row) =>
    ['paint', 'price', 'postage'].map((header) => row.get(header)),
  );
const red = 'army,pot,Quay,red,brick red,17,1,3.00,EUR,';
const blue = 'army,pot,Mill,blue,marsh blue,17,1,4.00,EUR,';

describe('the postage of a reorder list', () => {
  it('stands on the first row of its shop', () => {
    const rows = [red, 'army,pot,Quay,oat,oat,17,1,2.00,EUR,', 'army,postage,Quay,,,,,5.00,EUR,'];
    expect(read(...rows, blue, 'army,postage,Mill,,,,,2.50,EUR,')).toEqual([
      ['brick red', '3.00', '5.00'],
      ['oat', '2.00', undefined],
      ['marsh blue', '4.00', '2.50'],
    ]);
  });

  it('is less by what goods for the shelf make travel free, and blank where nothing is paid', () => {
    const more = 'shelf,pot,Quay,oat,oat,17,1,2.00,EUR,';
    const army = [red, 'army,postage,Quay,,,,,5.00,EUR,', more];
    expect(read(...army, 'shelf,postage,Quay,,,,,-3.50,EUR,')?.[0]).toEqual(['brick red', '3.00', '1.50']);
    expect(read(...army, 'shelf,postage,Quay,,,,,-5.00,EUR,')?.[0]).toEqual(['brick red', '3.00', undefined]);
    expect(read(red)).toEqual([['brick red', '3.00', undefined]]);
  });

  it('is written in the fraction of its currency', () => {
    const yen = 'army,pot,Quay,red,brick red,17,1,300,JPY,';
    expect(read(yen, 'army,postage,Quay,,,,,500,JPY,')).toEqual([['brick red', '300', '500']]);
  });
});
