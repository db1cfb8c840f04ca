// A sheet of the sample without its header row, or with nothing below it: one problem, and none elsewhere that only
// follows from it.
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { neededSheets, sheetNames } from '../../../src/model/words.js';
import { readSheets } from '../../../src/sheets/read-sheets.js';
import { fourShortSheets, writeSheets } from '../../problems/problem-case.js';

const sample = join(import.meta.dirname, '../../../sample-data/low-sluice');
const withSheets = sheetNames.filter((sheet) => sheet !== 'swaps' && sheet !== 'columns');
const known = { assumptions: registry, today: '2026-11-02' };
let dir = '';

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'halfpot-follow-'));
  cpSync(sample, dir, { recursive: true });
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

async function codesWith(sheet: string, change: (lines: readonly string[]) => readonly string[]) {
  const file = join(dir, `${sheet}.csv`);
  writeFileSync(file, change(readFileSync(file, 'utf8').split('\n')).join('\n'));
  const { problems } = await readSheets(dir, known);
  return problems.map(({ code, file: at }) => `${code} ${at}`);
}

describe('one problem and no more', () => {
  it.each(withSheets)('where the %s sheet has no header row', async (sheet) => {
    expect(await codesWith(sheet, ([, ...rows]) => rows)).toEqual([`no-header-row ${sheet}.csv`]);
  });

  // Pots that are none make an army that is reckoned from scratch.
  it.each(neededSheets.filter((sheet) => sheet !== 'pots'))(
    'where the %s sheet has nothing below its header row',
    async (sheet) => {
      expect(await codesWith(sheet, ([header = '']) => [header, ''])).toEqual([`header-only ${sheet}.csv`]);
    },
  );

  it('where the settings, which name another currency, have no header row', async () => {
    const file = join(dir, 'offers.csv');
    const offers = readFileSync(file, 'utf8');
    writeFileSync(file, offers.replace('12.90', '£12.90').replace(',price,', ',Price (£),'));
    expect(await codesWith('settings', () => ['currency,GBP'])).toEqual(['no-header-row settings.csv']);
  });

  it('where a unit of which the log tells progress has a scheme that nobody knows', async () => {
    const folder = join(dir, 'progress');
    mkdirSync(folder);
    writeSheets(folder, {
      ...fourShortSheets,
      'army.csv': 'unit,figure,scheme,count\nfirst spears,spearman,red lin,20\n',
      'log.csv': 'date,paint,unit,step,figures\n2026-03-01,brick red,first spears,1,10\n',
    });
    const { problems } = await readSheets(folder, known);
    expect(problems.map(({ code }) => code)).toEqual(['unknown-scheme']);
  });

  it('where the swaps, by which the log goes, have no header row', async () => {
    const folder = join(dir, 'swapped');
    mkdirSync(folder);
    writeSheets(folder, {
      ...fourShortSheets,
      'pots.csv': 'paint,size ml\nrust red,17\nearth wash,24\n',
      'paints.csv': 'paint\nbrick red\n',
      'log.csv': 'date,paint,unit,step,figures,used ml\n2026-03-01,rust red,first spears,1,10,0.4\n',
      'swaps.csv': 'red line,1,brick red,rust red\n',
    });
    const { problems } = await readSheets(folder, known);
    expect(problems.map(({ code }) => code)).toEqual(['no-header-row']);
  });
});
