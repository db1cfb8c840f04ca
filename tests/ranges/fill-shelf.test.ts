// How often an order is enough, on armies written down by hand.
import { describe, expect, it } from 'vitest';
import { chanceMet } from '../../src/ranges/fill-shelf.js';
import { onlyPaints } from '../../src/ranges/sum-up-promise.js';
import { makeDrawn, makeLine } from './make-drawn.js';

describe('how often an order lets the army finish', () => {
  const drawn = makeDrawn({ Slate: [-1, 2, 4, 6], Rust: [3, -1, -1, 3] });
  it.each([
    ['with nothing bought: in no draw is nothing lacking', [], 0],
    ['with 4 ml of Slate: the second and the third draw', [makeLine(1, 100, { Slate: 4 })], 0.5],
    ['with 3 ml of Rust as well: all but the last', [makeLine(1, 100, { Slate: 4, Rust: 3 })], 0.75],
    ['with two sets', [makeLine(2, 100, { Slate: 4, Rust: 3 })], 1],
    ['with a paint that nothing needs', [makeLine(2, 100, { Chalk: 4 })], 0],
  ])('%s', (_, lines, chance) => {
    expect(chanceMet(drawn, { lines }).chance).toBe(chance);
  });

  it('looks at the paints that are meant', () => {
    const slate = onlyPaints(drawn, (paint) => paint === 'Slate');
    expect(chanceMet(slate, { lines: [] }).chance).toBe(0.25);
  });
});
