import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readTables } from '../../../src/sheets/read/read-tables.js';
import { fourShortSheets, writeSheets } from '../../problems/problem-case.js';

const root = mkdtempSync(join(tmpdir(), 'halfpot-replace-'));
afterAll(() => rmSync(root, { recursive: true, force: true }));

/** A folder of the four short sheets, some of them otherwise. */
function folder(name: string, more: Readonly<Record<string, string>> = {}): string {
  const path = join(root, name);
  mkdirSync(path);
  writeSheets(path, { ...fourShortSheets, ...more });
  return path;
}
const other = join(root, 'my other army.txt');
writeFileSync(other, 'unit,figure,count\nsecond spears,spearman,7\n');
const instead = [{ sheet: 'army', path: other }] as const;

describe('a file in the place of a sheet', () => {
  it('is that sheet, whatever it is called; the others stay', async () => {
    const path = folder('whole');
    const [before, after] = [await readTables(path), await readTables(path, instead)];
    const rowsOf = ({ tables }: typeof before, sheet: string) =>
      tables
        .filter((table) => table.sheet === sheet)
        .map(({ file, rows }) => [file, rows.length && rows[0]?.cells]);
    expect(after.problems).toEqual([]);
    expect(rowsOf(after, 'army')).toEqual([['my other army.txt', ['second spears', 'spearman', '7']]]);
    for (const sheet of ['pots', 'figures', 'schemes'])
      expect(rowsOf(after, sheet)).toEqual(rowsOf(before, sheet));
  });

  it('takes what was wrong with that sheet along', async () => {
    const path = folder('header only', { 'army.csv': 'unit,figure,count\n' });
    expect((await readTables(path)).problems.map(({ code }) => code)).toEqual(['header-only']);
    expect((await readTables(path, instead)).problems).toEqual([]);
  });

  it('that cannot be read is said, and the sheet is missing', async () => {
    const found = await readTables(folder('unread'), [{ sheet: 'army', path: root }]);
    expect(found.problems.map(({ code, sheet }) => [code, sheet])).toEqual([['unreadable-file', 'army']]);
    expect(found.tables.some(({ sheet }) => sheet === 'army')).toBe(false);
  });
});
