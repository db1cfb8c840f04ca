import { expect, it } from 'vitest';
import { wordReadAs } from '../../src/cli/word-read-as.js';
import { check } from '../sheets/check/make-tables.js';

it('names each header that is not the own name of its column, sheet by sheet', () => {
  const { readAs } = check({
    pots: [
      ['Farbe', 'Inhalt (ml)', 'left', 'Preis (€)', 'shade'],
      ['brick red', 17, 'full', 3, 'x'],
      ['earth wash', 24, 'halb', 4, ''],
    ],
    army: [
      ['Einheit', 'figure', 'count'],
      ['first spears', 'spearman', 20],
    ],
  });
  expect(wordReadAs(readAs)).toBe(
    'Read from row 1 of pots.csv as pots: "Farbe" as paint, "Inhalt (ml)" as size ml, "Preis (€)" as price.\n' +
      'Read from row 1 of army.csv as army: "Einheit" as unit.\n',
  );
  expect(wordReadAs(check({}).readAs)).toBe('');
});
