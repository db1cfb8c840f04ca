// The real command, killed at any moment and run twice at once: its folder holds whole files, and those of one run.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { beforeAll, describe, expect, it } from 'vitest';
import { outputNames } from '../../src/cli/render-files.js';
import { makeFolder, runHalfpot, startHalfpot } from '../cli/run-halfpot.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeChance, rounds, seed } from './soak.js';

const root = makeFolder();
const sheets = join(root, 'sheets');
const days = ['2026-03-14', '2026-03-15'] as const;
const reference = (day: string): string => join(root, day);

const args = (day: string, out: string): string[] => ['plan', sheets, '--date', day, '--out', out];

let ms = 0;
beforeAll(() => {
  mkdirSync(sheets);
  writeSheets(sheets, fourShortSheets);
  for (const day of days) {
    const started = Date.now();
    expect(runHalfpot(args(day, reference(day))).code).toBe(0);
    ms = Date.now() - started;
  }
});

/** The day of each file, told by all of its bytes; undefined for one that is not there. */
function daysOf(folder: string): Map<string, string | undefined> {
  return new Map(
    outputNames.map((name) => {
      if (!existsSync(join(folder, name))) return [name, undefined];
      const bytes = readFileSync(join(folder, name));
      const alike = days.filter((day) => bytes.equals(readFileSync(join(reference(day), name))));
      expect(alike.length, `${name} is a whole file of either day`).toBeGreaterThan(0);
      return [name, alike.length === 2 ? 'either' : alike[0]];
    }),
  );
}

/** Where plan.json stands, everything is of its day. */
function expectOneRun(folder: string): string | undefined {
  const found = daysOf(folder);
  const day = found.get('plan.json');
  if (day !== undefined)
    for (const [name, of] of found)
      expect([day, 'either'], `${name} beside the plan of ${day}`).toContain(of);
  return day;
}

const chance = makeChance(seed);

describe(`halfpot plan (seed ${seed})`, () => {
  it('gives files that tell the days apart', () => {
    expect(daysOf(reference(days[0])).get('plan.json')).toBe(days[0]);
    expect(daysOf(reference(days[1])).get('report.html')).toBe(days[1]);
  });

  it('leaves the last report or the new one, whenever it is killed', async () => {
    const out = join(root, 'killed');
    cpSync(reference(days[0]), out, { recursive: true });
    for (let round = 0; round < rounds(10); round += 1) {
      const child = startHalfpot(args(days[(round + 1) % 2] ?? days[0], out));
      await wait(chance() * ms * 1.2);
      child.kill('SIGKILL');
      if (child.exitCode === null && child.signalCode === null) await once(child, 'exit');
      expectOneRun(out);
    }
    expect(runHalfpot(args(days[1], out)).code).toBe(0);
    expect(expectOneRun(out)).toBe(days[1]);
  });

  it('run twice at once leaves the files of one run and nothing else', async () => {
    for (let round = 0; round < rounds(3); round += 1) {
      const out = join(root, `twice ${round}`);
      const runs: ChildProcess[] = days.map((day) => startHalfpot(args(day, out)));
      const ended = await Promise.all(runs.map((child) => once(child, 'exit')));
      expect(ended.map(([code]) => code)).toEqual([0, 0]);
      expect(days).toContain(expectOneRun(out));
      expect(readdirSync(out).sort()).toEqual([...outputNames].sort());
    }
  });

  it('writes beside an old report that a reader has open', async ({ skip }) => {
    skip(process.platform === 'win32', 'needs a system where an open file can be replaced');
    const out = join(root, 'open');
    cpSync(reference(days[0]), out, { recursive: true });
    const report = join(out, 'report.html');
    const old = readFileSync(report, 'utf8');
    const reader = spawn('sh', ['-c', 'exec 3<"$0"; echo ready; read line; cat <&3', report]);
    await once(reader.stdout, 'data');
    expect(runHalfpot(args(days[1], out)).code).toBe(0);
    expect(expectOneRun(out)).toBe(days[1]);
    let seen = '';
    reader.stdout.setEncoding('utf8').on('data', (text: string) => {
      seen += text;
    });
    reader.stdin.end('\n');
    await once(reader, 'close');
    expect(seen).toBe(old);
  });
});
