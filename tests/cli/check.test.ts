// `halfpot check` on the sample, on the starter sheets, and on the sample with slips that no cell shows by itself.
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
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

  it('lists the columns that it leaves alone, also beside errors', () => {
    const own = changed('own', 'army.csv', (text) => text.replace(',notes', ',colour of the lamp'));
    expect(runHalfpot(['check', own])).toMatchObject({
      code: 0,
      err: '',
      out: expect.stringMatching(
        /\nLeft alone, as columns of your own: army\.csv "colour of the lamp"\.\nNo problems\.\n$/,
      ),
    });
    const army = readFileSync(join(own, 'army.csv'), 'utf8');
    writeFileSync(join(own, 'army.csv'), army.replace(',count,', ',head,'));
    expect(runHalfpot(['check', own])).toMatchObject({
      code: 1,
      out: '',
      err: expect.stringMatching(/\n1 error\nLeft alone, .* army\.csv "head", "colour of the lamp"\.\n$/),
    });
  });

  it('tells a wrong currency once and blames no price for it', () => {
    const folder = changed('currency', 'settings.csv', (text) =>
      text.replace(/currency,\w+/, 'currency,euro'),
    );
    const { code, err } = runHalfpot(['check', folder]);
    expect(code).toBe(1);
    expect(err).toMatch(
      /^error: settings\.csv row \d+, "value" \(B\d+\): "euro" is not a currency\..*\n1 error\n$/,
    );
  });
});
