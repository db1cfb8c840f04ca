// `halfpot check` on the sample, on the starter sheets, and on the sample with slips that no cell shows by itself.
import { cpSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
const sample = join(import.meta.dirname, '../../sample-data/low-sluice');

/** The sample with one sheet changed. */
function changed(name: string, sheet: string, change: (text: string) => string): string {
  const folder = join(root, name);
  cpSync(sample, folder, { recursive: true });
  const file = join(folder, sheet);
  const before = readFileSync(file, 'utf8');
  const after = change(before);
  expect(after).not.toBe(before);
  writeFileSync(file, after);
  return folder;
}

describe('halfpot check', () => {
  it('asks nothing about the sample and the starter sheets', () => {
    runHalfpot(['start', join(root, 'starter')]);
    for (const sheets of [sample, join(root, 'starter')]) {
      const { code, out, err } = runHalfpot(['check', sheets]);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).toContain('No problems');
    }
  });

  it('asks about a misspelt paint and names the one that is likely meant', () => {
    const folder = changed('misspelt', 'pots.csv', (text) => text.replace('Sluice green', 'Sluce green'));
    const { code, out, err } = runHalfpot(['check', folder]);
    expect(code).toBe(0);
    expect(out + err).toMatch(
      /^warning: pots\.csv row \d+, "paint" \(A\d+\): no scheme uses the paint "Sluce green", and no other sheet names it; one that is used is called Sluice green\. Write Sluice green if that is meant/m,
    );
    expect(`${out}${err}`.match(/^warning: /gm)).toHaveLength(1);
  });

  it('says how each sheet was read, also beside errors, in lines of 80 letters', () => {
    const own = changed('own', 'army.csv', (text) =>
      text.replace('unit,', 'Einheit,').replace(',notes', ',lamp'),
    );
    const { code, out, err } = runHalfpot(['check', own]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain(
      [
        '  army      8 units, 109 figures',
        '            army.csv, row 1: Einheit -> unit, figure, scheme, count, batch,',
        '            done, priority',
        '            left alone: lamp',
        '            blank batch (3): 10; done (6): none',
        '',
      ].join('\n'),
    );
    expect(out).toMatch(/^Found:\n(?:.|\n)*\nNo problems\.\n$/);
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    const army = readFileSync(join(own, 'army.csv'), 'utf8');
    writeFileSync(join(own, 'army.csv'), army.replace(',count,', ',head,'));
    expect(runHalfpot(['check', own])).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringMatching(/\n1 error\nRead:\n(?:.|\n)*\n {12}left alone: head \(count\?\), lamp\n$/),
    });
  });

  it('names sheets that hold nothing but headers', () => {
    const folder = join(root, 'bare');
    mkdirSync(folder);
    writeSheets(folder, {
      'pots.csv': 'paint,size ml,left\nbrick red,17,half\n',
      'figures.csv': 'figure,eye mm\n',
      'schemes.csv': '\nscheme,step,zone,layer,paint\n',
      'army.csv': 'unit,figure,count\n',
    });
    const { code, out, err } = runHalfpot(['check', folder]);
    expect([code, err, out.split('\n').slice(-5)]).toEqual([
      ...[0, ''],
      [
        '  figures   figures.csv, row 1: nothing below its headers',
        '  schemes   schemes.csv, row 2: nothing below its headers',
        '  army      army.csv, row 1: nothing below its headers',
        'No problems.',
        '',
      ],
    ]);
  });

  it('writes down what headers were taken for, never over a file, and reads it when it is mended', () => {
    const folder = join(root, 'headers');
    mkdirSync(folder);
    const pots = 'Colour,ml,In the pot,shade\nbrick red,17,half,x\nearth wash,24,40%,\n';
    writeFileSync(join(folder, 'pots.csv'), pots);
    const first = runHalfpot(['check', folder, '--write-columns']);
    const target = join(folder, 'columns.csv');
    expect(first.code).toBe(0);
    expect(first.out).toMatch(/\nWrote .*columns\.csv: mend its rows, and check again\.\n$/);
    expect(first.err).toContain('this column is not read, and "left" counts as blank');
    const written = readFileSync(target, 'utf8');
    expect(written).toBe(
      '\ufeffsheet,column,called\r\npots,paint,Colour\r\npots,size ml,ml\r\npots,left?,In the pot\r\npots,,shade\r\n',
    );
    expect(runHalfpot(['check', folder]).err).toBe(first.err);
    expect(runHalfpot(['check', folder, '--write-columns'])).toMatchObject({
      code: 2,
      err: expect.stringContaining(
        `halfpot: ${target} is already there and stays as it is. Rename it first, or mend its rows.\n`,
      ),
    });
    expect(readFileSync(target, 'utf8')).toBe(written);
    writeFileSync(target, written.replace('left?', 'left'));
    const { code, out, err } = runHalfpot(['check', folder]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain(
      'Colour -> paint, ml -> size ml, In the pot -> left\n            left alone: shade\n',
    );
  });

  it('writes no columns where every header is the own name of its column', () => {
    const folder = join(root, 'plain');
    mkdirSync(folder);
    writeSheets(folder, fourShortSheets);
    const { out } = runHalfpot(['check', folder, '--write-columns']);
    expect(out).toMatch(/Every header is the own name of its column: there is nothing to write\.\n$/);
    expect(existsSync(join(folder, 'columns.csv'))).toBe(false);
  });

  it('tells a wrong currency once and blames no price for it', () => {
    const folder = changed('currency', 'settings.csv', (text) =>
      text.replace(/currency,\w+/, 'currency,euro'),
    );
    const { code, err } = runHalfpot(['check', folder]);
    expect(code).toBe(1);
    expect(err).toMatch(
      /^error: settings\.csv row \d+, "value" \(B\d+\): "euro" is not a currency\..*\n1 error\nRead:\n {2}settings {2}settings\.csv, row 1: name, value\n$/,
    );
  });
});
