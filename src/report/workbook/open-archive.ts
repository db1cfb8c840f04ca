// Export: a zip archive. In: files as text, a date. Out: the archive's bytes, of that date and no moment of writing.
// Layout by PKWARE's APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16; what the numbers mean by 4.4.
import { crc32, deflateRawSync } from 'node:zlib';

export interface Archive {
  /** One file more. */
  readonly append: (text: string, file: { readonly name: string }) => void;
  /** The bytes, with all files in the order in which they came. Nothing can be added afterwards. */
  readonly close: () => Uint8Array;
}

interface Entry {
  readonly name: Buffer;
  readonly checksum: number;
  readonly size: number;
  readonly packed: Buffer;
}

/**
 * An empty archive, whose files are all of midnight of `date` (YYYY-MM-DD). Years outside 1980 to 2107, which the
 * format cannot hold, take the nearest. Names are plain ASCII; all together less than 4 GB, and 65,535 files.
 */
export function openArchive(date: string): Archive {
  const entries: Entry[] = [];
  return {
    append: (text, { name }) => {
      const bytes = Buffer.from(text, 'utf8');
      const packed = deflateRawSync(bytes, { level: 6 });
      entries.push({ name: Buffer.from(name, 'latin1'), checksum: crc32(bytes), size: bytes.length, packed });
    },
    close: () => joinEntries(entries, dosDateOf(date)),
  };
}

/** Each file behind its header, then the directory, then the end of it. */
function joinEntries(entries: readonly Entry[], dosDate: number): Uint8Array {
  const files: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const entry of entries) {
    const about = describe(entry, dosDate);
    const file = [fields([4, 0x04034b50]), about, entry.name, entry.packed];
    files.push(...file);
    directory.push(fields([4, 0x02014b50], [2, version]), about, inDirectory(at), entry.name);
    at += sizeOf(file);
  }
  return Buffer.concat([...files, ...directory, endOf(entries.length, sizeOf(directory), at)]);
}

const sizeOf = (pieces: readonly Buffer[]): number => pieces.reduce((sum, { length }) => sum + length, 0);

/** 2.0, the first that knows method 8, deflate. */
const version = 20;
const deflated = 8;

/** What header and directory both say of a file: version, flags, method, time, date, checksum, sizes, lengths of name and extra. */
const describe = ({ name, checksum, size, packed }: Entry, dosDate: number): Buffer =>
  fields(
    [2, version],
    [2, 0],
    [2, deflated],
    [2, 0],
    [2, dosDate],
    [4, checksum],
    [4, packed.length],
    [4, size],
    [2, name.length],
    [2, 0],
  );

/** What the directory says beside it: length of a comment, disk, attributes inside and outside, where the header is. */
const inDirectory = (at: number): Buffer => fields([2, 0], [2, 0], [2, 0], [4, 0], [4, at]);

/** Disks, entries here and in all, size and place of the directory, length of a comment. */
const endOf = (count: number, size: number, at: number): Buffer =>
  fields([4, 0x06054b50], [2, 0], [2, 0], [2, count], [2, count], [4, size], [4, at], [2, 0]);

/** Whole numbers of two or four bytes, the lowest first. */
function fields(...all: readonly (readonly [bytes: 2 | 4, value: number])[]): Buffer {
  const record = Buffer.alloc(all.reduce((sum, [bytes]) => sum + bytes, 0));
  let at = 0;
  for (const [bytes, value] of all) at = record.writeUIntLE(value, at, bytes);
  return record;
}

/** A date as archives hold it (4.4.6): bits 0 to 4 the day, 5 to 8 the month, 9 to 15 the years since 1980. */
function dosDateOf(date: string): number {
  const [year = 1980, month = 1, day = 1] = date.split('-').map(Number);
  const yearsSince1980 = Math.min(127, Math.max(0, year - 1980));
  return yearsSince1980 * 512 + month * 32 + day;
}
