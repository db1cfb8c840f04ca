// Bench: an army of any size. In: the sample's folder, how many army rows, a seed. Out: a folder of sheets whose
// figures, schemes, pots and offers are the sample's, and whose army rows are drawn from it.
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';

/** Evenly spread numbers from 0 to 1, the same for the same seed (Lehmer's generator, Park & Miller 1988). */
function startDraws(seed) {
  let state = seed;
  return () => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/**
 * Writes `rows` units into `folder`: 1 to 12 figures each, a batch of 5 or 10, up to half of the steps done.
 * @param {{ sample: string, folder: string, rows: number, seed?: number }} army
 */
export function makeArmy({ sample, folder, rows, seed = 28 }) {
  cpSync(sample, folder, { recursive: true });
  // The sample's log names the sample's units.
  rmSync(join(folder, 'log.csv'), { force: true });
  const { data } = Papa.parse(readFileSync(join(sample, 'army.csv'), 'utf8'), {
    header: true,
    skipEmptyLines: true,
  });
  const draw = startDraws(seed);
  const whole = (from, to) => from + Math.floor(draw() * (to - from + 1));
  const lines = ['unit,figure,scheme,count,batch,done'];
  for (let row = 1; row <= rows; row += 1) {
    const { figure, scheme } = data[whole(0, data.length - 1)];
    const cells = [`Unit ${row}`, figure, scheme, whole(1, 12), whole(1, 2) * 5, whole(0, 6)];
    lines.push(cells.join(','));
  }
  writeFileSync(join(folder, 'army.csv'), `${lines.join('\n')}\n`);
}
