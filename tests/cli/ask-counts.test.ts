// A round of counting with its answers written beforehand.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { askCounts } from '../../src/cli/ask-counts.js';
import { readSheets } from '../../src/sheets/read-sheets.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder } from './run-halfpot.js';

const folder = join(makeFolder(), 'army');
mkdirSync(folder);
writeSheets(folder, {
  ...fourShortSheets,
  'pots.csv':
    'paint,size ml,left\nbrick red,17,60%\nbrick red,17,\nearth wash,24,50%\nslate,17,\nbone,17,empty\n',
});

async function round(answers: readonly (string | undefined)[]) {
  const { sheets } = await readSheets(folder, { assumptions: registry, today: '2026-03-01' });
  if (sheets === undefined) throw new Error('no sheets');
  const asked: string[] = [];
  const left = [...answers];
  const rows = await askCounts(sheets, (question) => {
    asked.push(question);
    return Promise.resolve(left.shift());
  });
  return { asked, rows: rows.map((cells) => [...cells].map(([, text]) => text).join(' ')) };
}

describe('a round', () => {
  it('asks for paints that are begun, and how many pots there are where there are several', async () => {
    expect(await round(['40%', '', '5 ml'])).toEqual({
      asked: [
        'brick red, 25.6 ml in 2 pots. Left in the one in use? ',
        'How many pots of it are there? (2) ',
        'earth wash, 11.3 ml in 1 pot. Left in the one in use? ',
      ],
      rows: ['brick red counted 40% 2', 'earth wash counted 5 ml'],
    });
  });

  it('asks again for what is no reading, and no number of pots', async () => {
    const { asked, rows } = await round(['40', '40%', '3', '1', '']);
    expect(asked.filter((one) => one.startsWith('Write 40%'))).toHaveLength(2);
    expect(rows).toEqual(['brick red counted 40% 1']);
  });

  it.each([
    ['q', []],
    [undefined, []],
  ])('ends at %j and keeps what was answered before', async (end, rows) => {
    expect((await round([end])).rows).toEqual(rows);
    expect((await round(['', end])).rows).toEqual([]);
    expect((await round(['30%', '2', end])).rows).toEqual(['brick red counted 30% 2']);
  });
});
