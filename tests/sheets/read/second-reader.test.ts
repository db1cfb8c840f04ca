// exceljs as a second reader: whatever it writes and reads back, our own reader must read alike.
import exceljs, { type CellValue } from 'exceljs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readWorkbook } from '../../../src/sheets/read/read-workbook.js';

/** Characters that XML 1.0 (2.2) can hold; exceljs writes no others, and reads escapes of them differently. */
const text = fc
  .string({ unit: 'binary', maxLength: 12 })
  .map((raw) => raw.replace(/[^\t\n\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]|_x/gu, ''));

/** exceljs gives no result of a formula that is false, empty or nought. */
const result = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.constant(true), text);

const value: fc.Arbitrary<CellValue> = fc.oneof(
  { weight: 4, arbitrary: text },
  { weight: 2, arbitrary: fc.double({ noNaN: true, noDefaultInfinity: true }) },
  fc.integer(),
  fc.boolean(),
  fc.date({ min: new Date('1900-03-01'), max: new Date('2100-01-01'), noInvalidDate: true }),
  fc.constantFrom('#N/A' as const, '#DIV/0!' as const).map((error) => ({ error })),
  fc
    .array(text, { minLength: 1, maxLength: 3 })
    .map((runs) => ({ richText: runs.map((run) => ({ text: run })) })),
  text
    .filter((link) => link.trim() !== '')
    .map((link) => ({ text: link, hyperlink: 'https://example.org/' })),
  result
    .filter((of) => of !== '' && of !== 0)
    .map((of) => ({ formula: 'A1+1', result: of, date1904: false })),
  fc.constant(null),
);

/** A value as a cell of ours, by what exceljs says of it. */
function meant(of: CellValue): unknown {
  if (of === null || of === undefined) return '';
  if (of instanceof Date) return { kind: 'date', iso: of.toISOString().slice(0, 10) };
  if (typeof of === 'string') return of.trim();
  if (typeof of !== 'object') return of;
  if ('error' in of) return { kind: 'broken', why: 'error value', shown: of.error };
  if ('richText' in of)
    return of.richText
      .map((run) => run.text)
      .join('')
      .trim();
  if ('hyperlink' in of) return of.text.trim();
  return meant(of.result as CellValue);
}

it('reads what exceljs reads', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.array(value, { maxLength: 6 }), { maxLength: 6 }), async (rows) => {
      const written = new exceljs.Workbook();
      const sheet = written.addWorksheet('pots');
      sheet.addRow(['paint']);
      for (const row of rows) sheet.addRow(row);
      const bytes = Buffer.from(await written.xlsx.writeBuffer());

      const second = new exceljs.Workbook();
      await second.xlsx.load(bytes as never);
      const expected = new Map<string, unknown>();
      second.getWorksheet('pots')?.eachRow((row, number) => {
        row.eachCell((cell, column) => {
          const cellMeant = meant(cell.value);
          if (cellMeant !== '') expected.set(`${number}:${column}`, cellMeant);
        });
      });

      const { grids, problems } = await readWorkbook(bytes, 'army.xlsx');
      expect(problems).toEqual([]);
      const found = new Map(
        (grids[0]?.rows ?? []).flatMap(({ row, cells }) =>
          cells.flatMap((cell, at) => (cell === '' ? [] : [[`${row}:${at + 1}`, cell] as const])),
        ),
      );
      expect(found).toEqual(expected);
    }),
    { seed: 6, numRuns: 100 },
  );
});
