// Last rows that add up those above: which are sums, and which are rows like the others.
import { describe, expect, it } from 'vitest';
import type { SheetName } from '../../../src/model/words.js';
import { makeTable } from '../../../src/sheets/read/make-table.js';
import type { Cell } from '../../../src/sheets/table.js';

const pots: readonly (readonly Cell[])[] = [
  ['paint', 'size ml', 'left', 'price', 'rack'],
  ['brick red', '17', '60%', '3.50', 'a'],
  ['earth wash', '24', 'full', '4.20', 'b'],
  ['oat', '17', '', '', ''],
];

function make(sheet: SheetName, rows: readonly (readonly Cell[])[]) {
  const numbered = rows.map((cells, index) => ({ row: index + 1, cells: [...cells] }));
  return makeTable({ sheet, file: `${sheet}.csv`, rows: numbered, delimiterName: 'comma' });
}

const below = (...rows: readonly (readonly Cell[])[]) => make('pots', [...pots, ...rows]);

describe('a last row of pots', () => {
  // 17 + 24 + 17 = 58 and 3.50 + 4.20 = 7.70.
  it.each<[string, readonly Cell[]]>([
    ['called Total', ['Total', '58', '', '7.70']],
    ['called so, whatever its numbers', ['TOTAL:', '3', '', '']],
    ['called Summe', ['Summe', '', '', '7,70 €']],
    ['called Gesamt', ['Gesamt', '', '', '']],
    ['called totale', ['totale', '', '', '7.70']],
    ['called somme', ['Somme', '', '', '7.70']],
    ['called suma', ['Suma', '', '', '7.70']],
    ['called totaal', ['Totaal', '', '', '7.70']],
    ['called so elsewhere', ['', '', 'total', '7.70']],
    ['called so among other words', ['Total of all pots', '', '', '12']],
    ['a sum without a name', ['', '', '', '7.70']],
    ['a sum without a name, in a workbook', ['', '', '', 7.7]],
    ['a sum with its sign', ['', '', '', '€ 7.70']],
    ['a sum of the sizes', ['', '58 ml', '', '']],
    ['a sum with a word of the painter', ['3 pots', '', '', '7.70']],
    [
      'a formula that was never worked out',
      ['', '', '', { kind: 'broken', why: 'formula without result', shown: '=SUM(D2:D4)' }],
    ],
  ])('is left alone, and said to be: %s', (_, cells) => {
    const { table, problems } = below(cells);
    expect(table?.rows.map(({ row }) => row)).toEqual([2, 3, 4]);
    expect(problems).toMatchObject([{ code: 'totals-row', severity: 'warning', sheet: 'pots', row: 5 }]);
  });

  it.each<[string, readonly Cell[]]>([
    ['as large as two others', ['giant red', '58', '', '7.70']],
    ['named with the word', ['Total black', '17', '', '3.50']],
    ['noted with the word', ['bone', '17', '', '3.50', 'total']],
    ['without its name, and no sum', ['', '17', '', '3.50']],
    ['without its name, and a sum but for a cent', ['', '', '', '7.71']],
    ['without its size', ['bone', '', 'half', '7.70']],
    ['without its size, on a day', ['bone', '', { kind: 'date', iso: '2026-03-14' }, '7.70']],
    ['of nought', ['', '', '', '0']],
    ['two numbers in a cell', ['', '', '', '3.50 / 4.20']],
    [
      'a formula of another kind',
      ['', '', '', { kind: 'broken', why: 'formula without result', shown: '=D2*2' }],
    ],
  ])('is a row like the others: %s', (_, cells) => {
    const { table, problems } = below(cells);
    expect(table?.rows).toHaveLength(4);
    expect(problems).toEqual([]);
  });

  it('is no sum of one number, nor of a column that skips to it', () => {
    const [header = [], one = []] = pots;
    expect(make('pots', [header, one, ['', '17', '', '3.50']]).table?.rows).toHaveLength(2);
    expect(make('pots', [header, one, one, ['', '34', '', '']]).table?.rows).toHaveLength(2);
    expect(make('pots', [header, one, one, ['', '33', '', '']]).table?.rows).toHaveLength(3);
  });

  it('may stand below another, up to three', () => {
    const sums = ['Sum', 'Subtotal', 'Grand total'].map((name): Cell[] => [name, '', '', '9']);
    const { table, problems } = below(...sums);
    expect(table?.rows).toHaveLength(3);
    expect(problems.map(({ row }) => row)).toEqual([5, 6, 7]);
    expect(below(['Sum', '', '', '9'], ...sums).table?.rows).toHaveLength(4);
  });

  it('is the last: one further up stays, and so is told as what it lacks', () => {
    expect(
      make('pots', [...pots.slice(0, 2), ['Total', '', '', '3.50'], ...pots.slice(2)]).table?.rows,
    ).toHaveLength(4);
  });

  it('has no cells that are told: neither past the last header nor merged', () => {
    expect(below(['Total', '', '', '', '', '58']).problems.map(({ code }) => code)).toEqual(['totals-row']);
    const rows = [...pots, ['Total', '', '', '7.70']].map((cells, index) => ({
      row: index + 1,
      cells: [...cells],
    }));
    const merged = makeTable({ sheet: 'pots', file: 'army.xlsx', rows, merges: ['A5:C5'] });
    expect(merged.problems.map(({ code }) => code)).toEqual(['totals-row']);
  });
});

