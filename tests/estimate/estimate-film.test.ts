import { describe, expect, it } from 'vitest';
import { countSittings, onFigureMl, putOutMl, sprayTransfer } from '../../src/estimate/estimate-film.js';

/** Litres for a square metre of one wet film, through the tool's own film function. */
const litresPerM2 = (wetFilmMicrons: number): number =>
  onFigureMl({ areaCm2: 10_000, areaShare: 1, coats: 1, wetFilmMicrons, thin: 0 }) / 1000;

/** Wet film of a dry one: 100 DFT / VS% (ISO 3233-3:2015 and coatings data-sheet guides). */
const wetOf = (dryMicrons: number, solidsPercent: number): number => (100 * dryMicrons) / solidsPercent;

describe('spreading rate in m2/L is 10 VS% / DFT (ISO 3233-3:2015, data-sheet guides)', () => {
  it.each([
    [65, 125, 5.2],
    [50, 25, 20],
    [50, 50, 10],
    [50, 75, 6.7],
    [50, 100, 5],
    [60, 75, 8],
  ])('%i % solids at %i µm dry: %f', (solids, dry, m2PerLitre) => {
    expect(1 / litresPerM2(wetOf(dry, solids))).toBeCloseTo(m2PerLitre, 1);
  });

  it('60 % solids, 75 µm dry: 125 µm wet, and 30 % loss leaves 5.6 m2/L', () => {
    expect(wetOf(75, 60)).toBe(125);
    const loss = { transfer: 0.7, leftoverMl: 0, sittings: 1, painter: 1 };
    expect(1 / putOutMl(litresPerM2(125), loss)).toBeCloseTo(5.6, 10);
  });

  it('10 % thinner: 137.5 µm laid wet leave as much paint as 125 µm unthinned', () => {
    const film = { areaCm2: 10_000, areaShare: 1, coats: 1 };
    const thinned = onFigureMl({ ...film, wetFilmMicrons: 137.5, thin: 0.1 });
    expect(thinned).toBeCloseTo(onFigureMl({ ...film, wetFilmMicrons: 125, thin: 0 }), 10);
  });

  it('71 % solids at 125 µm dry: 176 µm wet', () => {
    expect(wetOf(125, 71)).toBeCloseTo(176, 0);
  });
});

describe('the US gallon (231 in3), handbook constant 1604 ft2 at 1 mil', () => {
  const cm2PerFt2 = 30.48 ** 2;
  const mlPerGallon = 231 * 2.54 ** 3;
  const ft2PerGallon = (mils: number): number => mlPerGallon / (litresPerM2(mils * 25.4) / 10) / cm2PerFt2;

  it.each([
    [1, 9625 / 6],
    [10, 160.417],
  ])('%f mil wet covers %f ft2', (mils, ft2) => {
    expect(ft2PerGallon(mils)).toBeCloseTo(ft2, 3);
  });

  it('1.5 mil dry at 42 % solids is 3.571 mil wet', () => {
    expect(wetOf(1.5, 42)).toBeCloseTo(3.571, 3);
  });
});

describe('loss', () => {
  it('0.1 ml on the figures at 50 % transfer with two drops left: 0.2 + 0.1 ml, a heavy hand 1.25 times', () => {
    const loss = { transfer: 0.5, leftoverMl: 0.05, sittings: 2 };
    expect(putOutMl(0.1, { ...loss, painter: 1 })).toBeCloseTo(0.3, 12);
    expect(putOutMl(0.1, { ...loss, painter: 1.25 })).toBeCloseTo(0.375, 12);
  });

  it.each([
    [25, 10, 3],
    [20, 10, 2],
    [1, 10, 1],
    [0, 10, 0],
  ])('%i figures in batches of %i: %i sittings', (n, b, k) => {
    expect(countSittings(n, b)).toBe(k);
  });

  it('a spray loses more on a small target, less on a large one, never under nothing', () => {
    const spray = { fullTargetCm2: 18, least: 0.2, most: 2, mostTransfer: 1 };
    expect(sprayTransfer(0.08, 18, spray)).toBeCloseTo(0.08, 12);
    expect(sprayTransfer(0.08, 4.5, spray)).toBeCloseTo(0.04, 12);
    expect(sprayTransfer(0.08, 0.01, spray)).toBeCloseTo(0.016, 12);
    expect(sprayTransfer(0.08, 1000, spray)).toBeCloseTo(0.16, 12);
    expect(sprayTransfer(0.7, 1000, spray)).toBe(1);
  });

  // 0.35 x sqrt(72 / 18) = 0.7; 0.4 x 2 = 0.8; 0.41 x 2 = 0.82.
  it.each([
    [0.35, 72, 0.7],
    [0.4, 72, 0.8],
    [0.41, 72, 0.8],
    [0.41, 68, 0.41 * Math.sqrt(68 / 18)],
    [0.85, 72, 0.85],
    [0.85, 4.5, 0.425],
  ])(
    'an airbrush of transfer %f on %f cm2 lays %f: a large target raises it to 0.8 at the most',
    (transfer, cm2, lays) => {
      const spray = { fullTargetCm2: 18, least: 0.2, most: 2, mostTransfer: 0.8 };
      expect(sprayTransfer(transfer, cm2, spray)).toBeCloseTo(lays, 12);
    },
  );
});
