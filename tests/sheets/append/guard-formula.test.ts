import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { guardFormula, unguardFormula } from '../../../src/sheets/append/guard-formula.js';
import { tidyName } from '../../../src/sheets/check/fold-name.js';
import { dangerous, harmless } from '../../report/workbook/formula-starts.js';

/** Names come with single blanks, so that tabs and line ends cannot stand in one. */
const names = dangerous.map(tidyName).filter((name) => !/^\w+$|^Oat @|^Oat \+|^Oat -/.test(name));

describe('a name that a spreadsheet could run', () => {
  it.each(names)('%s gets an apostrophe in front', (name) => {
    const guarded = guardFormula(name);
    expect(guarded).not.toBe(name);
    expect(guarded.replaceAll("'", '')).toBe(name.replaceAll("'", ''));
    expect(guardFormula(guarded.slice(0, 1))).toBe(guarded.slice(0, 1));
  });

  it.each(harmless.filter((name) => !/^[-+]/.test(name)))('and "%s" stays as it is', (name) => {
    expect(guardFormula(name)).toBe(name);
  });

  it('comes back as it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(...'=+-@;\'" aß1＝'), maxLength: 12 }), (text) => {
        const name = tidyName(text);
        fc.pre(unguardFormula(name) === name);
        expect(unguardFormula(guardFormula(name))).toBe(name);
      }),
    );
  });
});
