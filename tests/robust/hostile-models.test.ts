// Model files made to break the reader, through the real command: refused in one sentence, within a gigabyte.
import { execFileSync } from 'node:child_process';
import { closeSync, ftruncateSync, openSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeFolder, runHalfpot } from '../cli/run-halfpot.js';
import { binaryStl, cube, modelXml, packModel } from '../surface/make-models.js';
import { forgeSize } from './make-hostile.js';

const root = makeFolder();
const peakPrinter = new URL('./print-peak.mjs', import.meta.url).href;
const mostMb = 1024;

function measure(name: string): string {
  const { code, out, err } = runHalfpot(['measure', join(root, name)], {
    env: { NODE_OPTIONS: `--import=${peakPrinter}` },
  });
  // Each thread prints a line; all count the memory of the whole process.
  const peaks = [...err.matchAll(/^peak (\d+)$/gm)].map(([, kilobytes]) => Number(kilobytes) / 1024);
  expect(Math.max(...peaks), 'megabytes').toBeLessThan(mostMb);
  const said = err.replace(/^peak .*\n/gm, '');
  expect({ code, out, lines: said.split('\n').length }).toEqual({ code: 1, out: '', lines: 2 });
  return said;
}

const claims = binaryStl({ body: cube(9, 1) });
claims.writeUInt32LE(0xffffffff, 80);

const blanks = packModel(modelXml(`<metadata name="a">${' '.repeat(300 * 2 ** 20)}</metadata>`));
const corners = '<resources><object id="1"><mesh><vertices>';
const v = 'v 0 0 0\nv 1 0 0\nv 0 1 0\n';

const files: readonly (readonly [string, string, () => string | Buffer, RegExp])[] = [
  [
    'an STL that claims four billion triangles',
    'claims.stl',
    () => claims,
    /it is cut off, with 12 of 4294967295 triangles\./,
  ],
  [
    'a text STL in one line of 50 MB',
    'line.stl',
    () => `solid ${'a'.repeat(50 * 2 ** 20)}`,
    /line 1 has no end\./,
  ],
  [
    'a face of a million corners',
    'face.obj',
    () => `${v}f${' 1 2 3'.repeat(400_000)}`,
    /line 4 has no end\./,
  ],
  [
    'five million faces',
    'faces.obj',
    () => v + 'f 1 2 3\n'.repeat(5_000_000),
    /more triangles, where 4,000,000 is the most\./,
  ],
  [
    'numbers beyond all bounds',
    'bounds.obj',
    () => 'v 0 0 1e300\nv 1e999 0 0\nv 0 nan 0\nf 1 2 3\n',
    /there is no surface in it\./,
  ],
  ['a 3MF of 300 MB of blanks', 'blanks.3mf', () => blanks, /there is no surface in it\./],
  [
    'one that calls itself a hundred bytes',
    'small.3mf',
    () => forgeSize(blanks, '3D/3dmodel.model', 100),
    /it is cut off or spoilt\./,
  ],
  [
    'one that calls itself 4 GB',
    'large.3mf',
    () => forgeSize(blanks, '3D/3dmodel.model', 0xfffffffe),
    /4\d\d\d MB unpacked, where 1000 MB is the most\./,
  ],
  [
    'six million corners',
    'corners.3mf',
    () => packModel(modelXml(corners + '<vertex/>'.repeat(6_000_000))),
    /more corners, where 5,592,405 is the most\./,
  ],
  [
    'a tag without an end',
    'tag.3mf',
    () => packModel(modelXml(`<object name="${'a'.repeat(20 * 2 ** 20)}`)),
    /it is cut off or spoilt\./,
  ],
  [
    'a million tags in one another',
    'deep.3mf',
    () => packModel(modelXml('<a>'.repeat(1_000_000))),
    /it is cut off or spoilt\./,
  ],
];

describe('halfpot measure', () => {
  it.each(files)('refuses %s', (_, name, make, says) => {
    writeFileSync(join(root, name), make());
    expect(measure(name)).toMatch(says);
  });

  it.each([
    ['of 500 MB', 500, /is too large to measure: 500 MB, where 400 MB is the most\./],
    ['of 399 MB of nothing', 399, /there is no surface in it\./],
  ])('refuses a file %s', (_, mb, says) => {
    const file = openSync(join(root, 'blank.stl'), 'w');
    ftruncateSync(file, mb * 2 ** 20);
    closeSync(file);
    expect(measure('blank.stl')).toMatch(says);
  });

  it('waits for no pipe', () => {
    execFileSync('mkfifo', [join(root, 'pipe.stl')]);
    expect(measure('pipe.stl')).toMatch(/cannot be opened \(it is no ordinary file\)\./);
  });
});
