// Summary: which paints are in doubt, and what weighings showed. In: ranges, weighings. Out: both in order.
import type { Learned, Ranges } from '../model/ranges.js';
import type { DoubtSums } from '../model/summary.js';

/** From this chance of running short on a paint may last or not. */
const doubtful = 0.1;

export function sumDoubts({ paints }: Ranges, { weighings }: Learned): DoubtSums {
  return {
    paints: [...paints]
      .map(([paint, range]) => ({ paint, range }))
      .filter(({ range }) => range.doubts.length > 0 && range.chanceShort.chance > doubtful)
      .sort((a, b) => b.range.chanceShort.chance - a.range.chanceShort.chance),
    times: weighings.map(({ usedMl, expectedMl }) => (expectedMl > 0 ? usedMl / expectedMl : undefined)),
  };
}
