import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardText } from '../../../src/report/workbook/guard-text.js';
import { dangerous, harmless } from './formula-starts.js';

/** What a spreadsheet takes for a formula, written apart from the guard: by characters, not by pattern. */
function couldRun(text: string): boolean {
  if (/^[+-]?\d+([.,]\d+)?$/.test(text)) return false;
  if ('\t\r\n'.includes(text.charAt(0)) && text !== '') return true;
  return text
    .split(/[;\t\r\n]/)
    .some((cell) => '=+-@＝＋－＠'.includes(cell.trim().charAt(0)) && cell.trim() !== '');
}

describe('guardText', () => {
  it.each(dangerous)('guards %j', (text) => {
    expect(couldRun(guardText(text))).toBe(false);
    expect(guardText(text)).toContain("'");
    expect(guardText(text).replaceAll("'", '')).toBe(text.replaceAll("'", ''));
  });

  it.each(harmless)('leaves %j alone', (text) => {
    expect(guardText(text)).toBe(text);
  });

  it('leaves nothing that could run, whatever the text', () => {
    const pieces = fc.constantFrom(
      '=',
      '+',
      '-',
      '@',
      '＝',
      '＋',
      '－',
      '＠',
      '\t',
      '\r',
      '\n',
      ' ',
      ';',
      'a',
      '1',
      '.',
      "'",
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 8 }), (some) => !couldRun(guardText(some.join('')))),
      { numRuns: 2000, seed: 7 },
    );
  });

  it('is stable: a guarded text needs no second guard', () => {
    for (const text of dangerous) expect(guardText(guardText(text))).toBe(guardText(text));
  });
});
