import { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { letters } from '../../../../src/report/workbook/estimate/sheet-table.js';
import {
  either,
  isBelow,
  least,
  minus,
  most,
  num,
  over,
  plus,
  roundUp,
  square,
  type Term,
  times,
} from '../../../../src/report/workbook/estimate/write-formula.js';

const [two, three, five] = [num(2), num(3), num(5)];

/** Brackets stand only where they are needed; a formula library gives the same as the term. */
const terms: [string, Term, number][] = [
  ['2*(3+5)', times(two, plus(three, five)), 16],
  ['2+3*5', plus(two, times(three, five)), 17],
  ['5-(3-2)', minus(five, minus(three, two)), 4],
  ['5-2*3', minus(five, times(two, three)), -1],
  ['5/(2*3)', over(five, times(two, three)), 5 / 6],
  ['2*3/5', over(times(two, three), five), 1.2],
  ['5/(2+3)^2', over(five, square(plus(two, three))), 0.2],
  ['MIN(2,MAX(3,5-3))', least(two, most(three, minus(five, three))), 2],
  ['ROUNDUP(5/2,0)', roundUp(over(five, two)), 3],
  ['IF(2<3,5,1/0)', either(isBelow(two, three), five, over(num(1), num(0))), 5],
  ['0.000000001', num(1e-9), 1e-9],
  ['0', plus(), 0],
];

describe('terms', () => {
  it.each(terms)('%s', (formula, term, result) => {
    expect([term.formula, term.result]).toEqual([formula, result]);
    const engine = HyperFormula.buildFromArray([[`=${formula}`]], {
      licenseKey: 'gpl-v3',
      smartRounding: false,
    });
    expect(engine.getCellValue({ sheet: 0, row: 0, col: 0 })).toBeCloseTo(result, 12);
  });
});

// The columns of any spreadsheet.
it.each([
  [0, 'A'],
  [25, 'Z'],
  [26, 'AA'],
  [51, 'AZ'],
  [52, 'BA'],
  [701, 'ZZ'],
  [702, 'AAA'],
])('column %d is %s', (place, name) => {
  expect(letters(place)).toBe(name);
});
