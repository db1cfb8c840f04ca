// Export: one time for every entry of a zip archive. In: an archive's bytes, a date. Out: the same archive, whose bytes
// no longer depend on the moment it was written. Offsets by PKWARE's APPNOTE 6.3.10, sections 4.3.7, 4.3.12, 4.3.16.

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;

/**
 * A copy of `archive` with all modification times set to midnight of `date` (YYYY-MM-DD). Years outside 1980
 * to 2107, which the format cannot hold, take the nearest. Throws where the bytes are no plain zip archive.
 */
export function setZipTimes(archive: Uint8Array, date: string): Uint8Array {
  const bytes = archive.slice();
  const view = new DataView(bytes.buffer);
  const dosDate = dosDateOf(date);
  const end = findEnd(view);
  let entry = view.getUint32(end + 16, true);
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    if (view.getUint32(entry, true) !== entrySignature) throw new Error('the archive has a broken directory');
    setTime(view, entry + 12, dosDate);
    setTime(view, view.getUint32(entry + 42, true) + 10, dosDate);
    entry += 46 + lengthsAfter(view, entry);
  }
  return bytes;
}

/** Time first, then date, two bytes each; the time is 00:00. */
function setTime(view: DataView, at: number, dosDate: number): void {
  view.setUint16(at, 0, true);
  view.setUint16(at + 2, dosDate, true);
}

/** Name, extra field and comment of a directory entry. */
function lengthsAfter(view: DataView, entry: number): number {
  return [28, 30, 32].reduce((sum, at) => sum + view.getUint16(entry + at, true), 0);
}

/** The end record stands last, before a comment of at most 65535 bytes. */
function findEnd(view: DataView): number {
  for (let at = view.byteLength - 22; at >= Math.max(0, view.byteLength - 22 - 0xffff); at -= 1)
    if (view.getUint32(at, true) === endSignature) return at;
  throw new Error('the archive has no directory');
}

/** A date as archives hold it (4.4.6); years outside 1980 to 2107 take the nearest. */
function dosDateOf(date: string): number {
  const [year = 1980, month = 1, day = 1] = date.split('-').map(Number);
  const yearsSince1980 = Math.min(127, Math.max(0, year - 1980));
  return yearsSince1980 * 512 + month * 32 + day;
}
