import { expect, it } from 'vitest';
import { headerKey, nameKey } from '../../src/sheets/match-header.js';

it('gives a word that is its own key the key that it has beside a blank, with each of the first 65,536 characters', () => {
  const codes = Array.from({ length: 0x10000 }, (_, code) => code);
  const differing = codes.filter((code) => {
    const word = `A${String.fromCodePoint(code)}b`;
    return nameKey(word) !== nameKey(` ${word}`) || headerKey(word) !== headerKey(`(${word})`);
  });
  expect(differing).toEqual([]);
});
