// What painters say, held against the reckoning. Every fact here is common practice, without a source.
import { describe, expect, it } from 'vitest';
import { type CoatTrial, countOver } from './count-over.js';

const grey = '#8d8f8c';
const darks = { soot: '#1c1c1e', peat: '#5b3a26' };
const bone = '#e3d6b4';
const over = (hex: string, under: string, more: Partial<CoatTrial> = {}): Promise<number | undefined> =>
  countOver({ over: hex, under, opacity: 'weak', ...more });

describe('common practice', () => {
  it.each([
    ['yellow', '#f3c63f'],
    ['red', '#c2262e'],
    ['leaf green', '#7e9b3a'],
    ['deep green', '#2f5d4a'],
    ['blue', '#23395d'],
    ['leather', '#8a6a45'],
    ['flesh', '#d9a07e'],
  ])('a solid colour of fair opacity takes two coats over a grey primer: %s', async (_, hex) => {
    expect(await over(hex, grey, { opacity: 'fair' })).toBe(2);
  });

  it.each(['strong', 'fair', 'weak'] as const)(
    'greys and earths cover no worse than greens and yellows of the same opacity: %s',
    async (opacity) => {
      const coats = (hex: string) => over(hex, grey, { opacity });
      const plain = Math.max(...(await Promise.all(['#7a7d80', '#8a6a45'].map(coats))).map(Number));
      const bright = Math.min(...(await Promise.all(['#7e9b3a', '#f3c63f'].map(coats))).map(Number));
      if (opacity === 'weak') expect(plain).toBeLessThan(bright);
      else expect(plain).toBeLessThanOrEqual(bright);
    },
  );

  it('three coats of a fair colour mean too much water', async () => {
    expect(await over('#c2262e', grey, { opacity: 'fair' })).toBe(2);
    expect(await over('#c2262e', grey, { opacity: 'fair', thin: 1 })).toBe(3);
  });

  it.each([
    ['yellow', '#f3c63f'],
    ['white', '#f4f4f0'],
  ])('a pale bone-coloured coat beneath saves coats of %s', async (_, hex) => {
    const overBone = Number(await over(hex, bone));
    for (const dark of Object.values(darks)) expect(Number(await over(hex, dark))).toBeGreaterThan(overBone);
  });

  it('of red it saves none in this reckoning, which knows only how far apart two colours are: bone is further off than dark', async () => {
    expect(await over('#c2262e', bone)).toBe(3);
    expect(await over('#c2262e', darks.soot)).toBe(3);
    // A pink is near enough.
    expect(await over('#c2262e', '#e07a6a')).toBe(2);
  });

  it.each(['strong', 'fair', 'weak'] as const)(
    'metallics of %s opacity cover pale colours in one coat',
    async (opacity) => {
      for (const pale of [bone, '#f2f2ee', '#c9c9c4']) {
        expect(await over('#7b8087', pale, { opacity, kind: 'metallic' })).toBe(1);
        expect(await over('#a5803b', pale, { opacity, kind: 'metallic' })).toBe(1);
      }
    },
  );

  it('light translucent highlights need going over twice', async () => {
    expect(await over('#e6bd9f', '#d9a07e', { layer: 'midtone' })).toBe(2);
    expect(await over('#4f7f6a', '#2f5d4a', { layer: 'midtone' })).toBe(2);
  });
});
