// A new row against the sheets: what it becomes, and what stops it.
import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { checkLogRows, placeCells } from '../../../src/sheets/append/check-log-rows.js';
import { makeTables, type SheetRows, shortRows } from '../check/make-tables.js';

const known = { assumptions: registry, today: '2026-11-02' };

function checkRow(typed: Readonly<Record<string, string>>, sheets: SheetRows = {}, file = 'log.csv') {
  const tables = makeTables({ ...shortRows, ...sheets });
  const cells = new Map(Object.entries({ date: '2026-03-01', ...typed }));
  const {
    ofRows,
    elsewhere,
    cells: checked,
  } = checkLogRows({ tables, problems: [] }, { file, typed: [cells] }, known);
  return { ofRow: ofRows, elsewhere, cells: checked?.[0] };
}

describe('a row that can be', () => {
  it('has names as the sheets spell them and numbers as typed', () => {
    const { ofRow, elsewhere, cells } = checkRow({
      paint: 'BRICK  red',
      unit: 'first Spears',
      step: '1',
      figures: '10',
      'before g': '31.20',
      'after g': '30,1',
    });
    expect([ofRow, elsewhere]).toEqual([[], []]);
    expect([...(cells ?? [])]).toEqual([
      ['date', '2026-03-01'],
      ['paint', 'brick red'],
      ['unit', 'first spears'],
      ['step', '1'],
      ['figures', '10'],
      ['before g', '31.20'],
      ['after g', '30.1'],
    ]);
  });

  it.each([
    [
      'the log',
      {
        log: [
          ['date', 'paint', 'used ml'],
          ['2026-02-01', 'brick red', '0,4'],
        ],
      },
    ],
    [
      'else the pots',
      {
        pots: [
          ['paint', 'size ml', 'price'],
          ['brick red', '17', '2,8'],
          ['earth wash', '24', ''],
        ],
      },
    ],
  ] as const)('takes the decimal comma of %s', (_, sheets) => {
    expect(checkRow({ paint: 'brick red', 'used ml': '0.5' }, sheets).cells?.get('used ml')).toBe('0,5');
  });

  it('writes a name that begins like a formula so that it cannot run, and reads it back', () => {
    const pots = [...shortRows.pots, ['=1+1', '17']];
    const { cells } = checkRow({ paint: '=1+1', 'used ml': '1' }, { pots });
    expect(cells?.get('paint')).toBe("'=1+1");
    const log = [
      ['date', 'paint', 'used ml'],
      ['2026-02-01', cells?.get('paint') ?? '', '1'],
    ];
    expect(checkRow({ paint: 'brick red', 'used ml': '1' }, { pots, log }).elsewhere).toEqual([]);
  });

  it('may be questioned', () => {
    const { ofRow, cells } = checkRow({ paint: 'brick red', step: '1', 'used ml': '1', date: '2027-01-01' });
    expect(ofRow.map(({ code, severity }) => `${severity} ${code}`)).toEqual([
      'warning date-ahead',
      'warning log-no-progress',
    ]);
    expect(cells).toBeDefined();
  });
});

describe('a row that cannot be', () => {
  it.each([
    [{ paint: 'brik red', 'used ml': '1' }, 'unknown-paint', 'paint'],
    [{ paint: 'brick red', unit: 'others', 'used ml': '1' }, 'unknown-unit', 'unit'],
    [
      { paint: 'brick red', unit: 'first spears', step: '9', figures: '1', 'used ml': '1' },
      'unknown-step',
      'step',
    ],
    [{ paint: 'brick red', 'before g': '30', 'after g': '31' }, 'log-gains', 'after g'],
    [{ paint: 'brick red', 'used ml': '19' }, 'log-over-pot', 'used ml'],
    [{ paint: 'brick red', 'used ml': 'some' }, 'not-a-volume', 'used ml'],
    [{ paint: 'brick red', 'used ml': '-1' }, 'negative', 'used ml'],
  ])('%j is told', (typed, code, column) => {
    const { ofRow, elsewhere, cells } = checkRow(typed);
    expect(ofRow.map((one) => [one.code, one.column])).toEqual([[code, column]]);
    expect(elsewhere).toEqual([]);
    expect(cells).toBeUndefined();
  });

  it('stands below old rows, of which only errors count', () => {
    const log = [
      ['date', 'paint', 'before g', 'after g', 'used ml'],
      ['2026-02-01', 'brick red', '30', '', ''],
      ['2026-02-01', 'brik red', '', '', '1'],
    ];
    const { ofRow, elsewhere, cells } = checkRow({ paint: 'brick red', 'used ml': '1' }, { log });
    expect(ofRow).toEqual([]);
    expect(elsewhere.map(({ code, row }) => [code, row])).toEqual([['unknown-paint', 3]]);
    expect(cells).toBeUndefined();
  });

  it('has a value for which the log has no column', () => {
    const log = [
      ['paint', 'date'],
      ['brick red', '2026-02-01'],
    ];
    const { elsewhere } = checkRow({ paint: 'brick red', 'used ml': '1' }, { log });
    expect(elsewhere).toMatchObject([{ code: 'missing-column', file: 'log.csv', column: 'used ml' }]);
  });

  it('is checked together with the log of the workbook', () => {
    const weighed = {
      paint: 'brick red',
      'before g': '31.2',
      'after g': '30.1',
      unit: 'first spears',
      step: '1',
      figures: '10',
    };
    const log = [
      ['date', 'paint', 'unit', 'step', 'figures', 'before g', 'after g'],
      ['2026-03-01', 'brick red', 'first spears', '1', '15', '31.2', '30.1'],
      ['2026-03-01', 'brick red', 'first spears', '1', '10', '31.2', '30.1'],
    ];
    const { ofRow } = checkRow(weighed, { log }, 'beside.csv');
    expect(ofRow.map(({ code, file, row, expected }) => [code, file, row, expected])).toEqual([
      ['log-row-repeated', 'beside.csv', 2, 'row 3 of the log in log.csv'],
    ]);
  });
});

describe('the order of columns', () => {
  it('is that of the log, whose own columns stay blank', () => {
    const cells = new Map([
      ['date', 'd'],
      ['used ml', 'u'],
    ]);
    expect(placeCells({ headers: ['note', 'Used_ML', 'used ml', '', 'DATE'] }, cells)).toEqual([
      '',
      'u',
      '',
      '',
      'd',
    ]);
  });
});
