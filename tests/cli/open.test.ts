// --open: the opener is looked up on PATH, so that a program of that name in a folder of the test is the one that runs.
import { chmodSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openerOf } from '../../src/cli/open-file.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
const sheets = join(root, 'sheets');
mkdirSync(sheets);
writeSheets(sheets, fourShortSheets);

/** A folder with an opener that writes its arguments down, a line each. */
function makeOpener(name: string, exitCode: number): { readonly folder: string; readonly log: string } {
  const folder = join(root, name);
  const log = join(folder, 'opened');
  mkdirSync(folder);
  for (const program of ['xdg-open', 'open']) {
    writeFileSync(
      join(folder, program),
      `#!/bin/sh\nfor one in "$@"; do echo "$one"; done > '${log}'\nexit ${exitCode}\n`,
    );
    chmodSync(join(folder, program), 0o755);
  }
  return { folder, log };
}

const plan = (out: string, path: string, more: readonly string[] = []) =>
  runHalfpot(['plan', sheets, '--out', join(root, out), '--open', ...more], { env: { PATH: path } });

it.each([
  ['linux', ['xdg-open', '/my 50% & half/report.html']],
  ['darwin', ['open', '/my 50% & half/report.html']],
  ['win32', ['rundll32.exe', 'url.dll,FileProtocolHandler', 'file:///my%2050%25%20&%20half/report.html']],
])('what opens a page on %s takes its path whole', (system, asked) => {
  expect(openerOf(system, '/my 50% & half/report.html')).toEqual(asked);
});

// The opener of these is a script for sh, which Windows has none of.
describe.skipIf(process.platform === 'win32')('halfpot plan --open', () => {
  it('hands the report to the opener as one argument, whatever stands in its path', () => {
    const { folder, log } = makeOpener('opens', 0);
    const out = 'my $HOME & "half" %20';
    const run = plan(out, folder);
    expect([run.code, run.err]).toEqual([0, '']);
    expect(readFileSync(log, 'utf8')).toBe(`${join(root, out, 'report.html')}\n`);
  });

  it('says the path where the opener fails', () => {
    const { folder } = makeOpener('fails', 3);
    const run = plan('fails-out', folder);
    const report = join(root, 'fails-out', 'report.html');
    expect([run.code, run.err]).toEqual([
      0,
      `Nothing here opens it by itself. Open ${report} in a browser.\n`,
    ]);
  });

  it('says the path where there is no opener, and keeps plan.json by itself on standard output', () => {
    const run = plan('none-out', join(root, 'nowhere'), ['--json']);
    const report = join(root, 'none-out', 'report.html');
    expect([run.code, run.err]).toEqual([
      0,
      `Nothing here opens it by itself. Open ${report} in a browser.\n`,
    ]);
    expect(run.out).toBe(readFileSync(join(root, 'none-out', 'plan.json'), 'utf8'));
  });

  it('has nothing to open where no report is written', () => {
    const { folder, log } = makeOpener('unasked', 0);
    const run = runHalfpot(['plan', sheets, '--json', '--open'], { env: { PATH: folder } });
    expect([run.code, run.out, run.err]).toEqual([
      2,
      '',
      'halfpot: --json writes no report to open. Name a folder with --out, or leave --open out.\n',
    ]);
    expect(existsSync(log)).toBe(false);
  });
});
