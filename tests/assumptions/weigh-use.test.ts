import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { gramsPerUsableMl, isWeighed, usedErrorMl, usedMlOf } from '../../src/assumptions/weigh-use.js';
import type { LogRow } from '../../src/model/sheets.js';
import { makePaint } from '../make-sheets.js';

const row = (more: Partial<LogRow>): LogRow => ({ row: 2, date: '2026-03-01', paint: 'Slate', ...more });

describe('what a log row used', () => {
  it.each<[string, Partial<LogRow>, number, number]>([
    ['31.2 g before, 27.6 g after, 1.2 g/ml: 3 ml', { beforeG: 31.2, afterG: 27.6 }, 1.2, 3],
    ['the same of a heavy metallic, 1.5 g/ml', { beforeG: 31.2, afterG: 27.6 }, 1.5, 2.4],
    ['a volume', { usedMl: 2.5 }, 1.2, 2.5],
    ['weights before a volume', { beforeG: 31.2, afterG: 27.6, usedMl: 9 }, 1.2, 3],
    ['one weight alone is none', { beforeG: 31.2, usedMl: 9 }, 1.2, 9],
    ['an empty batch: 0 ml are an amount', { beforeG: 31.2, afterG: 31.2 }, 1.2, 0],
  ])('%s', (_, given, density, ml) => {
    expect(usedMlOf(row(given), density)).toBeCloseTo(ml, 12);
  });

  it.each([{}, { beforeG: 31.2 }, { afterG: 27.6 }])('is not known of a row with %j', (given) => {
    expect(usedMlOf(row(given), 1.2)).toBeUndefined();
  });

  it('is weighed with two weights', () => {
    expect(isWeighed(row({ beforeG: 3, afterG: 2 }))).toBe(true);
    expect(isWeighed(row({ beforeG: 3 }))).toBe(false);
    expect(isWeighed(row({ usedMl: 3 }))).toBe(false);
  });
});

describe('its error', () => {
  const measure = { densityGPerMl: 1.2, sizeMl: 17 };
  it('is that of two readings of a scale of 0.3 g: 0.3536 ml', () => {
    expect(usedErrorMl(row({ beforeG: 31.2, afterG: 27.6 }), measure, registry)).toBeCloseTo(0.3535534, 7);
  });

  it('is 5 % of the largest pot for a volume: 0.85 ml', () => {
    expect(usedErrorMl(row({ usedMl: 3 }), measure, registry)).toBeCloseTo(0.85, 12);
  });

  it('follows the painter’s own scale', () => {
    const scale = registry.get('error of a scale');
    const fine = new Map(registry).set('error of a scale', {
      ...(scale ?? { name: '', low: 0, high: 0, unit: '', mark: 'yours', source: '' }),
      likely: 0.01,
    });
    expect(usedErrorMl(row({ beforeG: 31.2, afterG: 27.6 }), measure, fine)).toBeCloseTo(0.0117851, 7);
  });
});

describe('grams a ml', () => {
  it('are the painter’s own, else those of the kind; a can loses more with each usable ml', () => {
    const of = (more: Parameters<typeof makePaint>[0], container: 'dropper' | 'can' = 'dropper') =>
      gramsPerUsableMl(makePaint(more), container, registry);
    expect(of({ paint: 'Slate', densityGPerMl: 1.37 })).toBe(1.37);
    expect(of({ paint: 'Slate' })).toBe(1.2);
    expect(of({ paint: 'Shade', kind: 'wash' })).toBe(1);
    // From a can two fifths of what leaves it are propellant, or stay in it: 0.8 / 0.6.
    expect(of({ paint: 'Chalk', kind: 'primer' }, 'can')).toBeCloseTo(1.3333, 4);
  });
});
