// Colours of layers in bars and keys: an order by lightness, a hue for each way of working, told apart by everybody.
import { readFileSync } from 'node:fs';
import {
  type Color,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  lab65,
  lch65,
  lrgb,
  wcagContrast,
} from 'culori';
import { describe, expect, it } from 'vitest';
import { usualMethod } from '../../../src/assumptions/layers.js';
import { type Layer, layers, type Method } from '../../../src/model/words.js';

const read = (name: string): string =>
  readFileSync(new URL(`../../../templates/page/${name}.css`, import.meta.url), 'utf8');

/** By day, then by night: a stylesheet is cut where the page turns dark. */
const halves = (name: string): string[] => read(name).split('@media screen and (prefers-color-scheme: dark)');

const papers = halves('1-pigments').map((css) => /--paper: (#[0-9a-f]{6})/.exec(css)?.[1] ?? '');
const fillsOf = (css: string): string[] =>
  layers.map((layer) => {
    const key = layer.replaceAll(' ', '-');
    return new RegExp(`path\\.${key} \\{ fill: (#[0-9a-f]{6}); \\}`).exec(css)?.[1] ?? '';
  });
const palettes = halves('6-layers').map((css, at) => ({
  page: ['light', 'dark'][at] ?? '',
  paper: papers[at] ?? '',
  fills: fillsOf(css),
}));

const ways: Readonly<Record<Method, string>> = {
  'spray can': 'sprayed',
  airbrush: 'sprayed',
  brush: 'brushed',
  sponge: 'rubbed',
  drybrush: 'rubbed',
  flood: 'flooded',
  spread: 'spread',
};
const wayOf = (layer: Layer): string => ways[usualMethod(layer)];

type Rows = readonly (readonly [number, number, number])[];

/** Machado, Oliveira & Fernandes 2009, table 1, severity 1.0. */
const protanopia: Rows = [
  [0.152286, 1.052583, -0.204868],
  [0.114503, 0.786281, 0.099216],
  [-0.003882, -0.048116, 1.051998],
];
const deuteranopia: Rows = [
  [0.367322, 0.860646, -0.227968],
  [0.280085, 0.672501, 0.047413],
  [-0.01182, 0.04294, 0.968881],
];
const tritanopia: Rows = [
  [1.255528, -0.076749, -0.178779],
  [-0.078411, 0.930809, 0.147602],
  [0.004733, 0.691367, 0.3039],
];

const clip = (value: number): number => Math.min(1, Math.max(0, value));

/** The matrix on linear light, which is how it was derived. */
const through =
  (rows: Rows) =>
  (hex: string): Color => {
    const { r = 0, g = 0, b = 0 } = lrgb(hex) ?? {};
    const [red, green, blue] = rows.map(([ofR, ofG, ofB]) => clip(ofR * r + ofG * g + ofB * b));
    return { mode: 'lrgb', r: red ?? 0, g: green ?? 0, b: blue ?? 0 };
  };

const plain = (hex: string): Color => lrgb(hex) ?? { mode: 'lrgb', r: 0, g: 0, b: 0 };

/** The library's filters have the same matrices work on the coded values, as many programs do. */
const sights: Readonly<Record<string, (hex: string) => Color>> = {
  'with full sight': plain,
  'with protanopia': through(protanopia),
  'with deuteranopia': through(deuteranopia),
  'with tritanopia': through(tritanopia),
  'with protanopia, coded values': (hex) => filterDeficiencyProt(1)(plain(hex)),
  'with deuteranopia, coded values': (hex) => filterDeficiencyDeuter(1)(plain(hex)),
  'with tritanopia, coded values': (hex) => filterDeficiencyTrit(1)(plain(hex)),
};

/** As a printer without colours has it: the same lightness. */
const inGrey = (hex: string): Color => ({ mode: 'lab65', l: lab65(hex)?.l ?? 0, a: 0, b: 0 });

const difference = differenceCiede2000();
const neighbours = (fills: readonly string[], see: (hex: string) => Color): number[] =>
  fills.slice(1).map((fill, at) => difference(see(fills[at] ?? ''), see(fill)));

describe.each(palettes)('layers on the $page page', ({ paper, fills }) => {
  it('have a colour each, lighter from layer to layer in the order in which they are laid', () => {
    expect(new Set(fills).size).toBe(12);
    const lightness = fills.map((fill) => lab65(fill)?.l ?? Number.NaN);
    expect(lightness).toEqual([...lightness].sort((a, b) => a - b));
  });

  it('have one hue for each way of working, 40 degrees or more from the next', () => {
    const hues = new Map<string, number[]>();
    for (const [at, layer] of layers.entries())
      hues.set(wayOf(layer), [...(hues.get(wayOf(layer)) ?? []), lch65(fills[at] ?? '')?.h ?? Number.NaN]);
    expect([...hues.keys()]).toEqual(['sprayed', 'brushed', 'flooded', 'rubbed', 'spread']);
    const means = [...hues.values()].map((of) => {
      expect(Math.max(...of) - Math.min(...of)).toBeLessThan(6);
      return of.reduce((sum, hue) => sum + hue, 0) / of.length;
    });
    const round = means.sort((a, b) => a - b);
    for (const [at, hue] of round.entries())
      expect(((round[at + 1] ?? (round[0] ?? 0) + 360) - hue) % 360).toBeGreaterThan(40);
  });

  // WCAG 2.2, 1.4.11: 3:1 against what is beside it, here the page, which also shows between two pieces.
  it('stand out from the page by 3:1', () => {
    for (const fill of fills) expect(wcagContrast(fill, paper), fill).toBeGreaterThanOrEqual(3);
  });

  // CIEDE2000: the report calls 2 just visible and 5 plainly different.
  it.each(Object.entries(sights))('differ plainly from the next: %s', (_, see) => {
    expect(Math.min(...neighbours(fills, see))).toBeGreaterThanOrEqual(5);
  });

  it('differ visibly from the next in grey', () => {
    expect(Math.min(...neighbours(fills, inGrey))).toBeGreaterThanOrEqual(3);
  });
});

it('the simulation leaves greys as they are, since each row sums to 1', () => {
  for (const see of Object.values(sights)) expect(difference(see('#808080'), '#808080')).toBeLessThan(0.01);
});
