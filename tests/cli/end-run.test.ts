import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { reportCrash, UsageError } from '../../src/cli/end-run.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot, startHalfpot } from './run-halfpot.js';

const root = makeFolder();
const large = join(root, 'large');

beforeAll(() => {
  mkdirSync(large);
  const rows = Array.from({ length: 140_000 }, (_, at) => `unit ${at},spearman,${1 + (at % 50)}\n`);
  writeSheets(large, { ...fourShortSheets, 'army.csv': `unit,figure,count\n${rows.join('')}` });
});

/** Starts a plan of many units and sends a signal while plan.json is half written. */
async function breakOff(out: string, signal: NodeJS.Signals): Promise<NodeJS.Signals | number | null> {
  const child = startHalfpot(['plan', large, '--out', out]);
  const ended = new Promise<NodeJS.Signals | number | null>((done) => {
    child.on('exit', (code, by) => done(by ?? code));
  });
  const isHalf = (name: string): boolean =>
    name.startsWith(`.halfpot-${child.pid}-`) && name.endsWith('-plan.json.tmp');
  while (child.exitCode === null) {
    const half = existsSync(out) ? readdirSync(out).find(isHalf) : undefined;
    const size = half === undefined ? 0 : (statSync(join(out, half), { throwIfNoEntry: false })?.size ?? 0);
    if (size > 1_000_000) break;
    await wait(2);
  }
  child.kill(signal);
  return ended;
}

describe('a run that is broken off', () => {
  it('by force leaves no half file under a final name, and what stood there before', async () => {
    const out = join(root, 'killed');
    mkdirSync(out);
    const last = '<!doctype html><title>The last report – Halfpot</title>';
    writeFileSync(join(out, 'report.html'), last);
    expect(await breakOff(out, 'SIGKILL')).toBe('SIGKILL');
    const names = readdirSync(out).filter((name) => !name.startsWith('.halfpot-'));
    expect(names).toEqual(['report.html']);
    expect(readFileSync(join(out, 'report.html'), 'utf8')).toBe(last);
    expect(readdirSync(out).length).toBeGreaterThan(1);
  });

  it.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('by %s leaves nothing at all', async (signal) => {
    const out = join(root, signal);
    expect(await breakOff(out, signal)).toBe(signal);
    expect(readdirSync(out)).toEqual([]);
  });

  it('by a reader that hangs up ends quietly', async () => {
    const child = startHalfpot(['plan', large, '--json']);
    let err = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      err += chunk.toString();
    });
    const ended = new Promise<number | null>((done) => child.on('exit', done));
    child.stdout?.once('data', () => child.stdout?.destroy());
    expect(await ended).toBe(0);
    expect(err).toBe('');
  });
});

/** Who is not root obeys the permissions of files; as root, the program is run as nobody. */
const asNobody = process.getuid?.() === 0 ? { uid: 65_534 } : {};
const canRun = process.platform !== 'win32' && runHalfpot(['--version'], asNobody).code === 0;

describe('a folder that may not be written to', () => {
  it('is said in plain words, and nothing is left half done', ({ skip }) => {
    skip(!canRun, 'needs a user without rights who may read this checkout: root is stopped by no permission');
    chmodSync(root, 0o755);
    const [sheets, out] = [join(root, 'sheets'), join(root, 'locked')];
    mkdirSync(sheets);
    writeSheets(sheets, fourShortSheets);
    mkdirSync(out);
    chmodSync(out, 0o555);
    for (const args of [
      ['plan', sheets, '--out', out],
      ['plan', sheets, '--out', join(out, 'new')],
      ['start', out],
    ]) {
      const { code, out: told, err } = runHalfpot(args, asNobody);
      expect({ code, told }).toEqual({ code: 2, told: '' });
      expect(err).toMatch(/^halfpot: Cannot write to .*: you may not write there\.\n$/);
    }
    expect(readdirSync(out)).toEqual([]);
  });
});

describe('an error that nobody expected', () => {
  afterEach(() => {
    vi.restoreAllMocks();
    vi.unstubAllEnvs();
  });

  function told(error: unknown): string {
    const said = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
    expect(reportCrash(error)).toBe(2);
    return said.mock.calls.map(([text]) => String(text)).join('');
  }

  it('is one plain line that says how to get the details', () => {
    vi.stubEnv('HALFPOT_DEBUG', '');
    expect(told(new Error('the\nsky fell'))).toBe(
      'halfpot: something unexpected happened: the\\u000asky fell. Nothing more was done. Set HALFPOT_DEBUG=1 and run again for details.\n',
    );
  });

  it('has its details with HALFPOT_DEBUG=1', () => {
    vi.stubEnv('HALFPOT_DEBUG', '1');
    expect(told(new Error('the sky fell'))).toMatch(/\n {4}at /);
  });

  it('is no crash where the caller can mend it', () => {
    vi.stubEnv('HALFPOT_DEBUG', '');
    expect(told(new UsageError('Name a folder.'))).toBe('halfpot: Name a folder.\n');
  });
});
