// Tests: what a zip archive holds. In: its bytes. Out: texts by name, through the reader of workbooks, which checks each.
import { openZip } from '../../../src/sheets/read/open-zip.js';

/** Files in the order of the directory; folders, which some writers list as well, are left out. */
export async function listParts(archive: Uint8Array): Promise<Record<string, string>> {
  const zip = openZip(Buffer.from(archive));
  const parts: Record<string, string> = {};
  for (const name of namesOf(Buffer.from(archive))) {
    const chunks: Uint8Array[] = [];
    for await (const chunk of zip.inflate(name) ?? []) chunks.push(chunk);
    parts[name] = Buffer.concat(chunks).toString('utf8');
  }
  return parts;
}

/** PKWARE's APPNOTE 6.3.10, 4.3.12 and 4.3.16: the end names the directory, which lists each file. */
function namesOf(archive: Buffer): string[] {
  const end = archive.length - 22;
  const names: string[] = [];
  let at = archive.readUInt32LE(end + 16);
  for (let left = archive.readUInt16LE(end + 10); left > 0; left -= 1) {
    const nameBytes = archive.readUInt16LE(at + 28);
    names.push(archive.toString('utf8', at + 46, at + 46 + nameBytes));
    at += 46 + nameBytes + archive.readUInt16LE(at + 30) + archive.readUInt16LE(at + 32);
  }
  return names.filter((name) => !name.endsWith('/'));
}
