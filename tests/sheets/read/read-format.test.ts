// Number formats of workbooks: what a spreadsheet would show of a number. Codes by ECMA-376 18.8.31, as three programs write them.
import { describe, expect, it } from 'vitest';
import { readFormat } from '../../../src/sheets/read/read-format.js';
import { longestSearched } from '../../count-letters.js';

describe('a number format', () => {
  it.each([
    [undefined, 'number'],
    ['General', 'number'],
    ['0.00', 'number'],
    ['_-* #,##0.00_-;-* #,##0.00_-', 'number'],
    ['0.00E+00', 'number'],
    ['[Red]0;[DBNum1]0', 'number'],
    ['@', 'number'],
    ['0%', 'percent'],
    ['0.00%;[Red]-0.00%', 'percent'],
    ['yyyy-mm-dd', 'date'],
    ['DD/MM/YYYY', 'date'],
    ['[$-407]d. mmmm yyyy', 'date'],
    ['h:mm AM/PM', 'date'],
    ['[h]:mm', 'date'],
    ['mm-dd-yy', 'date'],
  ])('%s is one of a %s without a unit', (code, kind) => {
    expect(readFormat(code)).toEqual({ kind, unit: '' });
  });

  it.each([
    ['#,##0.00\\ [$€-407]', '€'],
    ['[$$-409]#,##0.00;[RED]-[$$-409]#,##0.00', '$'],
    ['"$"#,##0.00', '$'],
    ['\\$#,##0.00', '$'],
    ['$#,##0.00', '$'],
    ['_-[$£-809]* #,##0.00_-;-[$£-809]* #,##0.00_-;_-[$£-809]* "-"??_-;_-@_-', '£'],
    ['_("$"* #,##0.00_);_("$"* \\(#,##0.00\\);_("$"* "-"??_);_(@_)', '$'],
    ['[$USD] #,##0.00', 'USD'],
    ['#,##0.00" EUR"', 'EUR'],
    ['#,##0.00\\ [$kr.-406]', 'kr'],
    ['0.0" ml"', 'ml'],
    ['0.0\\ \\m\\l', 'ml'],
    ['[>9]0\\ \\m\\l;0', 'ml'],
    ['0.0" fl oz"', 'fl oz'],
    ['0.0" fl. oz."', 'fl. oz'],
    ['0"oz"', 'oz'],
    ['0"%"', '%'],
    ['0.0" L"', 'L'],
  ])('%s writes %s beside it', (code, unit) => {
    expect(readFormat(code)).toEqual({ kind: 'number', unit });
  });

  it.each(['0" pots"', '"No. "0', '0;0" ml"', '[$-409]0.00', '0.00_$', '0" ml of "', '0"x"'])(
    '%s writes no unit beside it',
    (code) => {
      expect(readFormat(code)).toEqual({ kind: 'number', unit: '' });
    },
  );

  it('that goes on and on is not searched', () => {
    expect(longestSearched(() => readFormat('['.repeat(100_000)))).toBe(0);
    expect(readFormat(`${'0'.repeat(252)}"m"`)).toEqual({ kind: 'number', unit: '' });
  });
});
