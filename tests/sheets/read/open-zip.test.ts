import { deflateRawSync } from 'node:zlib';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { openZip, WorkbookError } from '../../../src/sheets/read/open-zip.js';
import { storeZip } from '../../../src/sheets/read/store-zip.js';
import { fourSheets, makeWorkbook, makeZip } from './make-files.js';

const fault = (act: () => unknown): string => {
  try {
    act();
  } catch (error) {
    if (error instanceof WorkbookError) return error.fault;
    throw error;
  }
  return 'none';
};

describe('openZip', () => {
  const zip = makeZip({ 'xl/Workbook.xml': 'one', 'b.txt': 'two'.repeat(1000), empty: '' });

  it('reads parts by name, without regard to case and a leading slash', () => {
    const { read } = openZip(zip);
    expect(read('/xl/workbook.xml')?.toString()).toBe('one');
    expect(read('b.txt')?.toString()).toBe('two'.repeat(1000));
    expect(read('empty')?.length).toBe(0);
    expect(read('none')).toBeUndefined();
  });

  it('reads what another program packed', async () => {
    const { read } = openZip(await makeWorkbook(fourSheets));
    expect(read('xl/workbook.xml')?.toString()).toContain('name="pots"');
  });

  it('reads a zip64 directory', () => {
    // PKWARE APPNOTE 4.3.14 to 4.3.16, 4.5.3: all numbers of one stored part moved to the 64-bit fields.
    const stored = storeZip(new Map([['a', Buffer.from('hello')]]));
    const at = stored.indexOf('PK\x01\x02', 0, 'latin1');
    const end = stored.indexOf('PK\x05\x06', 0, 'latin1');
    const entry = Buffer.from(stored.subarray(at, end));
    entry.writeUInt32LE(0xffffffff, 20);
    entry.writeUInt32LE(0xffffffff, 24);
    entry.writeUInt32LE(0xffffffff, 42);
    entry.writeUInt16LE(28, 30);
    const extra = Buffer.alloc(28);
    extra.writeUInt16LE(1, 0);
    extra.writeUInt16LE(24, 2);
    extra.writeBigUInt64LE(5n, 4);
    extra.writeBigUInt64LE(5n, 12);
    const far = Buffer.alloc(56);
    far.writeUInt32LE(0x06064b50, 0);
    far.writeBigUInt64LE(1n, 32);
    far.writeBigUInt64LE(BigInt(at), 48);
    const locator = Buffer.alloc(20);
    locator.writeUInt32LE(0x07064b50, 0);
    locator.writeBigUInt64LE(BigInt(at + entry.length + extra.length), 8);
    const last = Buffer.from(stored.subarray(end));
    last.writeUInt16LE(0xffff, 10);
    last.writeUInt32LE(0xffffffff, 16);
    const { read } = openZip(Buffer.concat([stored.subarray(0, at), entry, extra, far, locator, last]));
    expect(read('a')?.toString()).toBe('hello');
  });

  it('finds damage wherever a zip is cut off or changed', () => {
    for (let length = 0; length < zip.length - 4; length += 3) {
      expect(fault(() => openZip(zip.subarray(0, length)).read('b.txt'))).toBe('broken-workbook');
    }
    const changed = Buffer.from(zip);
    const at = changed.indexOf(deflateRawSync('two'.repeat(1000)));
    changed.writeUInt8(changed.readUInt8(at + 3) ^ 0xff, at + 3);
    expect(fault(() => openZip(changed).read('b.txt'))).toBe('broken-workbook');
  });

  it('never throws anything but its own error, whatever byte is changed', () => {
    for (let at = 0; at < zip.length; at += 1) {
      const changed = Buffer.from(zip);
      changed.writeUInt8(changed.readUInt8(at) ^ 0x55, at);
      expect(() => fault(() => openZip(changed).read('b.txt'))).not.toThrow();
    }
  });

  it('inflates no more than its bound, nor than the directory says', () => {
    expect(fault(() => openZip(zip, 2999).read('b.txt'))).toBe('too-large-file');
    expect(fault(() => openZip(zip, 3000).read('b.txt'))).toBe('none');
    const { read } = openZip(zip, 4000);
    read('b.txt');
    expect(fault(() => read('b.txt'))).toBe('too-large-file');
    const lying = Buffer.from(zip);
    lying.writeUInt32LE(10, lying.lastIndexOf('b.txt') - 46 + 24);
    expect(fault(() => openZip(lying).read('b.txt'))).toBe('broken-workbook');
  });

  it('tells an encrypted part', () => {
    expect(fault(() => openZip(makeZip({ a: 'b' }, 1)).read('a'))).toBe('locked-workbook');
  });
});

describe('storeZip', () => {
  it('packs what another program reads', async () => {
    const { read } = openZip(await makeWorkbook(fourSheets));
    const names = [
      'xl/workbook.xml',
      'xl/_rels/workbook.xml.rels',
      'xl/worksheets/sheet1.xml',
      'xl/styles.xml',
    ];
    const parts = names.map((name): [string, Buffer] => [name, read(name) ?? Buffer.alloc(0)]);
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(storeZip(new Map(parts)) as never);
    expect(workbook.getWorksheet('pots')?.getCell('B2').value).toBe(17);
  });

  it('packs nothing into an empty zip', () => {
    expect(openZip(storeZip(new Map())).read('a')).toBeUndefined();
  });
});
