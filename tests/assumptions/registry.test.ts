import { describe, expect, it } from 'vitest';
import { assume, likely, logSpread, z90 } from '../../src/assumptions/look-up.js';
import { overrideAssumptions } from '../../src/assumptions/override-assumptions.js';
import { registry } from '../../src/assumptions/registry.js';
import { marks } from '../../src/model/assumption.js';
import { builds } from '../../src/model/words.js';
import { bodyParts } from '../../src/model/zones.js';

const value = (name: string): number => likely(registry, name);

describe('body surface of the chosen person, 170 cm and 70 kg, by published formulas', () => {
  const squareCm = (m2: number): number => m2 * 10_000;

  it('is Du Bois & Du Bois 1916: 0.007184 H^0.725 W^0.425', () => {
    expect(squareCm(0.007184 * 170 ** 0.725 * 70 ** 0.425)).toBeCloseTo(18097.07801753247, 6);
    expect(value('skin of a person')).toBeCloseTo(18097.07801753247, 4);
  });

  it.each([
    ['Mosteller 1987: sqrt(H W / 3600)', Math.sqrt((170 * 70) / 3600), 1.818118685772619],
    ['Haycock 1978: 0.024265 H^0.3964 W^0.5378', 0.024265 * 170 ** 0.3964 * 70 ** 0.5378, 1.8256771247769754],
  ])('%s is within one part in a hundred', (_, m2, published) => {
    expect(m2).toBeCloseTo(published, 12);
    expect(Math.abs(squareCm(m2) / value('skin of a person') - 1)).toBeLessThan(0.01);
  });
});

describe('shares of the body', () => {
  const share = (...names: string[]): number => names.reduce((sum, name) => sum + value(`share ${name}`), 0);

  it('sum to 100 (Lund & Browder 1944)', () => {
    expect(share(...bodyParts)).toBe(100);
  });

  // Wallace 1951, Lancet: the rule of nines, which counts the buttocks with the back trunk.
  it.each([
    ['head and neck', share('head', 'neck'), 9],
    ['each arm', share('upper arms', 'forearms', 'hands') / 2, 9],
    ['each leg', share('thighs', 'lower legs', 'feet') / 2, 18],
    ['back trunk', share('back trunk', 'buttocks'), 18],
    ['perineum', share('groin'), 1],
  ])('%s is within 2 points of the rule of nines', (_, chart, nines) => {
    expect(Math.abs(chart - nines)).toBeLessThanOrEqual(2);
  });

  it('leaves the front trunk 5 points under the rule of nines, which rounds it up to two nines', () => {
    expect(18 - share('front trunk')).toBe(5);
  });
});

describe('trade values', () => {
  it('two coats, five and thirty minutes (common practice)', () => {
    expect(value('base coat coats')).toBe(2);
    expect(value('base coat dries')).toBe(5);
    expect(value('wash dries')).toBe(30);
  });

  it('a wash goes over everything, undiluted; only a glaze is thinned (common practice)', () => {
    expect(value('wash area')).toBe(100);
    expect(value('wash thin')).toBe(0);
    const thinned = [...registry.values()].filter(
      ({ name, likely: parts }) => / thin$/.test(name) && parts > 0,
    );
    expect(thinned.map(({ name }) => name)).toEqual(['glaze thin']);
  });

  it('a palette keeps one to four drops (from memory): 20 drops a ml (USP <1101>, within 10 %)', () => {
    const { low, likely: middle, high } = assume(registry, 'brush leftover');
    const drops = [low, middle, high].map((ml) => ml * 20);
    expect(drops).toEqual([0.8, 1.6, 4].map((one) => expect.closeTo(one, 9)));
  });

  it('a can gives more than half of its label, a third to a half of which is propellant (from memory)', () => {
    const { low, likely: middle, high } = assume(registry, 'usable share of a can');
    // What stays in the can comes off one half to two thirds.
    expect([low < 1 / 2, middle > 1 / 2, middle < 2 / 3, high < 3 / 4]).toEqual([true, true, true, true]);
  });
});

