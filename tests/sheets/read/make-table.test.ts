import { describe, expect, it } from 'vitest';
import type { Grid } from '../../../src/sheets/read/grid.js';
import { makeTable } from '../../../src/sheets/read/make-table.js';
import type { Cell } from '../../../src/sheets/table.js';

type Rows = readonly (readonly Cell[])[];

/** Blank rows count, as they would in a file. */
function gridOf(rows: Rows, more: Partial<Grid> = {}): Grid {
  const numbered = rows.map((cells, index) => ({ row: index + 1, cells: [...cells] }));
  const filled = numbered.filter(({ cells }) => cells.some((cell) => cell !== ''));
  return { sheet: 'pots', file: 'pots.csv', rows: filled, delimiterName: 'comma', ...more };
}

const asWorkbook = (more: Partial<Grid>): Partial<Grid> =>
  ({ file: 'army.xlsx', delimiterName: undefined, ...more }) as Partial<Grid>;

const codes = (rows: Rows, more: Partial<Grid> = {}): string[] =>
  makeTable(gridOf(rows, more)).problems.map(({ code }) => code);

const table = (rows: Rows, more: Partial<Grid> = {}) => makeTable(gridOf(rows, more)).table;

describe('the header row', () => {
  it.each<[string, Rows, number]>([
    [
      'the first row',
      [
        ['paint', 'size ml'],
        ['Red', '17'],
      ],
      1,
    ],
    ['below blank rows', [[''], [''], ['paint', 'size ml'], ['Red', '17']], 3],
    ['below a title', [['My pots'], ['paint', 'size ml'], ['Red', '17']], 2],
    ['below a title of one known word', [['Paint'], [], ['paint', 'size ml'], ['Red', '17']], 3],
    ['in the twentieth row', [...Array(19).fill(['x']), ['paint', 'size ml'], ['Red', '17']], 20],
    [
      'the upper one of two alike',
      [
        ['paint', 'size ml'],
        ['paint', 'size ml'],
      ],
      1,
    ],
    ['the first row that is not blank where no header is known', [[], ['Farbe', 'Inhalt'], ['Rot', '17']], 2],
  ])('is %s', (_, rows, headerRow) => {
    expect(table(rows)?.headerRow).toBe(headerRow);
  });

  it('keeps the rows below with their numbers, and headers as written', () => {
    expect(table([['My pots'], ['Paint', ' ', 'SIZE_ml'], [], ['Red', 'new', '17']])).toEqual({
      sheet: 'pots',
      file: 'pots.csv',
      headerRow: 2,
      headers: ['Paint', ' ', 'SIZE_ml'],
      rows: [{ row: 4, cells: ['Red', 'new', '17'] }],
    });
  });

  it('writes numbers and dates among the headers as text', () => {
    const date = { kind: 'date', iso: '2026-01-31' } as const;
    expect(
      table([
        ['paint', 'size ml', 2026, date],
        ['Red', 17, 1, 2],
      ])?.headers,
    ).toEqual(['paint', 'size ml', '2026', '2026-01-31']);
  });

  it('does not pass over rows above it in silence, nor over a title', () => {
    const rows = [['Red', '17'], ['Blue', '24'], ['My pots'], ['paint', 'size ml'], ['Green', '17']];
    expect(makeTable(gridOf(rows)).problems).toMatchObject([
      { code: 'rows-above-header', found: '3 rows (1, 2, 3)' },
    ]);
    expect(
      makeTable(gridOf([['My pots'], [], ['paint', 'size ml'], ['Green', '17']])).problems,
    ).toMatchObject([{ code: 'rows-above-header', found: 'row 1 ("My pots")' }]);
  });

  it.each<[string, Rows, number]>([
    [
      'one cell of which some header is too',
      [
        ['Farbe', 'Art', 'Inhalt'],
        ['Rot', 'paint', '17'],
        ['Blau', 'paint', '17'],
      ],
      1,
    ],
    [
      'no number and one such cell, below a title',
      [['Meine Farben'], ['Farbe', 'Art'], ['Rot', 'paint'], ['Blau', 'wash']],
      2,
    ],
    [
      'one cell more than the header row, of which one is such',
      [
        ['Farbe', 'Art'],
        ['Rot', 'left', 'x'],
      ],
      1,
    ],
    ['a word for a title', [['Paint'], ['Farbe', 'Inhalt'], ['Rot', '17']], 2],
  ])('is no row of %s', (_, rows, headerRow) => {
    expect(table(rows)?.headerRow).toBe(headerRow);
  });

  it('is the one header that the sheet needs, over wider rows, or below them', () => {
    expect(table([['paint'], ['brick red', 'nearly dry']], { sheet: 'paints' })?.headerRow).toBe(1);
    expect(table([['My paints'], ['paint'], ['brick red']], { sheet: 'paints' })?.headerRow).toBe(2);
    expect(
      table([
        ['My list', 'of pots'],
        ['paint', 'size ml'],
        ['Red', '17'],
      ])?.headerRow,
    ).toBe(2);
  });

  it('is missing where the first row of data holds a word that some header is too', () => {
    const rows = [
      ['Red', 'paint', '17'],
      ['Blue', 'paint', '24'],
    ];
    expect(makeTable(gridOf(rows))).toMatchObject({
      table: undefined,
      problems: [{ code: 'no-header-row', row: 1, found: '"Red", "paint", "17"' }],
    });
  });
});

