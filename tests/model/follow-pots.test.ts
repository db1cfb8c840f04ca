// What became of the pots: each case worked out by hand.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { followPots, potsThere } from '../../src/model/follow-pots.js';
import type { LogRow, Pot } from '../../src/model/sheets.js';
import { makePot } from '../make-sheets.js';

const slate = (more: Partial<Pot> = {}): Pot => makePot({ paint: 'Slate', ...more });
const row = (what: LogRow['what'], day: number, more: Partial<LogRow> = {}): LogRow => ({
  ...{ row: 2, date: `2026-03-${String(day).padStart(2, '0')}`, paint: 'Slate' },
  ...(what === undefined ? {} : { what }),
  ...more,
});
const eye = (share: number): Pick<LogRow, 'left'> => ({ left: { how: 'by eye', share } });

/** `17:0.4` a pot of 17 ml at 40 % that is there, with `*` on its way. */
const shelf = (pots: readonly Pot[], log: readonly LogRow[]): string[] =>
  potsThere({ pots, log }).map(
    ({ sizeMl, left, ordered }) =>
      `${sizeMl}:${left.how === 'by eye' ? left.share : left.how}${ordered ? '*' : ''}`,
  );

describe('a shelf', () => {
  it.each<[string, Pot[], LogRow[], string[]]>([
    ['stays as it is without rows', [slate()], [], ['17:1']],
    [
      'has what was bought on its way',
      [slate()],
      [row('bought', 1, { sizeMl: 12, pots: 2 })],
      ['17:1', '12:1*', '12:1*'],
    ],
    [
      'of a size that nobody wrote: as the last pot',
      [slate({ sizeMl: 24 })],
      [row('bought', 1)],
      ['24:1', '24:1*'],
    ],
    ['has no pot of which nobody knows the size', [], [row('bought', 1)], []],
    ['has what arrived', [], [row('bought', 1, { sizeMl: 17 }), row('arrived', 2)], ['17:1']],
    [
      'has what arrived from one shop',
      [],
      [
        row('bought', 1, { sizeMl: 17, shop: 'Quay' }),
        row('bought', 1, { sizeMl: 12, shop: 'Lock' }),
        row('arrived', 2, { shop: 'Lock' }),
      ],
      ['12:1', '17:1*'],
    ],
    [
      'has one of two arrived',
      [],
      [row('bought', 1, { sizeMl: 17, pots: 2 }), row('arrived', 2, { pots: 1 })],
      ['17:1', '17:1*'],
    ],
    [
      'has what the pots sheet calls ordered arrive too',
      [slate({ ordered: true })],
      [row('arrived', 2)],
      ['17:1'],
    ],
    ['says what a count says', [slate()], [row('counted', 1, eye(0.4))], ['17:0.4']],
    [
      'counts the pot in use, and the others stay',
      [slate(), slate({ openedOn: '2026-01-01' })],
      [row('counted', 1, eye(0.4))],
      ['17:0.4', '17:1'],
    ],
    [
      'has no more pots than were counted: the first are used up',
      [slate(), slate({ openedOn: '2026-01-01' })],
      [row('counted', 1, { ...eye(0.8), pots: 1 })],
      ['17:0.8'],
    ],
    [
      'counts the pots of one size',
      [slate(), slate({ sizeMl: 60 })],
      [row('counted', 1, { ...eye(0.3), sizeMl: 60 })],
      ['17:1', '60:0.3'],
    ],
    [
      'counts the pot that is not empty yet',
      [slate({ openedOn: '2026-01-01', left: { how: 'in ml', ml: 0 } }), slate({ sizeMl: 12 })],
      [row('counted', 1, eye(0.4))],
      ['17:in ml', '12:0.4'],
    ],
    [
      'looks again into a pot that was empty',
      [slate({ left: { how: 'in ml', ml: 0 } })],
      [row('counted', 1, eye(0.1))],
      ['17:0.1'],
    ],
    [
      'knows better from the pots sheet on a later day',
      [slate({ countedOn: '2026-03-05' })],
      [row('counted', 1, eye(0.4))],
      ['17:1'],
    ],
    [
      'but not of the same day or an earlier one',
      [slate({ countedOn: '2026-03-01' })],
      [row('counted', 1, eye(0.4))],
      ['17:0.4'],
    ],
    [
      'has not what was thrown away, the pot in use first',
      [slate(), slate({ sizeMl: 60 })],
      [row('thrown away', 1)],
      ['60:1'],
    ],
  ])('%s', (_, pots, log, left) => {
    expect(shelf(pots, log)).toEqual(left);
  });

  it('goes by days, not by the order of the rows', () => {
    const rows = [row('arrived', 2), row('counted', 3, eye(0.5)), row('bought', 1, { sizeMl: 17 })];
    expect(shelf([], rows)).toEqual(['17:0.5']);
  });

  it('shares what the pots of a row cost, to the last cent', () => {
    const pots = potsThere({ pots: [], log: [row('bought', 1, { sizeMl: 17, pots: 3, priceMinor: 1000 })] });
    expect(pots.map(({ priceMinor }) => priceMinor)).toEqual([334, 333, 333]);
  });

  it('has a pot of a known size come in what those come in', () => {
    const [, bought] = potsThere({
      pots: [slate({ container: 'tube' })],
      log: [row('bought', 1, { sizeMl: 17, container: 'pot' })],
    });
    expect(bought).toMatchObject({ container: 'tube', ordered: true, fromLog: true, row: 2 });
  });

  it('is the same by any order of rows that do not touch one another', () => {
    const one = [row('bought', 1, { sizeMl: 17 }), row('arrived', 1), row('counted', 1, eye(0.4))];
    const other = one.map((each) => ({ ...each, paint: 'Rust' }));
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 0, 0, 1, 1, 1], { minLength: 6 }), (turns) => {
        const queues = [[...one], [...other]];
        const mixed = turns.flatMap((at) => queues[at]?.shift() ?? []);
        const byName = (log: readonly LogRow[]) =>
          potsThere({ pots: [], log }).toSorted((a, b) => (a.paint < b.paint ? -1 : 1));
        expect(byName(mixed)).toEqual(byName([...one, ...other]));
      }),
    );
  });
});

describe('which uses come out of a pot', () => {
  const livesOf = (pots: readonly Pot[], log: readonly LogRow[]) =>
    followPots(pots, log).lives.map(({ since, until }) => [since, until]);

  it.each<[string, Pot[], LogRow[], number[][]]>([
    ['all of one that nobody counted', [slate()], [row(undefined, 1)], [[0, Infinity]]],
    [
      'those after the day of its count',
      [slate({ countedOn: '2026-03-01' })],
      [row(undefined, 1), row(undefined, 2)],
      [[1, Infinity]],
    ],
    [
      'those after a count in the log, in the order of its rows',
      [slate()],
      [row(undefined, 1), row('counted', 1, eye(0.4)), row(undefined, 1)],
      [[2, Infinity]],
    ],
    [
      'those after it arrived',
      [slate({ ordered: true })],
      [row(undefined, 1), row('arrived', 2), row(undefined, 2)],
      [[2, Infinity]],
    ],
    [
      'those before it was thrown away',
      [slate()],
      [row(undefined, 1), row('thrown away', 2), row(undefined, 3)],
      [[0, 1]],
    ],
  ])('%s', (_, pots, log, lives) => {
    expect(livesOf(pots, log)).toEqual(lives);
  });
});
