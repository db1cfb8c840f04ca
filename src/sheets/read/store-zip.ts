// Readers: parts to an uncompressed zip in memory. In: names and contents. Out: its bytes, for exceljs alone.
// Layout: PKWARE APPNOTE.TXT 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16.
import { crc32 } from 'node:zlib';

/** Stores the parts in order; no parts give an empty zip. Names are ASCII. */
export function storeZip(parts: ReadonlyMap<string, Buffer>): Buffer {
  const locals: Buffer[] = [];
  const directory: Buffer[] = [];
  let at = 0;
  for (const [name, content] of parts) {
    const common = commonHeader(name, content);
    const local = Buffer.concat([Buffer.from('PK\x03\x04', 'latin1'), common, Buffer.from(name)]);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    directory.push(Buffer.from('PK\x01\x02\x14\x00', 'latin1'), common, place, Buffer.from(name));
    locals.push(local, content);
    at += local.length + content.length;
  }
  const listed = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(parts.size, 8);
  end.writeUInt16LE(parts.size, 10);
  end.writeUInt32LE(listed.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...locals, listed, end]);
}

/** The 26 bytes that a part's own header and its directory entry share: version 2.0, stored, no date. */
function commonHeader(name: string, content: Buffer): Buffer {
  const header = Buffer.alloc(26);
  header.writeUInt16LE(20, 0);
  header.writeUInt32LE(crc32(content), 10);
  header.writeUInt32LE(content.length, 14);
  header.writeUInt32LE(content.length, 18);
  header.writeUInt16LE(Buffer.byteLength(name), 22);
  return header;
}
