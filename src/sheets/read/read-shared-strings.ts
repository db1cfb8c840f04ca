// Readers: the texts that a workbook's cells share. In: chunks of their part. Out: a cell for each, by its number.

import { scanXml } from '../../unpack/scan-xml.js';
import type { Cell } from '../table.js';
import { type Room, takeLetters } from './count-room.js';
import { openCellText } from './open-stored-cell.js';
import { plainText } from './type-cell.js';

/** Takes room for each. Rich text without its looks, and without the reading aids above it (ECMA-376 18.4.6). */
export async function readSharedStrings(chunks: AsyncIterable<Uint8Array>, room: Room): Promise<Cell[]> {
  const strings: Cell[] = [];
  const text = openCellText();
  await scanXml(chunks, {
    open: (name) => text.open(name),
    text: (piece) => text.add(piece),
    close: (name) => {
      text.close(name);
      if (name !== 'si') return;
      const shared = text.take();
      takeLetters(room, shared.length + 1);
      strings.push(plainText(shared));
    },
  });
  return strings;
}
