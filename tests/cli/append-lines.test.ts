// Lines by several processes at once, some of them killed: whole lines, none lost.
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { appendLines } from '../../src/cli/append-lines.js';
import { compilePart } from '../robust/compile-part.js';
import { makeFolder } from './run-halfpot.js';

const root = makeFolder();
const script = fileURLToPath(new URL('./append-many.mjs', import.meta.url));
const compiled = makeFolder();
let module = '';
beforeAll(async () => {
  module = await compilePart('src/cli/append-lines.ts', compiled);
});

interface Writer {
  readonly name: string;
  readonly child: ChildProcess;
  /** Lines that it says are written. */
  said: number;
}

function startWriter(path: string, name: string, letters: number, more: readonly string[] = []): Writer {
  const child = spawn(process.execPath, [script, module, path, name, String(letters), ...more], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const writer: Writer = { name, child, said: 0 };
  child.stdout?.on('data', (chunk: Buffer) => {
    writer.said += chunk.toString().split('\n').length - 1;
  });
  return writer;
}

async function kill({ child }: Writer): Promise<void> {
  const ended = once(child, 'close');
  child.kill('SIGKILL');
  await ended;
}

/** Every line is whole, and each writer's lines are there in their order, from the first to the last it spoke of. */
function expectWhole(path: string, writers: readonly Writer[], letters: number): void {
  const [header, ...lines] = readFileSync(path, 'utf8').split('\n');
  expect(header).toBe('name,count,filler,end');
  expect(lines.pop()).toBe('');
  const whole = new RegExp(`^\\w+,\\d+,x{${letters}},end$`);
  expect(lines.filter((line) => !whole.test(line))).toEqual([]);
  for (const { name, said } of writers) {
    const counts = lines
      .filter((line) => line.startsWith(`${name},`))
      .map((line) => Number(line.split(',')[1]));
    expect(counts).toEqual(counts.map((_, at) => at));
    expect(counts.length).toBeGreaterThanOrEqual(said);
    expect(said).toBeGreaterThan(0);
  }
}

describe('lines at the end of a file', () => {
  it('by four processes at once that are killed are whole, and none of them is lost', async () => {
    for (const letters of [20, 3000]) {
      const path = join(root, `killed-${letters}.csv`);
      const writers = ['a', 'b', 'c', 'd'].map((name) => startWriter(path, name, letters));
      while (writers.some(({ said }) => said < 5)) await wait(20);
      for (const writer of writers) {
        await wait(Math.random() * 200);
        await kill(writer);
      }
      expectWhole(path, writers, letters);
    }
  });

  it('begin one file, though twelve processes try at once', async () => {
    for (let round = 0; round < 3; round += 1) {
      const path = join(root, `new-${round}.csv`);
      const start = Date.now() + 2000;
      const writers = Array.from({ length: 12 }, (_, at) =>
        startWriter(path, `w${at}`, 20, ['1', String(start)]),
      );
      await Promise.all(writers.map(({ child }) => once(child, 'close')));
      expectWhole(path, writers, 20);
      expect(readFileSync(path, 'utf8').split('\n')).toHaveLength(1 + 12 + 1);
    }
    expect(readdirSync(root).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it('go through a link to where the file is', async () => {
    mkdirSync(join(root, 'synced'));
    writeFileSync(join(root, 'synced', 'real.csv'), 'a\n');
    symlinkSync(join('synced', 'real.csv'), join(root, 'link.csv'));
    await appendLines(join(root, 'link.csv'), () => Buffer.from('b\n'));
    expect(readFileSync(join(root, 'synced', 'real.csv'), 'utf8')).toBe('a\nb\n');
  });

  it('clear away what a killed process left, and nothing of one at work', async () => {
    const folder = join(root, 'left');
    mkdirSync(folder);
    const gone = spawnSync(process.execPath, ['-e', '']).pid;
    const ours = [`.halfpot-${gone}-log.csv.tmp`, `.halfpot-${process.pid}-log.csv.tmp`];
    const others = [`.halfpot-${process.ppid}-log.csv.tmp`, `.halfpot-${gone}-plan.json.tmp`];
    for (const name of [...ours, ...others]) writeFileSync(join(folder, name), 'x');
    await appendLines(join(folder, 'log.csv'), () => Buffer.from('a\n'));
    expect(readdirSync(folder).sort()).toEqual([...others, 'log.csv'].sort());
  });

  it('leave no half line where the disk is full in the middle of one', ({ skip }) => {
    // A limit on the size of files (512-byte blocks of POSIX ulimit) fails in the same way as a full disk.
    if (process.platform === 'win32') skip('no ulimit here');
    const path = join(root, 'full.csv');
    const held = `${'y'.repeat(499)}\n`;
    writeFileSync(path, held);
    const { stderr, status } = spawnSync(
      'sh',
      [
        '-c',
        `trap '' XFSZ; ulimit -f 1; exec "$0" "$@" 1>/dev/null`,
        process.execPath,
        script,
        module,
        path,
        'a',
        '600',
      ],
      { encoding: 'utf8' },
    );
    expect(readFileSync(path, 'utf8')).toBe(held);
    expect([status, stderr]).toEqual([1, expect.stringContaining('the disk is full')]);
    expect(existsSync(path)).toBe(true);
  });
});
