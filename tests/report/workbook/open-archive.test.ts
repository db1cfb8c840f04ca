import { describe, expect, it } from 'vitest';
import { openArchive } from '../../../src/report/workbook/open-archive.js';
import { listParts } from './list-parts.js';

function archiveOf(date: string, files: Readonly<Record<string, string>>): Buffer {
  const archive = openArchive(date);
  for (const [name, text] of Object.entries(files)) archive.append(text, { name });
  return Buffer.from(archive.close());
}

describe('an archive', () => {
  it('gives every file back, in order', async () => {
    const files = {
      'z.xml': '<a>Größe µm ✓ 𝄞</a>',
      'folder/a.xml': 'abc'.repeat(100_000),
      '[empty].xml': '',
      'noise.xml': Array.from({ length: 5_000 }, (_, at) => ((at * 7_919) % 65_521).toString(36)).join(''),
    };
    const parts = await listParts(archiveOf('2026-03-14', files));
    expect(parts).toEqual(files);
    expect(Object.keys(parts)).toEqual(Object.keys(files));
  });

  // MS-DOS date by PKWARE APPNOTE 4.4.6: bits 0-4 day, 5-8 month, 9-15 year from 1980.
  it.each([
    ['2026-03-14', (46 << 9) | (3 << 5) | 14],
    ['1950-01-02', (0 << 9) | (1 << 5) | 2],
    ['2300-12-31', (127 << 9) | (12 << 5) | 31],
  ])('has %s at midnight in every header and entry', (date, dosDate) => {
    const bytes = archiveOf(date, { a: 'one', b: 'two', c: 'three' });
    const times = (signature: string, offset: number): number[] => {
      const found: number[] = [];
      for (let at = bytes.indexOf(signature); at >= 0; at = bytes.indexOf(signature, at + 4))
        found.push(bytes.readUInt16LE(at + offset), bytes.readUInt16LE(at + offset + 2));
      return found;
    };
    const expected = [0, dosDate, 0, dosDate, 0, dosDate];
    expect(times('PK\x03\x04', 10)).toEqual(expected);
    expect(times('PK\x01\x02', 12)).toEqual(expected);
  });

  // Method, sizes and checksum by 4.3.7; the checksum of "123456789" is the one that catalogues of CRCs give for CRC-32.
  it('says in its first header what follows', () => {
    const bytes = archiveOf('2026-03-14', { 'a.xml': '123456789' });
    expect(bytes.toString('latin1', 0, 4)).toBe('PK\x03\x04');
    expect([bytes.readUInt16LE(4), bytes.readUInt16LE(6), bytes.readUInt16LE(8)]).toEqual([20, 0, 8]);
    expect(bytes.readUInt32LE(14)).toBe(0xcbf43926);
    expect(bytes.readUInt32LE(22)).toBe(9);
    expect(bytes.toString('latin1', 30, 30 + bytes.readUInt16LE(26))).toBe('a.xml');
    const packedEnd = 35 + bytes.readUInt32LE(18);
    expect(bytes.toString('latin1', packedEnd, packedEnd + 4)).toBe('PK\x01\x02');
  });

  // An archive without files is its end record alone: 22 bytes (4.3.16).
  it('may be empty', () => {
    expect(archiveOf('2026-03-14', {})).toEqual(Buffer.concat([Buffer.from('PK\x05\x06'), Buffer.alloc(18)]));
  });
});
