import { describe, expect, it } from 'vitest';
import { wordLeftAlone } from '../../src/cli/word-left-alone.js';

const army = { file: 'army.csv', sheet: 'army', headers: ['done step', 'prio'] } as const;
const pots = { file: 'army.xlsx', sheet: 'pots', headers: ['shade', 'a\u001b[31m', 'x'.repeat(50)] } as const;

describe('columns of the painter’s own', () => {
  it('are named in one line, by file or by sheet of a workbook', () => {
    expect(wordLeftAlone([army], 9)).toBe(
      'Left alone, as columns of your own: army.csv "done step", "prio".\n',
    );
    expect(wordLeftAlone([pots, army], 9)).toBe(
      `Left alone, as columns of your own: sheet pots "shade", "a\\u001b[31m", "${'x'.repeat(40)} ..."; army.csv "done step", "prio".\n`,
    );
  });

  it('are counted where they are too many', () => {
    expect(wordLeftAlone([army, pots], 3)).toBe(
      'Left alone, as columns of your own: army.csv "done step", "prio"; sheet pots "shade"; and 2 more.\n',
    );
    expect(wordLeftAlone([army, pots], 1)).toBe(
      'Left alone, as columns of your own: army.csv "done step"; and 4 more.\n',
    );
  });

  it('are not spoken of where there are none', () => {
    expect(wordLeftAlone([], 6)).toBe('');
  });
});
