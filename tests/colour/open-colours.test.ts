import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openColours } from '../../src/colour/open-colours.js';
import type { Lab } from '../../src/model/colour.js';
import { makePaint } from '../make-sheets.js';
import { sharmaPairs } from './sharma-pairs.js';

const lab = (l: number, a: number, b: number): Lab => ({ mode: 'lab65', l, a, b });

const palette = [
  makePaint({ paint: 'Chalk', hex: '#ffffff' }),
  makePaint({ paint: 'Soot', hex: '#000000' }),
  makePaint({ paint: 'Nameless' }),
  makePaint({ paint: 'Slack medium', kind: 'medium', hex: '#00ff00' }),
];
const colours = await openColours(palette);

describe('CIEDE2000', () => {
  // Sharma, Wu, Dalal 2005, Color Res Appl 30:21, table 1, rounded there to four digits.
  it.each(sharmaPairs)('(%f %f %f) and (%f %f %f): %f, both ways round', (...pair) => {
    const [l1, a1, b1, l2, a2, b2, published] = pair;
    const [one, other] = [lab(l1, a1, b1), lab(l2, a2, b2)];
    expect(Math.abs(colours.between(one, other) - published)).toBeLessThan(5e-5);
    expect(Math.abs(colours.between(other, one) - published)).toBeLessThan(5e-5);
  });

  it('has all 34 pairs', () => {
    expect(sharmaPairs).toHaveLength(34);
  });
});

describe('sRGB to Lab under D65', () => {
  it.each([
    ['#ffffff', 100, 0, 0],
    ['#000000', 0, 0, 0],
    // 119/255 is (0.1845) in linear light; L = 116 x 0.1845^(1/3) - 16 (CIE 15, IEC 61966-2-1), by hand.
    ['#777777', 50.03, 0, 0],
  ])('%s is L %f a %f b %f', async (hex, l, a, b) => {
    const one = (await openColours([makePaint({ paint: 'one', hex })])).labOf('one');
    expect(one?.l).toBeCloseTo(l, 2);
    expect(one?.a).toBeCloseTo(a, 2);
    expect(one?.b).toBeCloseTo(b, 2);
  });

  // colorjs.io, a second library that shares no code with the first. They differ in the digits of the white point.
  it('is what colorjs.io makes of it, on any hex', async () => {
    const hexes = fc.sample(
      fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`),
      { numRuns: 2000, seed: 7 },
    );
    const many = await openColours(hexes.map((hex) => makePaint({ paint: hex, hex })));
    for (const hex of hexes) {
      const [l, a, b] = new Color(hex).to('lab-d65').coords;
      const mine = many.labOf(hex);
      expect(Math.abs((mine?.l ?? Number.NaN) - (l ?? 0)), hex).toBeLessThan(0.02);
      expect(Math.abs((mine?.a ?? Number.NaN) - (a ?? 0)), hex).toBeLessThan(0.02);
      expect(Math.abs((mine?.b ?? Number.NaN) - (b ?? 0)), hex).toBeLessThan(0.02);
    }
  });
});

describe('paints', () => {
  it('black and white are 100 apart; without hex there is no distance', () => {
    expect(colours.distance('Chalk', 'Soot')).toBeCloseTo(100, 3);
    expect(colours.distance('Chalk', 'Nameless')).toBeUndefined();
    expect(colours.distance('Nobody', 'Chalk')).toBeUndefined();
  });

  it('have no colour where nothing has a hex', async () => {
    const none = await openColours([makePaint({ paint: 'Nameless' })]);
    expect(none.labOf('Nameless')).toBeUndefined();
    expect(none.labOfMix([{ paint: 'Nameless', share: 1 }])).toBeUndefined();
    expect(none.between(lab(1, 0, 0), lab(1, 0, 0))).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('a mix', () => {
  it('is the mean of Lab by shares', () => {
    const grey = colours.labOfMix([
      { paint: 'Chalk', share: 0.75 },
      { paint: 'Soot', share: 0.25 },
    ]);
    expect(grey?.l).toBeCloseTo(75, 4);
  });

  it('takes no colour from a medium, and is unknown with one colour unknown', () => {
    const thinned = colours.labOfMix([
      { paint: 'Chalk', share: 0.5 },
      { paint: 'Slack medium', share: 0.5 },
    ]);
    expect(thinned?.l).toBeCloseTo(100, 4);
    expect(colours.labOfMix([{ paint: 'Slack medium', share: 1 }])).toBeUndefined();
    const half = [
      { paint: 'Chalk', share: 0.5 },
      { paint: 'Nameless', share: 0.5 },
    ];
    expect(colours.labOfMix(half)).toBeUndefined();
  });
});
