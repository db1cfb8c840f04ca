// Export: parts packed into one archive. In: names, texts, a date. Out: bytes by PKWARE's APPNOTE 6.3.10, deflated, which
// depend on nothing but what is in them.
import { crc32, deflateRawSync } from 'node:zlib';
import { dosDateOf } from './set-zip-times.js';

export interface ZipPart {
  /** ASCII. */
  readonly name: string;
  readonly text: string;
}

interface Packed {
  readonly name: Buffer;
  readonly bytes: Buffer;
  readonly crc: number;
  readonly plainSize: number;
  /** Where its own header stands. */
  readonly at: number;
}

const localHeader = 30;
const directoryEntry = 46;
const endRecord = 22;
/** Version 2.0 of the format can deflate. */
const version = 20;
const deflated = 8;

/** The archive; every part bears midnight of `date` (YYYY-MM-DD) as its time. No parts give an empty archive. */
export function packZip(parts: readonly ZipPart[], date: string): Uint8Array {
  const day = dosDateOf(date);
  const packed: Packed[] = [];
  const pieces: Buffer[] = [];
  let at = 0;
  for (const { name, text } of parts) {
    const plain = Buffer.from(text, 'utf8');
    const one = {
      name: Buffer.from(name, 'latin1'),
      bytes: deflateRawSync(plain),
      crc: crc32(plain),
      plainSize: plain.length,
      at,
    };
    packed.push(one);
    pieces.push(writeHeader(one, day), one.name, one.bytes);
    at += localHeader + one.name.length + one.bytes.length;
  }
  const directory = packed.flatMap((one) => [writeEntry(one, day), one.name]);
  const size = directory.reduce((sum, piece) => sum + piece.length, 0);
  return Buffer.concat([...pieces, ...directory, writeEnd(packed.length, size, at)]);
}

/** 4.3.7: what stands before a part's bytes. */
function writeHeader(one: Packed, day: number): Buffer {
  const header = Buffer.alloc(localHeader);
  header.writeUInt32LE(0x04034b50, 0);
  header.writeUInt16LE(version, 4);
  writeShared(header, 8, { one, day });
  return header;
}

/** 4.3.12: the same in the directory, with the place of the part. */
function writeEntry(one: Packed, day: number): Buffer {
  const entry = Buffer.alloc(directoryEntry);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(version, 4);
  entry.writeUInt16LE(version, 6);
  writeShared(entry, 10, { one, day });
  entry.writeUInt32LE(one.at, 42);
  return entry;
}

/** Method, time, sum of the bits, sizes and length of the name stand in one order in both. */
function writeShared(into: Buffer, at: number, { one, day }: { one: Packed; day: number }): void {
  into.writeUInt16LE(deflated, at);
  into.writeUInt16LE(day, at + 4);
  into.writeUInt32LE(one.crc, at + 6);
  into.writeUInt32LE(one.bytes.length, at + 10);
  into.writeUInt32LE(one.plainSize, at + 14);
  into.writeUInt16LE(one.name.length, at + 18);
}

/** 4.3.16: where the directory stands. */
function writeEnd(parts: number, size: number, at: number): Buffer {
  const end = Buffer.alloc(endRecord);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(parts, 8);
  end.writeUInt16LE(parts, 10);
  end.writeUInt32LE(size, 12);
  end.writeUInt32LE(at, 16);
  return end;
}
