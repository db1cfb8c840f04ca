import { describe, expect, it } from 'vitest';
import { pairUnits } from '../../src/model/pair-units.js';
import { makeUnit } from '../make-sheets.js';

const pairsOf = (...army: readonly [scheme: string, figure: string][]): string[] =>
  pairUnits(army.map(([scheme, figure], at) => makeUnit({ unit: `unit ${at}`, scheme, figure }))).map(
    (pair) => `${pair.scheme}: ${pair.figure}`,
  );

describe('pairs of scheme and figure', () => {
  it('stand once each, by scheme and figure as they first come', () => {
    expect(pairsOf(['moss', 'ram'], ['clay', 'ram'], ['moss', 'archer'], ['moss', 'ram'])).toEqual([
      'moss: ram',
      'moss: archer',
      'clay: ram',
    ]);
  });

  it('are kept apart whatever the names hold', () => {
    expect(pairsOf(['a\nb', 'c'], ['a', 'b\nc'])).toHaveLength(2);
  });

  it('of no army are none', () => {
    expect(pairsOf()).toEqual([]);
  });
});
