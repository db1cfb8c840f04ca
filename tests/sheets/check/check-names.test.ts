// Properties: names match however they are spelled, the order of pots does not matter, and long sheets stay fast.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findNearest, joinOr } from '../../../src/sheets/check/find-nearest.js';
import { foldName } from '../../../src/sheets/check/fold-name.js';
import { makeNameBook } from '../../../src/sheets/check/keep-names.js';
import { check, checkRight, shortRows } from './make-tables.js';

/** The same name, spelled otherwise: case, blanks and Unicode form. */
const respelled = (name: string): fc.Arbitrary<string> =>
  fc
    .tuple(fc.boolean(), fc.boolean(), fc.constantFrom('', ' ', '\u00a0 '), fc.constantFrom(' ', '  ', '\t'))
    .map(([loud, apart, outer, inner]) => {
      const cased = loud ? name.toUpperCase() : name;
      return outer + (apart ? cased.normalize('NFD') : cased).replaceAll(' ', inner) + outer;
    });

describe('names', () => {
  it('match in every sheet, and the first spelling counts', () => {
    const named = fc.tuple(
      respelled('éclat red'),
      respelled('first spears'),
      respelled('spear man'),
      respelled('red line'),
    );
    fc.assert(
      fc.property(named, ([paint, unit, figure, scheme]) => {
        const sheets = checkRight({
          pots: [
            ['paint', 'size ml'],
            ['éclat red', 17],
          ],
          paints: [
            ['paint', 'kind'],
            [paint, 'metallic'],
          ],
          offers: [
            ['shop', 'offer', 'price', 'paint', 'size ml'],
            ['Quay', 'red', 3, paint, 17],
          ],
          figures: [
            ['figure', 'eye mm'],
            ['spear man', 28],
          ],
          schemes: [shortRows.schemes[0], ['red line', 1, 'whole', 'base coat', paint]],
          army: [
            ['unit', 'figure', 'scheme', 'count'],
            ['first spears', figure, scheme, 20],
          ],
          log: [
            ['date', 'paint', 'unit', 'used ml'],
            ['2026-03-01', paint, unit, 1],
          ],
        });
        expect([...sheets.paints.values()]).toEqual([
          { paint: 'éclat red', kind: 'metallic', alsoCalled: [] },
        ]);
        expect(sheets.offers[0]?.pots[0]?.paint).toBe('éclat red');
        expect(sheets.schemes.get('red line')?.steps[0]?.paints[0]?.paint).toBe('éclat red');
        expect(sheets.army[0]).toMatchObject({ figure: 'spear man', scheme: 'red line' });
        expect(sheets.log[0]).toMatchObject({ paint: 'éclat red', unit: 'first spears' });
      }),
    );
  });

  it('fold to the same key however often', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (name) => {
        expect(foldName(` ${name}  `)).toBe(foldName(name));
        expect(foldName(foldName(name))).toBe(foldName(name));
      }),
    );
  });

  it('that are near are offered, the nearest first', () => {
    const book = makeNameBook();
    for (const name of ['brick red', 'brick rod', 'bone white', 'Brick Red']) book.add(name);
    expect(book.all()).toEqual(['brick red', 'brick rod', 'bone white']);
    expect(book.find('BRICK  RED')).toBe('brick red');
    expect(book.find('brik red')).toBeUndefined();
    expect(book.nearest('brik red')).toBe('brick red or brick rod');
    expect(book.nearest('white')).toBe('bone white');
    expect(book.nearest('moss')).toBe('');
    expect(findNearest('ab', ['xy', 'ac'])).toBe('ac');
    expect([joinOr([]), joinOr(['a']), joinOr(['a', 'b']), joinOr(['a', 'b', 'c'])]).toEqual([
      '',
      'a',
      'a or b',
      'a, b or c',
    ]);
  });
});

describe('pots', () => {
  it('come to the same in any order of rows', () => {
    const rows = [
      ['brick red', '17', '60%', '3.50', 'metallic'],
      ['Brick Red', '12', '', '', ''],
      ['earth wash', '24', 'empty', '4', 'wash'],
      ['bone', '17', '5 ml', '', ''],
    ];
    const totals = (order: readonly (readonly string[])[]) => {
      const { pots, paints } = checkRight({
        pots: [['paint', 'size ml', 'left', 'price', 'kind'], ...order],
      });
      const sums = new Map<string, number>();
      for (const { paint, sizeMl } of pots)
        sums.set(foldName(paint), (sums.get(foldName(paint)) ?? 0) + sizeMl);
      const kinds = [...paints.values()].map(({ paint, kind }) => `${foldName(paint)} ${kind}`).sort();
      return { sums: new Map([...sums].sort()), kinds };
    };
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), (order) => {
        expect(totals(order)).toEqual(totals(rows));
      }),
    );
  });
});

describe('many problems', () => {
  it('are all found: 10,000 bad rows, two problems each', () => {
    const rows = Array.from({ length: 10_000 }, (_, index) => [`unit ${index}`, `nobody ${index}`, '2.5']);
    const { problems, sheets } = check({ army: [['unit', 'figure', 'count'], ...rows] });
    expect(sheets).toBeUndefined();
    expect(problems).toHaveLength(20_000);
    expect(problems.slice(0, 3).map(({ code, cell }) => [code, cell])).toEqual([
      ['unknown-figure', 'B2'],
      ['not-whole', 'C2'],
      ['unknown-figure', 'B3'],
    ]);
  });
});
