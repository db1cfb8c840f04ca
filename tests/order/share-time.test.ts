import { expect, it } from 'vitest';
import type { Buying } from '../../src/order/choose-counts.js';
import { sharingEqually, sharingInTurn } from '../../src/order/share-time.js';

/** Takes all that it may, and notes how much that was. */
function greedy(seconds: number) {
  const taken: number[] = [];
  const buying: Buying = {
    limits: { seconds },
    solve: async (_, within) => {
      taken.push(within.seconds);
      return { state: 'proved', values: [], bound: 0, seconds: within.seconds };
    },
  };
  return { buying, taken };
}

// 10 s for an order are 12 s for its promises. A tenth of that, 1.2 s, is kept for each that follows: 12 - 3 x 1.2.
it('the first of four promises may take all but what the three others are kept', async () => {
  const { buying, taken } = greedy(10);
  for (const { solve } of sharingInTurn('levels', buying, 4))
    await solve({ columns: [], rows: [] }, { seconds: 100 });
  expect(taken.map((one) => Math.round(one * 100) / 100)).toEqual([8.4, 1.2, 1.2, 1.2]);
});

it('of four promises side by side each may take a quarter, whatever the others take', async () => {
  const { buying, taken } = greedy(10);
  for (const { solve } of sharingEqually('levels', buying, 4))
    await solve({ columns: [], rows: [] }, { seconds: 100 });
  expect(taken).toEqual([3, 3, 3, 3]);
});
