// Bench: model files, measured afresh and kept, as whole programs. Prints a Markdown table. `npm run bench:models`; not part
// of the tests, since times depend on the machine.
import {
  closeSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { env } from 'node:process';
import { measureOnce, medianMs } from './measure-runs.mjs';

const main = 'dist/cli/main.js';
const sample = 'sample-data/low-sluice';
const folder = mkdtempSync(join(tmpdir(), 'halfpot-models-'));
const nowhere = '/dev/null/nothing-is-kept';

/** A sphere 30 mm across with bumps, of about so many triangles. */
function* bumpySphere(triangles) {
  const cells = Math.round(Math.sqrt(triangles / 2));
  const at = (column, row) => {
    const [up, around] = [(Math.PI * row) / cells, (2 * Math.PI * column) / cells];
    const r = 15 + 0.7 * Math.sin(8 * up) * Math.sin(30 * around);
    return [r * Math.sin(up) * Math.cos(around), r * Math.sin(up) * Math.sin(around), r * Math.cos(up)];
  };
  for (let row = 0; row < cells; row += 1) {
    for (let column = 0; column < cells; column += 1) {
      const [a, b] = [at(column, row), at(column, row + 1)];
      const [c, d] = [at(column + 1, row + 1), at(column + 1, row)];
      yield [a, b, c];
      yield [a, c, d];
    }
  }
}

function writeBinary(path, triangles) {
  const all = 2 * Math.round(Math.sqrt(triangles / 2)) ** 2;
  const bytes = Buffer.alloc(84 + 50 * all);
  bytes.writeUInt32LE(all, 80);
  let at = 84;
  for (const corners of bumpySphere(triangles)) {
    corners.flat().forEach((value, k) => void bytes.writeFloatLE(value, at + 12 + 4 * k));
    at += 50;
  }
  writeFileSync(path, bytes);
  return path;
}

/** In chunks: the whole text is longer than a string may be. */
function writeText(path, triangles) {
  const file = openSync(path, 'w');
  let lines = ['solid bench'];
  for (const corners of bumpySphere(triangles)) {
    const vertices = corners.map((p) => `vertex ${p.map((value) => value.toExponential(6)).join(' ')}`);
    lines.push('facet normal 0 0 0', ' outer loop', ...vertices, ' endloop', 'endfacet');
    if (lines.length > 50_000) {
      writeSync(file, `${lines.join('\n')}\n`);
      lines = [];
    }
  }
  writeSync(file, `${[...lines, 'endsolid bench'].join('\n')}\n`);
  closeSync(file);
  return path;
}

function sampleWith(model) {
  const sheets = join(folder, 'army');
  cpSync(sample, sheets, { recursive: true });
  cpSync(model, join(sheets, 'guard.stl'));
  const [header, ...rows] = readFileSync(join(sample, 'figures.csv'), 'utf8').trimEnd().split(/\r?\n/);
  const cells = rows.map((row, index) => `${row},${index === 0 ? 'guard.stl' : ''}`);
  writeFileSync(join(sheets, 'figures.csv'), [`${header},model`, ...cells, ''].join('\n'));
  return sheets;
}

const withCache = (cache, work) => {
  env.XDG_CACHE_HOME = cache;
  return work();
};

const million = writeBinary(join(folder, 'million.stl'), 1_000_000);
const plan = (sheets) => [main, 'plan', sheets, '--out', join(folder, 'out')];
const kept = join(folder, 'cache');
mkdirSync(kept);
const afresh = withCache(nowhere, () =>
  medianMs({ bare: ['-e', '0'], measure: [main, 'measure', million] }, 5),
);
const again = withCache(kept, () =>
  medianMs(
    { measure: [main, 'measure', million], plain: plan(sample), modelled: plan(sampleWith(million)) },
    5,
  ),
);
const against = (ratio, most) => `< ${most} x: ${ratio.toFixed(2)} x ${ratio < most ? '(met)' : '(MISSED)'}`;
const largest = withCache(nowhere, () => [
  [
    '4,000,000 triangles, binary STL of 200 MB',
    measureOnce([main, 'measure', writeBinary(join(folder, 'most.stl'), 3_990_000)]),
  ],
  [
    '1,700,000 triangles, text STL of 390 MB',
    measureOnce([main, 'measure', writeText(join(folder, 'text.stl'), 1_700_000)]),
  ],
]);

const rows = [
  ['model files', 'seen', 'target'],
  ['---', '---', '---'],
  ['`node -e 0`', `${afresh.bare.toFixed(0)} ms`, ''],
  [
    'a million triangles measured, over bare Node',
    `${afresh.measure.toFixed(0)} ms`,
    against(afresh.measure / afresh.bare, 30),
  ],
  ['the same, kept', `${again.measure.toFixed(0)} ms`, ''],
  [
    'plan of the sample with that model, kept, over one without',
    `${again.modelled.toFixed(0)} ms`,
    against(again.modelled / again.plain, 1.1),
  ],
  ...largest.map(([what, { ms, peakMb }]) => [
    what,
    `${(ms / 1000).toFixed(1)} s, peak ${peakMb.toFixed(0)} MB`,
    `< 1,024 MB: ${peakMb < 1024 ? '(met)' : '(MISSED)'}`,
  ]),
];
console.log(rows.map((cells) => `| ${cells.join(' | ')} |`).join('\n'));
rmSync(folder, { recursive: true });
