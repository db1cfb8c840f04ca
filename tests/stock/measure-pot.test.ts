// How far a reading may be off: 10 % of the pot's size by eye, 5 % in ml, 0.3 ml weighed (from memory; the registry's own).
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Pot } from '../../src/model/sheets.js';
import { measurePot } from '../../src/stock/measure-pot.js';
import { makePaint, makePot } from '../make-sheets.js';

const errorOf = (pot: Partial<Pot>): number =>
  measurePot(makePot({ paint: 'Slate', ...pot }), makePaint({ paint: 'Slate' }), registry).readingErrorMl;
const opened = { openedOn: '2026-01-10' } as const;

describe('the error of a reading', () => {
  it.each<[string, Partial<Pot>, number]>([
    ['by eye', { left: { how: 'by eye', share: 0.6 } }, 1.7],
    ['by eye, of a large pot', { sizeMl: 60, left: { how: 'by eye', share: 0.6 } }, 6],
    ['in ml', { left: { how: 'in ml', ml: 7.5 } }, 0.85],
    ['weighed', { left: { how: 'weighed', grams: 31.2, emptyGrams: 19.2 } }, 0.3],
    ['weighed, even where it counts as full', { left: { how: 'weighed', grams: 60, emptyGrams: 19.2 } }, 0.3],
    ['none of a sealed pot', {}, 0],
    ['none of a sealed pot told in ml', { left: { how: 'in ml', ml: 17 } }, 0],
    ['by eye of an open pot that looks full', opened, 1.7],
    ['in ml of an open pot that is full to the mark', { ...opened, left: { how: 'in ml', ml: 17 } }, 0.85],
    ['none of a pot that is empty to the eye', { left: { how: 'by eye', share: 0 } }, 0],
    ['none of a pot on its way', { ordered: true, left: { how: 'by eye', share: 0.6 } }, 0],
  ])('%s', (_, pot, errorMl) => {
    expect(errorOf(pot)).toBeCloseTo(errorMl, 12);
  });
});
