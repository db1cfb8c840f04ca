import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { openZip } from '../../src/unpack/open-zip.js';
import { UnpackError } from '../../src/unpack/unpack-error.js';
import { fourSheets, makeWorkbook, makeZip } from '../sheets/read/make-files.js';

type Read = (name: string) => Promise<Buffer | undefined>;

/** Parts of a zip as a whole. */
const readerOf = (zip: Buffer, mostMb?: number): Read => {
  const open = openZip(zip, mostMb);
  return async (name) => {
    const chunks = (await open).inflate(name);
    if (chunks === undefined) return undefined;
    const all: Uint8Array[] = [];
    for await (const chunk of chunks) all.push(chunk);
    return Buffer.concat(all);
  };
};

const fault = async (act: () => Promise<unknown>): Promise<string> => {
  try {
    await act();
  } catch (error) {
    if (error instanceof UnpackError) return error.fault;
    throw error;
  }
  return 'none';
};

describe('openZip', () => {
  const zip = makeZip({ 'xl/Workbook.xml': 'one', 'b.txt': 'two'.repeat(1000), empty: '' });

  it('reads parts by name, without regard to case and a leading slash', async () => {
    const read = readerOf(zip);
    expect((await read('/xl/workbook.xml'))?.toString()).toBe('one');
    expect((await read('b.txt'))?.toString()).toBe('two'.repeat(1000));
    expect((await read('empty'))?.length).toBe(0);
    expect(await read('none')).toBeUndefined();
  });

  it('reads what another program packed', async () => {
    const read = readerOf(await makeWorkbook(fourSheets));
    expect((await read('xl/workbook.xml'))?.toString()).toContain('name="pots"');
  });

  it('reads a zip64 directory', async () => {
    // PKWARE APPNOTE 4.3.14 to 4.3.16, 4.5.3: all numbers of one part moved to the 64-bit fields.
    const stored = makeZip({ a: 'hello' });
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
    extra.writeBigUInt64LE(BigInt(deflateRawSync('hello').length), 12);
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
    const read = readerOf(Buffer.concat([stored.subarray(0, at), entry, extra, far, locator, last]));
    expect((await read('a'))?.toString()).toBe('hello');
  });

  it('finds damage wherever a zip is cut off or changed', async () => {
    for (let length = 0; length < zip.length - 4; length += 3) {
      expect(await fault(async () => readerOf(zip.subarray(0, length))('b.txt'))).toBe('broken');
    }
    const changed = Buffer.from(zip);
    const at = changed.indexOf(deflateRawSync('two'.repeat(1000)));
    changed.writeUInt8(changed.readUInt8(at + 3) ^ 0xff, at + 3);
    expect(await fault(async () => readerOf(changed)('b.txt'))).toBe('broken');
  });

  it('never throws anything but its own error, whatever byte is changed', async () => {
    for (let at = 0; at < zip.length; at += 1) {
      const changed = Buffer.from(zip);
      changed.writeUInt8(changed.readUInt8(at) ^ 0x55, at);
      await expect(fault(async () => readerOf(changed)('b.txt'))).resolves.toBeTypeOf('string');
    }
  });

  it('inflates no more than its bound, all parts together', async () => {
    const kb = 1 / 1024;
    expect(await fault(async () => readerOf(zip, 2 * kb)('b.txt'))).toBe('too large');
    expect(await fault(async () => readerOf(zip, 3 * kb)('b.txt'))).toBe('none');
    const read = readerOf(zip, 4 * kb);
    await read('b.txt');
    expect(await fault(async () => read('b.txt'))).toBe('too large');
  });

  it('inflates no more than the directory says', async () => {
    const lying = Buffer.from(zip);
    lying.writeUInt32LE(10, lying.lastIndexOf('b.txt') - 46 + 24);
    expect(await fault(async () => readerOf(lying)('b.txt'))).toBe('broken');
  });

  it('tells an encrypted part', async () => {
    expect(await fault(async () => readerOf(makeZip({ a: 'b' }, 1))('a'))).toBe('locked');
  });
});
