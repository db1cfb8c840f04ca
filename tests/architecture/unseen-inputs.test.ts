// Architecture: calculation and report code reads no clock, no chance, no process, no console.
// Files, modules and libraries are the business of import-rules.test.ts.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { findUnseenInputs } from './find-unseen-inputs.js';

const src = fileURLToPath(new URL('../../src/', import.meta.url));
/** The command line, the readers and the template loader meet the outside; all else is handed its inputs. */
const outside = ['cli/', 'sheets/read/', 'report/page/load-template.ts'];
/** The front of a solver's thread names its file by where it stands itself; and long work gives threads a turn. */
const allowed = /^order\/solver\/(thread\.ts:\d+ import\.meta|let-others\.ts:\d+ setImmediate)$/;
const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => file.endsWith('.ts') && !outside.some((place) => file.startsWith(place)));

describe('unseen inputs', () => {
  it('are in no file of calculation and report', () => {
    expect(files.length).toBeGreaterThan(20);
    const found = files.flatMap((file) => findUnseenInputs(file, readFileSync(src + file, 'utf8')));
    expect(found.filter((place) => !allowed.test(place))).toEqual([]);
  });

  it.each([
    ['const now = Date.now();', 'Date.now'],
    ['const now = new Date();', 'new Date()'],
    ['const now = new Date;', 'new Date()'],
    ['const now = Date();', 'new Date()'],
    ['const draw = Math.random();', 'Math.random'],
    ['const { random } = { random: () => Math.random() };', 'Math.random'],
    ['const zone = process.env.TZ;', 'process'],
    ['const { env } = process;', 'process'],
    ['const all = { process };', 'process'],
    ["console.log('x');", 'console'],
    ['const draw = crypto.randomUUID();', 'crypto'],
    ['const here = import.meta.url;', 'import.meta'],
    ['const p = globalThis.process;', 'globalThis'],
    ["const page = await fetch('x');", 'fetch'],
    ['setTimeout(() => {}, 1);', 'setTimeout'],
  ])('%s is found', (code, what) => {
    expect(findUnseenInputs('bad.ts', `// first line\n${code}\n`)).toEqual([`bad.ts:2 ${what}`]);
  });

  it.each([
    "const day = new Date('2026-11-02');",
    'const day = new Date(0);',
    'const largest = Math.max(1, 2);',
    'const said = "process.exit, Date.now() and console.log";',
    'interface Job { readonly process: string }\nconst name = (job: Job) => job.process;',
    'const step = { process: 1 };',
  ])('%s is allowed', (code) => {
    expect(findUnseenInputs('good.ts', code)).toEqual([]);
  });
});
