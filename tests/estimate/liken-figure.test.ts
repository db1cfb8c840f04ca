import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { likenFigure } from '../../src/estimate/liken-figure.js';

// A person 30 mm high has its eyes at 0.936 x 30 = 28.08 mm, which are heroic: bare skin 18097.078 x (28.08 / 1591.2)^2 =
// 5.636 cm2; clothed 5.636 x 1.2 x 1.26 x 1.1 = 9.374, a round shield 5.636 x 0.55 x 1.1 = 3.410.
describe('whom a surface is like', () => {
  it.each([
    [9.374, 'a clothed person', 1],
    [9.374 + 3.41, 'a clothed person with a round shield', 1],
    [1.01 * 12.784, 'a clothed person with a round shield', 1.01],
    [5.636 * 0.92 * 1.26 * 1.1, 'a bare person', 1],
    [
      5.636 * (1.35 * 1.26 + 0.15 + 0.85 + 0.6) * 1.1,
      'an armoured person with a weapon and a large shield and a cloak',
      1,
    ],
  ])('%f cm2 at 30 mm: %s', (areaCm2, words, ratio) => {
    const like = likenFigure(areaCm2, 30, registry);
    expect(like).toMatchObject({ words, ratio: expect.closeTo(ratio, 2) });
  });

  it('goes with the square of the height where the build stays', () => {
    expect(likenFigure((9.374 * 4) / 1.26, 60, registry)).toMatchObject({
      words: 'a clothed person',
      ratio: expect.closeTo(1, 2),
    });
  });
});