describe('where values come from', () => {
  const origin = (name: string) => {
    const { mark, source } = assume(registry, name);
    return `${mark}: ${source}`;
  };

  it('the person is chosen, only what is reckoned from it is published', () => {
    expect(origin('stature of a person')).toMatch(/^from memory: .*chosen/);
    expect(origin('skin of a person')).toMatch(/^from memory: .*chosen; the formula is published.*Du Bois/);
    expect(origin('share face')).toMatch(/^from memory: /);
    const published = [...registry.values()].filter(({ mark }) => mark === 'published');
    expect(published.map(({ name }) => name)).toEqual([
      'eye level',
      ...bodyParts.map((part) => `share ${part}`),
    ]);
  });

  // Measured: three bare bodies, three clothed, nine armoured, eleven with shield and weapon, ten riders, one barded,
  // five hulls, three engines.
  it.each([
    ['dress bare', /human of Debian’s assimp-testmodels \(BSD-3\), male and female.* \(CC0\), date unknown/],
    ['dress clothed', /three game models, free licences, date unknown/],
    ['dress armoured', /nine soldiers without kit, free licences, date unknown/],
    ['kit weapon', /eleven soldiers with .*, free licences, date unknown/],
    ['kit small shield', /eleven soldiers with .*, free licences, date unknown/],
    ['kit bow', /free licences, number and date unknown/],
    ['kit horse', /ten riders, .*, free licences, date unknown/],
    ['kit barding', /one barded rider, free licence, date unknown/],
    ['relief closed', /five closed hulls, licences and date unknown/],
    ['relief open frame', /three engines, licences and date unknown/],
  ])('%s names its models: how many, their licence, what is not known', (name, says) => {
    expect(origin(name)).toMatch(/^open models: /);
    expect(origin(name)).toMatch(says);
  });

  it('no model was measured for a build but the giant’s, nor for a cloak; true scale is no assumption at all', () => {
    for (const build of builds.filter((one) => one !== 'true scale' && one !== 'giant')) {
      expect(origin(`build ${build}`), build).toMatch(/^from memory: .*no model was measured/);
    }
    expect(origin('kit cloak')).toMatch(/^from memory: no model was measured/);
    expect(registry.has('build true scale')).toBe(false);
  });

  it('from where on a difference is seen is from memory, though its formula is published', () => {
    expect(origin('just visible difference')).toMatch(/^from memory: CIEDE2000 is published/);
  });

  it('paces are from memory, set to meet common practice', () => {
    expect(origin('brush pace')).toMatch(/^from memory: set to meet the 30 to 40 minutes .* common practice/);
  });
});

describe('every entry', () => {
  it('is in order, with a known mark and where it comes from', () => {
    for (const { name, low, likely: middle, high, mark, source } of registry.values()) {
      expect(low, name).toBeLessThanOrEqual(middle);
      expect(middle, name).toBeLessThanOrEqual(high);
      expect(marks, name).toContain(mark);
      expect(source, name).not.toBe('');
    }
  });

  it('has a spread of a two-piece lognormal: 30 / 50 / 80 µm', () => {
    const below = Math.log(50 / 30) / z90;
    const above = Math.log(80 / 50) / z90;
    expect(logSpread(assume(registry, 'brush wet film'))).toBeCloseTo((below + above) / 2, 12);
    expect(logSpread(assume(registry, 'wash coats'))).toBe(0);
  });

  it('is asked for by a name that exists', () => {
    expect(() => likely(registry, 'brush weight')).toThrow('brush weight');
  });
});

describe("a painter's own values", () => {
  it('move low and high in proportion, or take their own', () => {
    const own = overrideAssumptions(registry, [
      { name: 'brush wet film', likely: 60 },
      { name: 'brush transfer', likely: 0.6, low: 0.5, high: 0.7 },
      { name: 'wash thin', likely: 0.5 },
      { name: 'no such thing', likely: 1 },
    ]);
    expect(assume(own, 'brush wet film')).toMatchObject({ low: 36, likely: 60, high: 96, mark: 'yours' });
    expect(assume(own, 'brush transfer')).toMatchObject({ low: 0.5, likely: 0.6, high: 0.7 });
    expect(assume(own, 'wash thin')).toMatchObject({ low: 0.5, likely: 0.5, high: 0.5 });
    expect(own.size).toBe(registry.size);
  });
});

describe('shares that a painter changes', () => {
  it('a transfer never passes the whole of the paint', () => {
    const own = overrideAssumptions(registry, [{ name: 'brush transfer', likely: 0.9 }]);
    expect(assume(own, 'brush transfer')).toMatchObject({ low: expect.closeTo(0.54, 10), high: 1 });
  });
});
