// Which paints are in doubt, and what weighings showed. By hand.
import { expect, it } from 'vitest';
import type { PaintRange } from '../../src/model/ranges.js';
import { sumDoubts } from '../../src/summary/sum-doubts.js';
import { smallLearned, smallRanges } from '../report/a-small-doubt.js';

it('lists paints by their chance of running short: nettle 97.4%, pond 21.3%; rust has no doubt, grey 8%', () => {
  expect(sumDoubts(smallRanges, smallLearned).paints.map(({ paint }) => paint)).toEqual([
    'Nettle coat',
    'Pond wash',
  ]);
});

it('begins past a tenth', () => {
  const pond = smallRanges.paints.get('Pond wash');
  if (pond === undefined) throw new Error('no paint');
  const at = (chance: number): PaintRange => ({ ...pond, chanceShort: { chance, error: 0 } });
  const paints = new Map([
    ['at', at(0.1)],
    ['past', at(0.1001)],
  ]);
  expect(sumDoubts({ ...smallRanges, paints }, smallLearned).paints.map(({ paint }) => paint)).toEqual([
    'past',
  ]);
});

it('divides what was used by what was expected: 4.5 / 3.8, 2.2 / 1.9; nothing expected has no share', () => {
  const [first] = smallLearned.weighings;
  if (first === undefined) throw new Error('no weighing');
  const weighings = [...smallLearned.weighings, { ...first, expectedMl: 0 }];
  expect(sumDoubts(smallRanges, { ...smallLearned, weighings }).times).toEqual([
    4.5 / 3.8,
    2.2 / 1.9,
    undefined,
  ]);
});
