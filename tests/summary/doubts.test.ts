// What results are doubted for. By hand.
import { expect, it } from 'vitest';
import { mergeDoubts, noDoubts, noteDoubt, trustOf } from '../../src/summary/doubts.js';

const film = { mark: 'from memory', biggestDoubt: 'brush wet film' } as const;
const area = { mark: 'published', biggestDoubt: 'stature of a person' } as const;

it('is that of nothing: the strongest mark and no doubt', () => {
  expect(trustOf(noDoubts())).toEqual({ mark: 'weighed', biggestDoubt: '' });
});

it('is the one with most behind it, summed; the mark is the weakest', () => {
  const doubts = noDoubts();
  noteDoubt(doubts, film, 2);
  noteDoubt(doubts, area, 3);
  expect(trustOf(doubts)).toEqual({ mark: 'from memory', biggestDoubt: 'stature of a person' });
  noteDoubt(doubts, film, 1.5); // 3.5 against 3
  expect(trustOf(doubts).biggestDoubt).toBe('brush wet film');
});

it('of doubts alike is the first', () => {
  const doubts = noDoubts();
  noteDoubt(doubts, area, 3);
  noteDoubt(doubts, film, 3);
  expect(trustOf(doubts).biggestDoubt).toBe('stature of a person');
});

it('counts the mark of a result without a doubt, and marks given beside', () => {
  const doubts = noDoubts();
  noteDoubt(doubts, { mark: 'yours', biggestDoubt: '' }, 9);
  expect(trustOf(doubts)).toEqual({ mark: 'yours', biggestDoubt: '' });
  expect(trustOf(doubts, 'common practice', 'published').mark).toBe('common practice');
});

it('of several results adds up, and leaves each alone', () => {
  const [one, other] = [noDoubts(), noDoubts()];
  noteDoubt(one, film, 2);
  noteDoubt(other, film, 2);
  noteDoubt(other, area, 3);
  expect(trustOf(mergeDoubts([one, other]))).toEqual({ mark: 'from memory', biggestDoubt: 'brush wet film' });
  expect([one.weights.get('brush wet film'), other.marks.size]).toEqual([2, 2]);
});
