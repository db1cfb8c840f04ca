// Robust: how long the tests of this folder go on. `npm run soak` makes them ten times as long, with other seeds.

/** How many times as long as usual; below 1 in a shorter run. */
export const times = Number(process.env.HALFPOT_SOAK ?? 1);

/** So many rounds in a usual run, a multiple of them in a soak. */
export const rounds = (usual: number): number => Math.max(1, Math.round(usual * times));

/** The same in every usual run; a soak has one of its own each time, which a failure names. */
export const seed = times > 1 ? Date.now() % 2 ** 31 : 6;

/** Numbers from 0 to 1, the same from the same start (mulberry32, in the public domain). */
export function makeChance(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
