import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { MeasuredModel } from '../../../../src/model/measured.js';
import { cacheFolder, keepMeasured, readKept } from '../../../../src/sheets/read/models/keep-measured.js';
import { makePiece } from '../../../make-sheets.js';

const model: MeasuredModel = {
  unitMm: 25.4,
  high: 1.2345678901234567,
  up: 'y',
  triangles: 7,
  flat: 1,
  unreal: 0,
  isInsideOut: false,
  pieces: [makePiece('häft "1"', 0.1 + 0.2)],
};

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'halfpot-kept-'));
  vi.stubEnv('XDG_CACHE_HOME', dir);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(dir, { recursive: true, force: true });
});

describe('what is kept', () => {
  it('comes back to the last digit, under its key alone', async () => {
    await keepMeasured('abc', model);
    expect(await readKept('abc')).toEqual(model);
    expect(await readKept('abd')).toBeUndefined();
    expect(readdirSync(join(dir, 'halfpot/models'))).toEqual(['abc.json']);
  });

  it.each([
    ['nothing', ''],
    ['half of it', JSON.stringify(model).slice(0, 60)],
    ['another thing', '[]'],
    ['no object', 'null'],
    ['a height that is none', JSON.stringify({ ...model, high: 'tall' })],
    ['no pieces', JSON.stringify({ ...model, pieces: undefined })],
    [
      'a piece without its counts',
      JSON.stringify({ ...model, pieces: [{ ...model.pieces[0], open: [1, 2] }] }),
    ],
    [
      'counts that are none',
      JSON.stringify({ ...model, pieces: [{ ...makePiece('', 1), hidden: new Array(21).fill(0.5) }] }),
    ],
  ])('is not believed where it is %s', async (_, text) => {
    mkdirSync(join(dir, 'halfpot/models'), { recursive: true });
    writeFileSync(join(dir, 'halfpot/models/abc.json'), text);
    expect(await readKept('abc')).toBeUndefined();
  });

  it('is nothing where its folder cannot be made, and nobody is told', async () => {
    writeFileSync(join(dir, 'halfpot'), 'a file in the way');
    await keepMeasured('abc', model);
    expect(await readKept('abc')).toBeUndefined();
  });
});

describe('where it is kept', () => {
  it('as XDG has it; a name that is no whole path counts as none', () => {
    expect(cacheFolder()).toBe(join(dir, 'halfpot'));
    for (const name of ['', 'cache', './cache']) {
      vi.stubEnv('XDG_CACHE_HOME', name);
      expect(cacheFolder().startsWith(homedir())).toBe(true);
    }
  });
});
