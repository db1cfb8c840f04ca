import { describe, expect, it } from 'vitest';
import { setZipTimes } from '../../../src/report/export/set-zip-times.js';
import { writeReorderWorkbook } from '../../../src/report/export/write-reorder-workbook.js';
import { reorderExample } from './reorder-example.js';

describe('setZipTimes', () => {
  // MS-DOS date by PKWARE APPNOTE 4.4.6: bits 0-4 day, 5-8 month, 9-15 year from 1980.
  it.each([
    ['2026-03-14', (46 << 9) | (3 << 5) | 14],
    ['1950-01-02', (0 << 9) | (1 << 5) | 2],
    ['2300-12-31', (127 << 9) | (12 << 5) | 31],
  ])('writes %s into every entry', async (date, dosDate) => {
    const bytes = Buffer.from(setZipTimes(await writeReorderWorkbook(reorderExample), date));
    const dates: number[] = [];
    for (let at = bytes.indexOf('PK\x01\x02'); at >= 0; at = bytes.indexOf('PK\x01\x02', at + 4))
      dates.push(bytes.readUInt16LE(at + 12), bytes.readUInt16LE(at + 14));
    expect(dates.length).toBeGreaterThan(10);
    expect(new Set(dates)).toEqual(new Set([0, dosDate]));
    expect(bytes.readUInt16LE(10)).toBe(0);
    expect(bytes.readUInt16LE(12)).toBe(dosDate);
  });

  it('refuses what is no archive', () => {
    expect(() => setZipTimes(new Uint8Array(100), '2026-03-14')).toThrow('no directory');
    expect(() => setZipTimes(new Uint8Array(0), '2026-03-14')).toThrow();
  });

  it('does not change its input', async () => {
    const before = await writeReorderWorkbook(reorderExample);
    const copy = before.slice();
    setZipTimes(before, '2000-01-01');
    expect(before).toEqual(copy);
  });
});
