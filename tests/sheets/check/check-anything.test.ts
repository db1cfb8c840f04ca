// Whatever stands in the cells, the checks answer: with rows, or with problems at cells that exist.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { sheetNames } from '../../../src/model/words.js';
import { wordProblem } from '../../../src/problems/word-problem.js';
import { checkTables } from '../../../src/sheets/check/check-tables.js';
import { columns } from '../../../src/sheets/columns/columns.js';
import type { Cell, Table } from '../../../src/sheets/table.js';

const likely: readonly Cell[] = [
  '',
  '1',
  '17',
  '2.5',
  '1,234',
  '60%',
  '7 ml',
  '20 g',
  'full',
  'brick red',
  'Brick  Red',
  'spearman',
  'red line',
  'whole',
  'tunic',
  'head 60%, head 60%',
  'base coat',
  'wash',
  'none',
  'weapon, horse',
  'round 25',
  '90x30x20',
  '2026-03-14',
  '3/4/2026',
  'yes',
  '$3.50',
  '3.50',
  'currency',
  'EUR',
  '30 / 50 / 80',
  'painter',
  '__proto__',
  'constructor',
  '</script>',
  '=1+1',
];

const cell: fc.Arbitrary<Cell> = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom(...likely) },
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.double(),
  fc.boolean(),
  fc.constant({ kind: 'date', iso: '2026-03-14' } as const),
  fc.constantFrom('error value' as const, 'formula without result' as const).map((why) => ({
    kind: 'broken' as const,
    why,
    shown: '#N/A',
  })),
);

const table = (sheet: Table['sheet']): fc.Arbitrary<Table> => {
  const known = columns[sheet].map(({ header }) => header);
  return fc
    .tuple(
      fc.subarray(known),
      fc.array(fc.string({ maxLength: 8 }), { maxLength: 2 }),
      fc.array(fc.array(cell), { maxLength: 5 }),
    )
    .map(([headers, own, rows]) => ({
      sheet,
      file: `${sheet}.csv`,
      headerRow: 1,
      headers: [...headers, ...own],
      rows: rows.map((cells, index) => ({ row: index + 2, cells })),
    }));
};

const manyTables = fc.tuple(...sheetNames.map((sheet) => fc.option(table(sheet), { nil: undefined })));

it('answers to any tables, each problem in one line of words', () => {
  fc.assert(
    fc.property(manyTables, (tables) => {
      const read = { tables: tables.filter((one) => one !== undefined), problems: [] };
      const { sheets, problems } = checkTables(read, { assumptions: registry, today: '2026-11-02' });
      if (problems.some(({ severity }) => severity === 'error')) expect(sheets).toBeUndefined();
      for (const one of problems) expect(wordProblem(one)).toMatch(/^\w+\.csv.*: .+\. \p{Lu}.*\.$/su);
    }),
    { numRuns: 500 },
  );
});