describe('a last row of other sheets', () => {
  it('of a log is a sum in a workbook, to which no row is added', () => {
    const cells: Cell[][] = [
      ['date', 'paint', 'used ml'],
      ['2026-03-14', 'oat', 1],
      ['Total', '', 1],
    ];
    const rows = cells.map((row, index) => ({ row: index + 1, cells: row }));
    expect(makeTable({ sheet: 'log', file: 'army.xlsx', rows }).table?.rows).toHaveLength(1);
  });

  it.each<[SheetName, readonly (readonly Cell[])[], boolean]>([
    [
      'army',
      [
        ['unit', 'figure', 'count'],
        ['spears', 'man', 20],
        ['bows', 'man', 10],
        ['', '', 30],
      ],
      true,
    ],
    [
      'army',
      [
        ['unit', 'figure', 'count'],
        ['spears', 'man', 20],
        ['bows', 'man', 10],
        ['', 'man', 30],
      ],
      false,
    ],
    [
      'army',
      [
        ['unit', 'figure', 'count'],
        ['spears', 'man', 20],
        ['Total', 'man', 10],
      ],
      false,
    ],
    [
      'extras',
      [
        ['item', 'price', 'serves'],
        ['brush', 6.5, 80],
        ['Total', 6.5],
      ],
      true,
    ],
    [
      'shops',
      [
        ['shop', 'postage'],
        ['Quay', 4.9],
        ['Mill', 3.9],
        ['Total', 8.8],
      ],
      true,
    ],
    [
      'offers',
      [
        ['shop', 'offer', 'price', 'paint', 'size ml'],
        ['Quay', 'a', 3, 'oat', 17],
        ['Total', 'a', 3, 'oat', 17],
      ],
      false,
    ],
    [
      'log',
      [
        ['date', 'paint', 'used ml'],
        ['2026-03-14', 'oat', 1],
        ['2026-03-15', 'oat', 2],
        ['', '', 3],
      ],
      false,
    ],
    [
      'settings',
      [
        ['name', 'value'],
        ['currency', 'EUR'],
        ['Total', '3'],
      ],
      false,
    ],
    [
      'schemes',
      [
        ['scheme', 'step', 'zone', 'layer', 'paint'],
        ['a', 1, 'all', 'primer', 'oat'],
        ['total', 3],
      ],
      false,
    ],
  ])('in %s: %j', (sheet, rows, isTotal) => {
    const { table, problems } = make(sheet, rows);
    expect(table?.rows).toHaveLength(rows.length - (isTotal ? 2 : 1));
    expect(problems.map(({ code }) => code)).toEqual(isTotal ? ['totals-row'] : []);
  });
});
