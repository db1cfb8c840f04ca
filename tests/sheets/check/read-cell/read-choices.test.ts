// Words of other languages for what cells are chosen from, zones and bases, by dictionaries; a gift has no price.
import { describe, expect, it } from 'vitest';
import { containers, dresses, kitItems, layers, opacities, paintKinds } from '../../../../src/model/words.js';
import { readyMadeZones } from '../../../../src/model/zones.js';
import { Mistake } from '../../../../src/sheets/check/read-cell/cell-kind.js';
import { paidKind, priceKind } from '../../../../src/sheets/check/read-cell/read-price.js';
import { baseKind } from '../../../../src/sheets/check/read-cell/read-sides.js';
import { figures } from '../../../../src/sheets/columns/army-columns.js';
import {
  type Called,
  containerWords,
  dressWords,
  kindWords,
  kitWords,
  layerWords,
  opacityWords,
  zoneWords,
} from '../../../../src/sheets/columns/choice-words.js';
import { kindOf } from '../../../../src/sheets/columns/column.js';
import { schemes } from '../../../../src/sheets/columns/scheme-columns.js';
import { pots } from '../../../../src/sheets/columns/shelf-columns.js';
import { headerKey } from '../../../../src/sheets/match-header.js';

const price = priceKind({ currency: 'EUR', locale: 'en' });
const read = {
  layer: kindOf(schemes.layer, { price }).read,
  kind: kindOf(pots.kind, { price }).read,
  opacity: kindOf(pots.opacity, { price }).read,
  dress: kindOf(figures.dress, { price }).read,
  container: kindOf(pots.container, { price }).read,
};

describe('words of other languages', () => {
  it.each([
    ['layer', 'Grundierung', 'primer'],
    ['layer', 'couche de base', 'base coat'],
    ['layer', 'Eclaircissement', 'highlight'],
    ['layer', 'suchy pędzel', 'drybrush'],
    ['kind', 'metálico', 'metallic'],
    ['kind', 'barniz', 'varnish'],
    ['opacity', 'Good', 'strong'],
    ['opacity', 'medium', 'fair'],
    ['opacity', 'poor', 'weak'],
    ['dress', 'armor', 'armoured'],
    ['container', 'Sprühdose', 'can'],
    ['container', 'compte gouttes', 'dropper'],
    ['container', 'sloik', 'pot'],
  ] as const)('%s: %s is %s', (column, written, word) => {
    expect(read[column](written)).toBe(word);
  });

  it('are asked where they could be two', () => {
    for (const written of ['base', 'Lack']) expect(read.layer(written)).toBeInstanceOf(Mistake);
  });

  it.each<[string, Called<string>, readonly string[]]>([
    ['containers', containerWords, containers],
    ['kinds', kindWords, paintKinds],
    ['opacities', opacityWords, opacities],
    ['dresses', dressWords, dresses],
    ['pieces of kit', kitWords, kitItems],
    ['layers', layerWords, layers],
    ['zones', zoneWords, [...readyMadeZones.keys()]],
  ])('stand for one of the %s each', (_, called, words) => {
    const meant = new Map<string, string>();
    for (const [word, others] of Object.entries(called)) {
      expect(words).toContain(word);
      for (const other of (others ?? '').split(', ').map(headerKey)) {
        expect(meant.get(other) ?? word).toBe(word);
        const own = words.find((one) => headerKey(one) === other);
        expect(own ?? word).toBe(word);
        meant.set(other, word);
      }
    }
  });
});

describe('a base', () => {
  const round = { shape: 'round', acrossMm: 25 };
  it.each([
    ['rund 25', round],
    ['25mm round', round],
    ['tonda 25 mm', round],
    ['okrągła 25', round],
    ['20 mm square', { shape: 'rectangle', longMm: 20, wideMm: 20 }],
    ['60x35 oval', { shape: 'oval', longMm: 60, wideMm: 35 }],
    ['keine', 'none'],
  ])('%s', (written, base) => {
    expect(baseKind.read(written)).toEqual(base);
  });

  it.each(['blue 25', 'round 25 oval', '25', 'round'])('is not %s', (written) => {
    expect(baseKind.read(written)).toBeInstanceOf(Mistake);
  });
});

it.each(['gift', 'Geschenk', 'offert', 'Regalo'])('of a %s nobody knows the worth', (written) => {
  expect(paidKind(price).read(written)).toBe('gift');
  expect(price.read(written)).toBeInstanceOf(Mistake);
});
