import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitRecords } from '../../../src/sheets/read/split-records.js';

const read = (text: string): string[][] =>
  splitRecords(text, ',').records.filter((record) => record.some((cell) => cell !== ''));

describe('RFC 4180, section 2', () => {
  // The examples are those of the RFC, its CRLF already made LF as the reader does.
  it.each([
    [
      'rule 1: each record on a line of its own',
      'aaa,bbb,ccc\nzzz,yyy,xxx\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'rule 2: the last record may lack its line end',
      'aaa,bbb,ccc\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['rule 4: spaces are part of a field', 'aaa, bbb ,ccc', [['aaa', ' bbb ', 'ccc']]],
    [
      'rule 5: fields may be quoted or not',
      '"aaa","bbb","ccc"\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'rule 6: quoted line ends and commas',
      '"aaa","b\nbb","c,cc"\nzzz,yyy,xxx',
      [
        ['aaa', 'b\nbb', 'c,cc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['rule 7: a quote in a quoted field is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('%s', (_, text, records) => {
    expect(read(text)).toEqual(records);
    expect(splitRecords(text, ',').troubles).toEqual([]);
  });

  it('reads back whatever is written by its rules', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', ' ', '\t', 'é', '|') });
    const table = fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(table, fc.constantFrom(',', ';', '\t', '|'), (rows, delimiter) => {
        const quote = (text: string): string =>
          /["\n,;\t|]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
        const text = rows.map((row) => row.map(quote).join(delimiter)).join('\n');
        expect(splitRecords(text, delimiter)).toEqual({ records: rows, troubles: [] });
      }),
    );
  });
});

describe('quotation marks that do not pair up', () => {
  it('reports an unclosed one in the record where it opens, and reads on below it', () => {
    const { records, troubles } = splitRecords('paint,size\nRed,17\n"Blue,24\nGreen,17\n', ',');
    expect(troubles).toEqual([{ record: 2, kind: 'unclosed', snippet: 'Blue' }]);
    expect(records.slice(1, 4)).toEqual([
      ['Red', '17'],
      ['Blue', '24'],
      ['Green', '17'],
    ]);
  });

  it('sees one that runs into a quoted cell further down', () => {
    const { records, troubles } = splitRecords('"Red,17\nBlue,24\n"Green, dark",17\nGrey,"9"\n', ',');
    expect(troubles).toEqual([{ record: 0, kind: 'unclosed', snippet: 'Red' }]);
    expect(records.slice(0, 4)).toEqual([
      ['Red', '17'],
      ['Blue', '24'],
      ['Green, dark', '17'],
      ['Grey', '9'],
    ]);
  });

  it('sees one on the last line, without a line end', () => {
    expect(splitRecords('Red,"17', ',').troubles).toEqual([{ record: 0, kind: 'unclosed', snippet: '17' }]);
    expect(splitRecords('Red,"', ',').troubles).toEqual([{ record: 0, kind: 'unclosed', snippet: '' }]);
  });

  it('tells text after a closing mark apart', () => {
    const { records, troubles } = splitRecords('"Big" Red,17\nBlue,24', ',');
    expect(troubles).toEqual([{ record: 0, kind: 'stray', snippet: 'Big' }]);
    expect(records).toEqual([
      ['Big" Red', '17'],
      ['Blue', '24'],
    ]);
  });

  it('reports several, and gives up on a text that is full of them', () => {
    expect(splitRecords('"a,1\n"b,2\n"c,3\n', ',').troubles.map(({ record }) => record)).toEqual([0, 1, 2]);
    expect(splitRecords('"a" b,1\n'.repeat(100), ',').troubles).toHaveLength(20);
  });

  it('lets marks stand inside a cell that does not begin with one', () => {
    const { records, troubles } = splitRecords('5" brush,1\nthe "old" red,2', ',');
    expect(troubles).toEqual([]);
    expect(records).toEqual([
      ['5" brush', '1'],
      ['the "old" red', '2'],
    ]);
  });
});

it('gives no records for an empty text', () => {
  expect(splitRecords('', ',')).toEqual({ records: [], troubles: [] });
});
