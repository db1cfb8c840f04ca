// Readers: what a file really is, by its first bytes. In: bytes. Out: one word.

/** `other` may be text. */
export type FileKind = 'zip' | 'locked workbook' | 'old workbook' | 'document' | 'other';

const ZIP = [0x50, 0x4b, 0x03, 0x04];
const EMPTY_ZIP = [0x50, 0x4b, 0x05, 0x06];
/** Compound file binary ([MS-CFB] 2.2): old Office files, and the wrapper of encrypted new ones. */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const PDF = [0x25, 0x50, 0x44, 0x46, 0x2d];

/**
 * Tells a zip (every .xlsx is one), a workbook encrypted with a password, an old .xls and other documents
 * apart. The stream names are those of [MS-OFFCRYPTO] 1.3.3 and [MS-XLS] 2.1.2. No bytes give `other`.
 */
export function sniffFile(bytes: Uint8Array): FileKind {
  if (startsWith(bytes, ZIP) || startsWith(bytes, EMPTY_ZIP)) return 'zip';
  if (startsWith(bytes, PDF)) return 'document';
  if (!startsWith(bytes, COMPOUND)) return 'other';
  if (holdsStream(bytes, 'EncryptedPackage')) return 'locked workbook';
  return holdsStream(bytes, 'Workbook') || holdsStream(bytes, 'Book') ? 'old workbook' : 'document';
}

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}

/** Directory entries hold the stream's name in UTF-16; it can stand anywhere in the file. */
function holdsStream(bytes: Uint8Array, name: string): boolean {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).includes(Buffer.from(name, 'utf16le'));
}
