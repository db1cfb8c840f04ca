// `plan --until` and `--without`: a part of the army, and offers that are sold out.
import { describe, expect, it } from 'vitest';
import { narrowSheets } from '../../src/cli/narrow-sheets.js';
import { makeOffer, makeSheets, makeStep, makeUnit, offerPot } from '../make-sheets.js';

const sheets = makeSheets({
  steps: [makeStep({ step: 1 }), makeStep({ step: 2 })],
  offers: [
    makeOffer({ shop: 'Quay', offer: 'Slate 17', priceMinor: 300, pots: [offerPot('Slate')] }),
    makeOffer({ shop: 'Mill', offer: 'Slate 17', row: 3, priceMinor: 310, pots: [offerPot('Slate')] }),
  ],
  // Painted by priority: third, first, second.
  army: [
    makeUnit({ unit: 'First', count: 10, priority: 2, row: 2 }),
    makeUnit({ unit: 'Second', count: 5, priority: 3, row: 3, done: 2 }),
    makeUnit({ unit: 'Third', count: 4, priority: 1, row: 4 }),
  ],
});
const armyUntil = (until: string) =>
  narrowSheets(sheets, { until }).army?.map(({ unit, count }) => [unit, count]);

describe('--until', () => {
  it.each([
    ['third', [['Third', 4]]],
    [
      'First',
      [
        ['First', 10],
        ['Third', 4],
      ],
    ],
    ['1', [['Third', 1]]],
    ['4', [['Third', 4]]],
    [
      '5',
      [
        ['First', 1],
        ['Third', 4],
      ],
    ],
    [
      '19',
      [
        ['First', 10],
        ['Second', 5],
        ['Third', 4],
      ],
    ],
  ])('%s', (until, army) => {
    expect(armyUntil(until)).toEqual(army);
  });

  it('left out is all of the army', () => {
    expect(narrowSheets(sheets, {})).toEqual({ sheets, army: undefined });
  });

  // The third has four figures and two steps.
  it.each([
    [4, 4, '"Third" is done'],
    [4, 3, undefined],
  ])('a unit of which the log calls %d and %d figures done', (first, second, says) => {
    const row = { row: 2, date: '2026-10-01', paint: 'Slate', unit: 'Third' };
    const log = [
      { ...row, step: 1, figures: first },
      { ...row, step: 2, figures: second },
    ];
    const narrow = () => narrowSheets({ ...sheets, log }, { until: 'Third' });
    if (says === undefined) expect(narrow().army).toHaveLength(1);
    else expect(narrow).toThrow(says);
  });

  it('knows that a step on a part that the figure does not have asks for nothing', () => {
    const steps = [makeStep({ step: 1 }), makeStep({ step: 2, zone: 'round shield' })];
    const bare = makeSheets({
      ...{ steps, army: [makeUnit({ count: 4 })] },
      log: [{ row: 2, date: '2026-10-01', paint: 'Slate', unit: 'watch', step: 1, figures: 4 }],
    });
    expect(() => narrowSheets(bare, { until: 'watch' })).toThrow('"watch" is done');
  });

  it('knows what is done of paints that swaps took the place of', () => {
    const steps = [makeStep({ step: 1, paint: 'Oat' })];
    const swapped = makeSheets({
      ...{ steps, army: [makeUnit({ count: 4 })], swaps: [{ row: 2, paint: 'Oat', instead: 'Slate' }] },
      log: [{ row: 2, date: '2026-10-01', paint: 'Oat', unit: 'watch', step: 1, figures: 4 }],
    });
    expect(() => narrowSheets(swapped, { until: 'watch' })).toThrow('"watch" is done');
  });

  it.each([
    ['Second', '"Second" is done: name a unit with work left in --until.'],
    ['Firs', 'No unit is "Firs". Near it is "First".'],
    ['nobody', 'No unit is "nobody". Write it as a unit or a number of figures, as your sheets have it.'],
    ['0', '"0" is no number of figures of this army. Write --until as 1 to 19.'],
    ['20', '"20" is no number of figures of this army. Write --until as 1 to 19.'],
  ])('%s is refused', (until, says) => {
    expect(() => armyUntil(until)).toThrow(says);
  });
});

describe('--without', () => {
  const left = (...without: string[]) =>
    narrowSheets(sheets, { without }).sheets.offers.map(({ shop, available }) => [shop, available]);

  it('sells out an offer of a shop, and another', () => {
    expect(left('mill:  slate 17')).toEqual([
      ['Quay', undefined],
      ['Mill', 0],
    ]);
    expect(left('Mill: Slate 17', 'Quay: Slate 17').map(([, available]) => available)).toEqual([0, 0]);
  });

  it.each([
    ['Mil: Slate 17', 'No offer is "Mil: Slate 17". Near it is "Mill: Slate 17" or "Quay: Slate 17".'],
    // Both of the name, each in marks of its own.
    ['slate 17', 'Near it is "Mill: Slate 17" or "Quay: Slate 17".'],
    ['Tin', 'No offer is "Tin". Write it as "Shop: offer", as your sheets have it.'],
  ])('%s is refused', (text, says) => {
    expect(() => left(text)).toThrow(says);
  });
});
