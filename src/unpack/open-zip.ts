// Unpacking: a zip's table of contents and its parts, inflated within bounds. In: bytes. Out: parts by name, in chunks.
import { pipeline } from 'node:stream';
import { crc32, createInflateRaw } from 'node:zlib';
import { type Entry, fromBufferPromise, type ZipFile } from 'yauzl';
import { UnpackError } from './unpack-error.js';

export interface OpenZip {
  /** The inflated part, chunk by chunk; undefined where there is none of that name (case and a leading slash ignored). */
  readonly inflate: (name: string) => AsyncIterable<Uint8Array> | undefined;
}

/** All parts read from one package together. A sheet of a million cells takes a tenth of it. */
const MOST_INFLATED_MB = 256;
const MOST_ENTRIES = 10_000;
const CHUNK_BYTES = 2 ** 18;

/**
 * Reads the central directory; parts are inflated when asked for, together no more than `mostMb`, and never stand in
 * memory as a whole. Throws a UnpackError for a directory or part that is damaged, encrypted or too large, the latter
 * before anything is inflated.
 */
export async function openZip(bytes: Buffer, mostMb = MOST_INFLATED_MB): Promise<OpenZip> {
  const { zip, entries } = await readDirectory(bytes);
  let left = mostMb * 2 ** 20;
  const inflate = (name: string): AsyncIterable<Uint8Array> | undefined => {
    const entry = entries.get(partKey(name));
    if (entry === undefined) return undefined;
    if (entry.isEncrypted()) throw new UnpackError('locked', `${name} is encrypted`);
    const { uncompressedSize } = entry;
    if (uncompressedSize > left)
      throw new UnpackError(
        'too large',
        `${Math.ceil(mostMb - left / 2 ** 20 + uncompressedSize / 2 ** 20)} MB unpacked`,
        `${mostMb} MB`,
      );
    left -= uncompressedSize;
    return checkedChunks(zip, entry);
  };
  return { inflate };
}

const partKey = (name: string): string => name.replaceAll('\\', '/').replace(/^\/+/, '').toLowerCase();

function asDamage(error: unknown): UnpackError {
  if (error instanceof UnpackError) return error;
  return broken(error instanceof Error ? error.message : String(error));
}

const broken = (reason: string): UnpackError => new UnpackError('broken', reason);

/** Names are taken as they are: no part is ever written to a disk. */
async function readDirectory(
  bytes: Buffer,
): Promise<{ readonly zip: ZipFile; readonly entries: ReadonlyMap<string, Entry> }> {
  try {
    const zip = await fromBufferPromise(bytes, { lazyEntries: true, decodeStrings: false, autoClose: false });
    if (zip.entryCount > MOST_ENTRIES) throw broken(`${zip.entryCount} parts`);
    const entries = new Map<string, Entry>();
    for await (const entry of zip.eachEntry()) entries.set(partKey(entry.fileNameRaw.toString()), entry);
    return { zip, entries };
  } catch (error) {
    throw asDamage(error);
  }
}

/** A part that holds more than its directory says is refused at the first byte too many. */
async function* checkedChunks(zip: ZipFile, entry: Entry): AsyncGenerator<Uint8Array> {
  let seen = 0;
  let sum = 0;
  try {
    for await (const chunk of await unpack(zip, entry)) {
      seen += chunk.length;
      if (seen > entry.uncompressedSize) break;
      sum = crc32(chunk, sum);
      yield chunk;
    }
  } catch (error) {
    throw asDamage(error);
  }
  if (seen !== entry.uncompressedSize || sum !== entry.crc32)
    throw broken('a part does not match its checksum');
}

/** The library's own inflating goes in chunks of 16 kB, which takes longer. */
async function unpack(zip: ZipFile, entry: Entry): Promise<AsyncIterable<Buffer>> {
  const { compressionMethod: method } = entry;
  if (method !== 0 && method !== 8) throw broken(`packed by method ${method}`);
  const packed = await zip.openReadStreamPromise(entry, { decodeFileData: false });
  if (method === 0) return packed;
  return pipeline(packed, createInflateRaw({ chunkSize: CHUNK_BYTES }), () => {});
}
