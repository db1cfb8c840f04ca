import { mkdirSync, readdirSync, readFileSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { UsageError } from '../../src/cli/end-run.js';
import { writeFiles } from '../../src/cli/write-files.js';
import { makeFolder } from './run-halfpot.js';

function* failsAfter(chunks: number): Generator<string> {
  for (let at = 0; at < chunks; at += 1) yield 'x'.repeat(1000);
  throw new Error('the well is dry');
}

describe('writeFiles', () => {
  const root = makeFolder();

  it('makes the folder and writes text, bytes and chunks', async () => {
    const folder = join(root, 'a/b');
    await writeFiles(folder, [
      { name: 'text', content: 'Öl\n' },
      { name: 'bytes', content: new Uint8Array([1, 2, 255]) },
      { name: 'chunks', content: ['ä', 'b', ''] },
      { name: 'nothing', content: [] },
    ]);
    expect(readdirSync(folder).sort()).toEqual(['bytes', 'chunks', 'nothing', 'text']);
    expect(readFileSync(join(folder, 'text'), 'utf8')).toBe('Öl\n');
    expect([...readFileSync(join(folder, 'bytes'))]).toEqual([1, 2, 255]);
    expect(readFileSync(join(folder, 'chunks'), 'utf8')).toBe('äb');
    expect(readFileSync(join(folder, 'nothing'), 'utf8')).toBe('');
  });

  it('puts nothing in place when a later file fails, and leaves nothing behind', async () => {
    const folder = join(root, 'old');
    mkdirSync(folder);
    writeFileSync(join(folder, 'first'), 'as it was');
    const files = [
      { name: 'first', content: 'new' },
      { name: 'second', content: failsAfter(500) },
    ];
    await expect(writeFiles(folder, files)).rejects.toThrow('the well is dry');
    expect(readdirSync(folder)).toEqual(['first']);
    expect(readFileSync(join(folder, 'first'), 'utf8')).toBe('as it was');
  });

  it('takes away again a folder that it made for nothing', async () => {
    const folder = join(root, 'new');
    await expect(writeFiles(folder, [{ name: 'one', content: failsAfter(0) }])).rejects.toThrow();
    expect(readdirSync(root)).not.toContain('new');
  });

  it('replaces a link and leaves what it points at', async () => {
    const folder = join(root, 'linked');
    mkdirSync(folder);
    writeFileSync(join(root, 'kept'), 'mine');
    symlinkSync(join(root, 'kept'), join(folder, 'one'));
    await writeFiles(folder, [{ name: 'one', content: 'new' }]);
    expect(readFileSync(join(root, 'kept'), 'utf8')).toBe('mine');
    expect(readFileSync(join(folder, 'one'), 'utf8')).toBe('new');
  });

  it('removes what a run that was killed left a day ago, not what another is writing now', async () => {
    const folder = join(root, 'left');
    mkdirSync(folder);
    const [old, young, foreign] = ['.halfpot-12-plan.json.tmp', '.halfpot-13-plan.json.tmp', 'mine.tmp'];
    for (const name of [old, young, foreign]) writeFileSync(join(folder, name), '');
    const longAgo = new Date('2020-01-01');
    utimesSync(join(folder, old), longAgo, longAgo);
    utimesSync(join(folder, foreign), longAgo, longAgo);
    await writeFiles(folder, [{ name: 'one', content: '' }]);
    expect(readdirSync(folder).sort()).toEqual([young, foreign, 'one'].sort());
  });

  it('says in plain words that a file is in the way', async () => {
    writeFileSync(join(root, 'file'), '');
    const writing = writeFiles(join(root, 'file/under'), [{ name: 'one', content: '' }]);
    await expect(writing).rejects.toThrow(UsageError);
    await expect(writing).rejects.toThrow('part of the path is a file');
  });
});
