// Pots alike in one row: each is a pot of its own, as rows written out make them.
import { describe, expect, it } from 'vitest';
import { planArmy } from '../../../src/plan-army.js';
import { check, checkRight, type SheetRows } from './make-tables.js';

const today = '2026-11-02';
const heads = ['paint', 'size ml', 'pots', 'left', 'empty g', 'price', 'counted', 'keep ml', 'ordered'];

/** What the sheets come to; rows aside, since pots alike bear one row. */
async function planOf(pots: SheetRows['pots'] & object, log: SheetRows['log'] & object) {
  const { defaults, ...sheets } = checkRight({ pots: [heads, ...pots], log });
  return planArmy({ ...sheets, defaults: [], pots: sheets.pots.map((pot) => ({ ...pot, row: 2 })) }, today);
}

describe('a row of several pots', () => {
  it('is so many pots, each as the row says', () => {
    const { pots } = checkRight({
      pots: [
        heads,
        ['brick red', '17', '3', '40%', '', '2.95', '', '', ''],
        ['earth wash', '24', '', '', '', '', '', '', ''],
      ],
    });
    const red = {
      row: 2,
      paint: 'brick red',
      sizeMl: 17,
      left: { how: 'by eye', share: 0.4 },
      priceMinor: 295,
    };
    expect(pots).toHaveLength(4);
    expect(pots).toMatchObject([red, red, red, { row: 3, paint: 'earth wash' }]);
    expect(new Set(pots).size).toBe(4);
  });

  it('gives the plan of the same pots in rows of their own: weights, log, keep levels, orders on the way', async () => {
    const log = [
      ['date', 'paint', 'before g', 'after g', 'used ml'],
      ['2026-10-20', 'brick red', '31.2', '30', ''],
      ['2026-10-21', 'earth wash', '', '', '1.5'],
    ];
    const weighed = (pots: string) => [
      'brick red',
      '17',
      pots,
      '31.2 g',
      '14.5',
      '2.95',
      '2026-10-01',
      '9',
      '',
    ];
    const onItsWay = (pots: string) => ['earth wash', '24', pots, '', '', '4', '', '', 'yes'];
    const looked = (pots: string) => ['earth wash', '24', pots, '20%', '', '4.20', '', '', ''];
    const short = [weighed('3'), onItsWay('2'), looked('2')];
    const long = [weighed, weighed, weighed, onItsWay, onItsWay, looked, looked].map((row) => row(''));
    expect(await planOf(short, log)).toEqual(await planOf(long, log));
  });

  it('weighs its pots one by one: no weight can be more than one of them full', () => {
    // 14.5 g + 17 ml x 3 g/ml = 65.5 g
    const { problems } = check({
      pots: [
        heads,
        ['brick red', '17', '3', '66 g', '14.5', '', '', '', ''],
        ['earth wash', '24', '', '', '', '', '', '', ''],
      ],
    });
    expect(problems).toMatchObject([{ code: 'heavier-than-full', found: '66 g', expected: '65.5 g' }]);
  });

  it.each([
    ['0', 'zero'],
    ['1.5', 'not-whole'],
    ['-2', 'negative'],
    ['two', 'not-a-count'],
    ['1001', 'too-much'],
  ])('refuses %s', (count, code) => {
    const { problems } = check({
      pots: [
        heads,
        ['brick red', '17', count, '', '', '', '', '', ''],
        ['earth wash', '24', '', '', '', '', '', '', ''],
      ],
    });
    expect(problems).toMatchObject([{ code, row: 2, column: 'pots', cell: 'C2' }]);
  });
});