describe('the shape of a sheet', () => {
  it('leaves short rows short, and leaves blank headers at the end off', () => {
    expect(table([['paint', 'size ml', 'left', '', ''], ['Red'], ['Blue', '17', '', '', '']])).toMatchObject({
      headers: ['paint', 'size ml', 'left'],
      rows: [{ cells: ['Red'] }, { cells: ['Blue', '17', '', '', ''] }],
    });
  });

  it('says that a sheet is empty, the more so a needed one', () => {
    expect(makeTable(gridOf([[], ['']]))).toMatchObject({
      table: undefined,
      problems: [{ code: 'empty-sheet' }],
    });
    expect(codes([], { sheet: 'offers' })).toEqual(['empty-optional-sheet']);
  });

  it('has no rows where a sheet is nothing but a header', () => {
    expect(codes([['paint', 'size ml']])).toEqual([]);
    expect(table([['paint', 'size ml']])?.rows).toEqual([]);
  });

  it('reports a known header that stands there twice, however it is written', () => {
    const { problems } = makeTable(
      gridOf([
        ['Size ML', 'paint', 'note', 'size_ml', 'Note'],
        ['17', 'Red', '', '24'],
      ]),
    );
    expect(problems).toMatchObject([
      { code: 'duplicate-header', row: 1, column: 'size_ml', cell: 'D1', expected: 'Size ML', found: 'A1' },
    ]);
  });

  it('reports a CSV cell past the last header, once a row', () => {
    const rows = [
      ['paint', 'size ml'],
      ['Red', '17', '5', '9'],
      ['Blue', '17', ''],
      ['Green', '17', '', 'x'],
    ];
    expect(makeTable(gridOf(rows)).problems).toMatchObject([
      { code: 'extra-cell', row: 2, cell: 'C2', found: '5', expected: 'comma' },
      { code: 'extra-cell', row: 4, cell: 'D4', found: 'x' },
    ]);
  });

  it('takes cells under blank headers for notes, and says so once a column', () => {
    const rows = [
      ['paint', '', 'size ml', ''],
      ['Red', 'a', '17', 'b'],
      ['Blue', 'c', '17', ''],
    ];
    expect(makeTable(gridOf(rows)).problems).toMatchObject([
      { code: 'column-without-header', expected: 'B', found: '2 cells' },
      { code: 'column-without-header', expected: 'D', found: '1 cell' },
    ]);
  });

  it('takes a workbook cell beside the table for a note, however far out', () => {
    const rows = [
      ['paint', 'size ml'],
      ['Red', 17, '', '', 'buy more'],
    ];
    expect(makeTable(gridOf(rows, asWorkbook({}))).problems).toMatchObject([
      { code: 'column-without-header', file: 'army.xlsx', expected: 'E', found: '1 cell' },
    ]);
  });

  it('counts hidden rows that hold something, and reads them', () => {
    const rows = [['title'], ['paint', 'size ml'], ['Red', 17], ['Blue', 17], ['Green', 17]];
    const made = makeTable(gridOf(rows, asWorkbook({ hiddenRows: new Set([1, 3, 5, 9]) })));
    expect(made.problems).toMatchObject([
      { code: 'rows-above-header' },
      { code: 'hidden-rows', found: '2 rows (3, 5)' },
    ]);
    expect(made.table?.rows).toHaveLength(3);
  });

  // Excel specifications and limits: 1,048,576 rows by 16,384 columns.
  it('holds to the size of a spreadsheet', () => {
    const header = { row: 1, cells: ['paint', 'size ml'] };
    const at = (row: number): Grid => ({
      sheet: 'pots',
      file: 'pots.csv',
      rows: [header, { row, cells: ['Red', '17'] }],
    });
    expect(makeTable(at(1_048_576)).problems).toEqual([]);
    expect(makeTable(at(1_048_577)).problems).toMatchObject([{ code: 'too-many-rows', found: '1048577' }]);
    const wide = Array.from({ length: 16_385 }, (_, index) => `note ${index}`);
    expect(codes([wide, ['a']])).toEqual(['too-many-columns']);
    expect(codes([wide.slice(1), ['a']])).toEqual([]);
  });
});

