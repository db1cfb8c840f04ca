// Ranges: chance that repeats itself. In: a seed and a name. Out: a stream of uniform and normal numbers.
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers by chance, the same for the same seed and name. */
export interface Stream {
  /** Evenly between 0 and 1, neither of them included, in steps of 2^-53. */
  uniform(): number;
  /** Fills a column with numbers of mean 0 and deviation 1. */
  fillNormal(column: Float64Array): Float64Array;
}

/** 2^31 and 2^53. */
const half32 = 2_147_483_648;
const whole53 = 9_007_199_254_740_992;

/**
 * A stream of its own for each name, so that one factor more leaves the draws of the others as they were, and the order
 * of rows does not matter. Normal numbers, two at a time, by the polar method of Marsaglia & Bray 1964, SIAM Review 6:260.
 */
export function openStream(seed: number, name: string): Stream {
  const generator = xoroshiro128plus(hashName(seed, name));
  return {
    uniform() {
      const high = generator.next() >>> 5;
      const low = generator.next() >>> 6;
      return (high * 67_108_864 + low + 0.5) / whole53;
    },
    fillNormal(column) {
      for (let draw = 0; draw < column.length; ) {
        const x = (generator.next() + 0.5) / half32;
        const y = (generator.next() + 0.5) / half32;
        const square = x * x + y * y;
        if (square >= 1) continue;
        const stretch = Math.sqrt((-2 * Math.log(square)) / square);
        column[draw++] = x * stretch;
        if (draw < column.length) column[draw++] = y * stretch;
      }
      return column;
    },
  };
}

/**
 * 32 bits of seed and name: FNV-1a, whose last letters hardly reach the upper bits, then the finalizer of MurmurHash3
 * (Appleby 2011). Without it the first draws of `... 1` and `... 2` would be nearly the same.
 */
function hashName(seed: number, name: string): number {
  const text = `${seed} ${name}`;
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return hash ^ (hash >>> 16);
}
