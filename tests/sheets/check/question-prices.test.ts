// Which prices are out of line: by the median, from five offers in one kind of container.
import { describe, expect, it } from 'vitest';
import { questionPrices } from '../../../src/sheets/check/question-prices.js';

/** What is told of droppers at these minor units a millilitre, and of others beside them. */
function toldOf(prices: readonly number[], cans: readonly number[] = []): string[] {
  const told: string[] = [];
  const offer = (container: 'dropper' | 'can') => (minorPerMl: number) => ({
    container,
    minorPerMl,
    tell: (words: string) => void told.push(`${minorPerMl}: ${words}`),
  });
  questionPrices([...prices.map(offer('dropper')), ...cans.map(offer('can'))]);
  return told;
}

describe('prices of a millilitre', () => {
  it('are in line from a twentieth to twenty times the median', () => {
    expect(toldOf([10, 10, 10, 200, 0.5])).toEqual([]);
    expect(toldOf([10, 10, 10, 201, 0.49])).toEqual([
      '201: 20 times what is usual among your offers in a dropper',
      '0.49: 1/20 of what is usual among your offers in a dropper',
    ]);
  });

  it('have the mean of the middle two where their number is even', () => {
    expect(toldOf([1, 10, 30, 30, 10, 420])).toEqual([
      '420: 21 times what is usual among your offers in a dropper',
    ]);
  });

  it('are not compared where there are fewer than five, or with other containers', () => {
    expect(toldOf([10, 10, 10, 1000])).toEqual([]);
    expect(toldOf([10, 10, 10, 10, 10], [0.1, 0.1, 0.1, 0.1, 0.1])).toEqual([]);
    expect(toldOf([])).toEqual([]);
  });
});
