// Cash against colour of the small plan: 7.40 and one pot below a difference of 2, nothing from there, 7.00 at 10.
import { describe, expect, it } from 'vitest';
import type { Frontier } from '../../src/model/frontier.js';
import { sameMl } from '../../src/model/volume.js';
import { sumColours } from '../../src/summary/sum-colours.js';
import { smallFrontier } from '../report/a-small-palette.js';
import { smallStock } from '../report/a-small-shelf.js';

const sumsOf = (changes: Partial<Frontier> = {}, stock = smallStock) =>
  sumColours({ stock, frontier: { ...smallFrontier, ...changes } });

it('joins four points to three levels, each up to its largest difference', () => {
  expect(sumsOf().levels.map(({ dE00, toDE00, cashMinor }) => [dE00, toDE00, cashMinor])).toEqual([
    [0, 0, 740],
    [2, 5, 0],
    [10, 10, 700],
  ]);
});

it('keeps points apart that differ in a swap alone', () => {
  const [, moss] = smallFrontier.points;
  if (moss === undefined) throw new Error('no point');
  const swaps = moss.swaps.map((swap) => ({ ...swap, by: 'Fern bed' }));
  expect(sumsOf({ points: [moss, { ...moss, dE00: 3, swaps }] }).levels).toHaveLength(2);
});

describe('the largest difference', () => {
  it('saves 0.40', () => {
    expect(sumsOf().savedMinor).toBe(40);
  });

  it('takes two pots where one would do; as many is no fewer', () => {
    expect(sumsOf().fewest?.pots).toBe(1);
    expect(sumsOf({ fewestPots: { ...smallFrontier.fewestPots, pots: 2 } }).fewest).toBeUndefined();
  });

  it('is nothing where nothing is drawn', () => {
    expect(sumsOf({ points: [] })).toMatchObject({ levels: [], savedMinor: 0, fewest: undefined });
  });
});

it('counts the paints to buy: nettle and rust; what is the same volume is none', () => {
  expect(sumsOf().toBuy).toBe(2);
  const [grey] = smallStock;
  if (grey === undefined) throw new Error('no stock');
  const lacking = (toBuyMl: number) => sumsOf({}, [{ ...grey, toBuyMl }]).toBuy;
  expect([lacking(sameMl), lacking(sameMl * 1.01)]).toEqual([0, 1]);
});
