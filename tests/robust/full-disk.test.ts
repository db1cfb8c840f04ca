// Disks that take no more, or nothing at all: one plain line, and the folder is as it was.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { outputNames } from '../../src/cli/render-files.js';
import { mainPath, makeFolder, type Run, runHalfpot } from '../cli/run-halfpot.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';

const root = makeFolder();
const sheets = join(root, 'sheets');
beforeAll(() => {
  mkdirSync(sheets);
  writeSheets(sheets, fourShortSheets);
});

/** What an earlier plan left, cut short: it begins as ours do. */
const old: Readonly<Record<(typeof outputNames)[number], string>> = {
  'report.html': '<!doctype html><title>Old – Halfpot</title>\n',
  'shop.html': '<!doctype html><title>Old list – Halfpot</title>\n',
  'bench.html': '<!doctype html><title>Old cards – Halfpot</title>\n',
  'reorder.csv': 'for,entry,shop\n',
  'reorder.xlsx': 'old workbook\n',
  'estimate.xlsx': 'old estimate\n',
  'plan.json': '{"version":1}\n',
};

/** A folder with an older file of each name. */
function oldFolder(name: string): string {
  const out = join(root, name);
  mkdirSync(out);
  for (const file of outputNames) writeFileSync(join(out, file), old[file]);
  return out;
}

function expectOld(out: string): void {
  expect(readdirSync(out).sort()).toEqual([...outputNames].sort());
  for (const file of outputNames) expect(readFileSync(join(out, file), 'utf8')).toBe(old[file]);
}

/** Runs a line of the shell with the command in `$@`. */
function runIn(line: string, args: readonly string[], wrap: readonly string[] = []): Run {
  const [command = 'sh', ...rest] = [...wrap, 'sh', '-c', line, 'sh', process.execPath, mainPath, ...args];
  const { status, stdout, stderr } = spawnSync(command, rest, { encoding: 'utf8' });
  return { code: status, out: stdout, err: stderr };
}

describe('a disk that takes no more', () => {
  it('is said, and the older files stay', ({ skip }) => {
    skip(process.platform === 'win32', 'needs ulimit');
    const out = oldFolder('limited');
    // 20 blocks of 512 bytes, by POSIX: less than the report.
    const { code, out: told, err } = runIn('ulimit -f 20 && exec "$@"', ['plan', sheets, '--out', out]);
    expect({ code, told }).toEqual({ code: 2, told: '' });
    expect(err).toBe(`halfpot: Cannot write to ${out}: a file would become larger than is allowed there.\n`);
    expectOld(out);
  });

  it('is said by start too, and no sheet stands there', ({ skip }) => {
    skip(process.platform === 'win32', 'needs ulimit');
    const out = join(root, 'none');
    const { code, err } = runIn('ulimit -f 2 && exec "$@"', ['start', out]);
    expect(code).toBe(2);
    expect(err).toMatch(
      /^halfpot: Cannot write to .*none: a file would become larger than is allowed there\.\n$/,
    );
    expect(existsSync(out)).toBe(false);
  });

  it('is said of the console', ({ skip }) => {
    skip(!existsSync('/dev/full'), 'needs /dev/full');
    const { code, err } = runIn('exec "$@" > /dev/full', ['plan', sheets, '--json']);
    expect(code).toBe(2);
    expect(err).toMatch(/^halfpot: .*\n$/);
  });
});

/** Disks of their own for one command, gone with it; root may make them, others where the system lets them. */
const privately = process.getuid?.() === 0 ? ['unshare', '-m'] : ['unshare', '-rm'];
const canMount = process.platform === 'linux' && tryMount();
const needsMount = 'needs Linux that lets this user mount a disk of its own (unshare)';

function tryMount(): boolean {
  const place = join(root, 'mount');
  mkdirSync(place);
  const [command = '', ...rest] = privately;
  return spawnSync(command, [...rest, 'mount', '-t', 'tmpfs', 'none', place]).status === 0;
}

interface OnDisk {
  readonly run: Run;
  /** What was on the disk in the end. */
  readonly copy: string;
}

/** Plans into a folder that `mount` has made a disk of, which held the older files before. */
function planOnDisk(name: string, mount: string): OnDisk {
  const [disk, copy] = [oldFolder(name), join(root, `${name} copy`)];
  mkdirSync(copy);
  const line = `D='${disk}'; C='${copy}'; ${mount} "$@" --out "$D"; code=$?; cp -a "$D"/. "$C"/; exit $code`;
  return { run: runIn(line, ['plan', sheets], privately), copy };
}

describe('a disk', () => {
  beforeEach(({ skip }) => skip(!canMount, needsMount));

  // Small files take a page of 4 kB each.
  it.each([8, 40, 80, 160, 1000, 4000])('with %d kB left has all new files, or all older ones', (left) => {
    const kilobytes = left + 4 * outputNames.length;
    const keep = `mkdir "$C/kept" && cp "$D"/* "$C/kept"/ && mount -t tmpfs -o size=${kilobytes}k none "$D" && mv "$C/kept"/* "$D"/ && rmdir "$C/kept" &&`;
    const { run, copy } = planOnDisk(`disk of ${kilobytes}`, keep);
    if (run.code === 0) {
      expect(readdirSync(copy).sort()).toEqual([...outputNames].sort());
      for (const file of outputNames) expect(readFileSync(join(copy, file), 'utf8')).not.toBe(old[file]);
      expect(left).toBeGreaterThan(40);
    } else {
      expect(run.code).toBe(2);
      expect(run.err).toBe(
        `halfpot: Cannot write to ${join(root, `disk of ${kilobytes}`)}: the disk is full.\n`,
      );
      expectOld(copy);
      expect(left).toBeLessThan(4000);
    }
  });

  it('that is read-only is told before any work', () => {
    const mount = 'mount --bind "$D" "$D" && mount -o remount,ro,bind "$D" &&';
    const { run, copy } = planOnDisk('read-only', mount);
    expect(run).toEqual({
      code: 2,
      out: '',
      err: `halfpot: Cannot write to ${join(root, 'read-only')}: the disk is read-only.\n`,
    });
    expectOld(copy);
  });
});

describe('a file that may not be replaced', () => {
  // An immutable file stands for what other systems do with one that a program holds: no renaming, no removing.
  it.for([...outputNames])('%s: all older files stay', (name, { skip }) => {
    const out = oldFolder(`held ${name}`);
    const isHeld = spawnSync('chattr', ['+i', join(out, name)]).status === 0;
    skip(!isHeld, 'needs chattr +i: root, and a disk that knows it');
    try {
      const { code, err } = runHalfpot(['plan', sheets, '--out', out]);
      expect(code).toBe(2);
      expect(err).toMatch(
        /^halfpot: Cannot write to .*: you may not write there, or another program holds the file\.\n$/,
      );
    } finally {
      spawnSync('chattr', ['-i', join(out, name)]);
    }
    expectOld(out);
  });
});
