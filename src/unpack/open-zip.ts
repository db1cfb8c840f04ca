// Unpacking: a zip's table of contents and its parts, inflated within bounds. In: bytes. Out: parts by name, in chunks.
// Layout and numbers: PKWARE APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12, 4.3.14 to 4.3.16 and 4.5.3.
import { crc32, createInflateRaw } from 'node:zlib';
import { UnpackError } from './unpack-error.js';

export interface OpenZip {
  /** The inflated part, chunk by chunk; undefined where there is none of that name (case and a leading slash ignored). */
  readonly inflate: (name: string) => AsyncIterable<Uint8Array> | undefined;
}

interface Entry {
  readonly method: number;
  readonly isEncrypted: boolean;
  readonly checksum: number;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly headerAt: number;
}

/** All parts read from one package together. A sheet of a million cells takes a tenth of it. */
const MOST_INFLATED_MB = 256;
const MOST_ENTRIES = 10_000;
const UNKNOWN = 0xffffffff;
const CHUNK_BYTES = 2 ** 18;

/**
 * Reads the central directory; parts are inflated when asked for, together no more than `mostMb`, and never stand in
 * memory as a whole. Throws an UnpackError for a directory or part that is damaged, encrypted or too large, the latter
 * before anything is inflated.
 */
export function openZip(zip: Buffer, mostMb = MOST_INFLATED_MB): OpenZip {
  const entries = guard(() => readDirectory(zip));
  let left = mostMb * 2 ** 20;
  const inflate = (name: string): AsyncIterable<Uint8Array> | undefined => {
    const entry = entries.get(partKey(name));
    if (entry === undefined) return undefined;
    if (entry.isEncrypted) throw new UnpackError('locked', `${name} is encrypted`);
    if (entry.bytes > left)
      throw new UnpackError(
        'too large',
        `${Math.ceil(mostMb - left / 2 ** 20 + entry.bytes / 2 ** 20)} MB unpacked`,
        `${mostMb} MB`,
      );
    left -= entry.bytes;
    return checkedChunks(
      entry,
      guard(() => packedPart(zip, entry)),
    );
  };
  return { inflate };
}

const partKey = (name: string): string => name.replaceAll('\\', '/').replace(/^\/+/, '').toLowerCase();

/** Offsets in a damaged zip point anywhere: reading past the end is damage, not a fault of ours. */
function guard<T>(read: () => T): T {
  try {
    return read();
  } catch (error) {
    throw asDamage(error);
  }
}

function asDamage(error: unknown): UnpackError {
  if (error instanceof UnpackError) return error;
  return broken(error instanceof Error ? error.message : String(error));
}

const broken = (reason: string): UnpackError => new UnpackError('broken', reason);

function readDirectory(zip: Buffer): Map<string, Entry> {
  const { count, start } = findDirectory(zip);
  if (count > MOST_ENTRIES) throw broken(`${count} parts`);
  const entries = new Map<string, Entry>();
  let at = start;
  for (let index = 0; index < count; index += 1) {
    if (zip.readUInt32LE(at) !== 0x02014b50) throw broken(`no directory entry at ${at}`);
    const nameBytes = zip.readUInt16LE(at + 28);
    const extraBytes = zip.readUInt16LE(at + 30);
    const name = zip.toString('utf8', at + 46, at + 46 + nameBytes);
    entries.set(
      partKey(name),
      readEntry(zip, at, zip.subarray(at + 46 + nameBytes, at + 46 + nameBytes + extraBytes)),
    );
    at += 46 + nameBytes + extraBytes + zip.readUInt16LE(at + 32);
  }
  return entries;
}

function findDirectory(zip: Buffer): { count: number; start: number } {
  const end = zip.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  if (end === -1) throw broken('no end of the directory; the file is cut off');
  const count = zip.readUInt16LE(end + 10);
  const start = zip.readUInt32LE(end + 16);
  if (count !== 0xffff && start !== UNKNOWN) return { count, start };
  const far = Number(zip.readBigUInt64LE(end - 20 + 8));
  return { count: Number(zip.readBigUInt64LE(far + 32)), start: Number(zip.readBigUInt64LE(far + 48)) };
}

function readEntry(zip: Buffer, at: number, extra: Buffer): Entry {
  const far = zip64Numbers(extra);
  const number = (offset: number): number => {
    const near = zip.readUInt32LE(at + offset);
    return near === UNKNOWN ? (far.shift() ?? near) : near;
  };
  // The far numbers stand in this order, each only where its near one is unknown.
  const bytes = number(24);
  const packedBytes = number(20);
  const headerAt = number(42);
  const isEncrypted = (zip.readUInt16LE(at + 8) & 1) === 1;
  return {
    method: zip.readUInt16LE(at + 10),
    isEncrypted,
    checksum: zip.readUInt32LE(at + 16),
    packedBytes,
    bytes,
    headerAt,
  };
}

function zip64Numbers(extra: Buffer): number[] {
  for (let at = 0; at + 4 <= extra.length; at += 4 + extra.readUInt16LE(at + 2)) {
    if (extra.readUInt16LE(at) !== 1) continue;
    const count = Math.floor(extra.readUInt16LE(at + 2) / 8);
    return Array.from({ length: count }, (_, index) => Number(extra.readBigUInt64LE(at + 4 + 8 * index)));
  }
  return [];
}

function packedPart(zip: Buffer, { headerAt, packedBytes, method }: Entry): Buffer {
  if (zip.readUInt32LE(headerAt) !== 0x04034b50) throw broken(`no part at ${headerAt}`);
  if (method !== 0 && method !== 8) throw broken(`packed by method ${method}`);
  const from = headerAt + 30 + zip.readUInt16LE(headerAt + 26) + zip.readUInt16LE(headerAt + 28);
  return zip.subarray(from, from + packedBytes);
}

/** A part that holds more than its directory says is refused at the first byte too many. */
async function* checkedChunks(
  { method, bytes, checksum }: Entry,
  packed: Buffer,
): AsyncGenerator<Uint8Array> {
  let seen = 0;
  let sum = 0;
  try {
    for await (const chunk of method === 0 ? [packed] : unpack(packed)) {
      seen += chunk.length;
      if (seen > bytes) break;
      sum = crc32(chunk, sum);
      yield chunk;
    }
  } catch (error) {
    throw asDamage(error);
  }
  if (seen !== bytes || sum !== checksum) throw broken('a part does not match its checksum');
}

function unpack(packed: Buffer): AsyncIterable<Buffer> {
  const inflater = createInflateRaw({ chunkSize: CHUNK_BYTES });
  inflater.end(packed);
  return inflater;
}
