import fc from 'fast-check';
import { expect, it } from 'vitest';
import { NodeQueue } from '../../../src/order/solver/node-queue.js';

it('gives the cheapest first, of equals the newest, whatever goes in and out between', () => {
  // A list that is sorted anew each time, against the heap. -1 takes one out.
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -1, max: 9 }), { maxLength: 60 }), (steps) => {
      const queue = new NodeQueue<{ bound: number; no: number }>();
      const list: { bound: number; no: number }[] = [];
      for (const [no, step] of [...steps, ...steps.map(() => -1)].entries()) {
        if (step >= 0) {
          queue.add({ bound: step, no });
          list.push({ bound: step, no });
          continue;
        }
        list.sort((a, b) => b.bound - a.bound || a.no - b.no);
        expect(queue.take()).toEqual(list.pop());
      }
    }),
    { numRuns: 500 },
  );
});