describe('merged cells', () => {
  const rows: Rows = [
    ['My pots'],
    ['paint', 'size ml', 'price', 'note'],
    ['Red', 17, 3, 'a'],
    ['', 24, '', ''],
    ['', 9, '', ''],
    ['Blue', 17, 2, 'b'],
  ];
  const merged = (...merges: string[]) => {
    const made = makeTable(gridOf(rows, asWorkbook({ merges })));
    return { ...made, problems: made.problems.filter(({ code }) => code !== 'rows-above-header') };
  };

  it('reports a block of a known column, and fills it down', () => {
    const { table: made, problems } = merged('A3:A5');
    expect(problems).toMatchObject([
      { code: 'merged-cells', row: 3, column: 'paint', cell: 'A3:A5', found: 'Red' },
    ]);
    expect(made?.rows.map(({ cells }) => cells[0])).toEqual(['Red', 'Red', 'Red', 'Blue']);
  });

  it('reports a block across columns without filling it sideways', () => {
    const { table: made, problems } = merged('B3:C4');
    expect(problems).toMatchObject([{ code: 'merged-cells', row: 3, column: 'size ml', found: '17' }]);
    expect(made?.rows[1]?.cells).toEqual(['', 24, '', '']);
  });

  it('reports a block in the header row, and leaves the rows below as they are', () => {
    expect(merged('A2:A3').problems).toMatchObject([{ code: 'merged-cells', row: 2, cell: 'A2:A3' }]);
    expect(merged('A2:A3').table?.rows[0]?.cells[0]).toBe('Red');
  });

  it.each([
    ['a title above the header', 'A1:D1'],
    ["the painter's own column", 'D3:D5'],
    ['blank cells', 'C4:C5'],
    ['blank rows below the sheet', 'A6:A9'],
    ['what lies beside the table', 'F3:G9'],
    ['what is no range', 'A3'],
  ])('leaves %s alone', (_, merge) => {
    expect(merged(merge).problems).toEqual([]);
  });

  it('copes with a block of whole columns', () => {
    expect(merged('A3:A1048576').problems).toHaveLength(1);
  });

  it('takes the upper one of blocks that overlap, which no program writes', () => {
    expect(merged('A4:B5', 'A3:A5', 'A3:D9').problems).toMatchObject([{ cell: 'A3:A5' }]);
  });
});
