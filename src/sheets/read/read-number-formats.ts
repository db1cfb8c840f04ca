// Readers: what the cell styles of a workbook make of a number. In: chunks of its styles part. Out: a format for each style.
import { type CellFormat, plainFormat, readFormat } from './read-format.js';
import { readAttributes, scanXml } from './scan-xml.js';

import { tooLarge } from './workbook-error.js';

/** Microsoft, "Excel specifications and limits": 65,490 cell styles. */
const MOST_STYLES = 65_536;

/** By the number that a cell gives as its style. Fonts, fills and borders are passed over. */
export async function readNumberFormats(chunks: AsyncIterable<Uint8Array>): Promise<CellFormat[]> {
  const own = new Map<number, CellFormat>();
  const ids: number[] = [];
  let inStyles = false;
  await scanXml(chunks, {
    open: (name, text) => {
      if (name === 'cellXfs') inStyles = true;
      if (name !== 'numFmt' && !(inStyles && name === 'xf')) return;
      const attributes = readAttributes(text);
      const id = Number(attributes.get('numFmtId') ?? 0);
      if (name === 'xf') ids.push(id);
      else own.set(id, readFormat(attributes.get('formatCode')));
      if (ids.length > MOST_STYLES || own.size > MOST_STYLES)
        throw tooLarge('more cell styles', `${MOST_STYLES}`);
    },
    close: (name) => {
      if (name === 'cellXfs') inStyles = false;
    },
  });
  return ids.map((id) => own.get(id) ?? builtInFormat(id));
}

/**
 * ECMA-376 18.8.30: 9 and 10 are percents, 14 to 22 and 45 to 47 dates and times; 27 to 36 and 50 to 58 are those of East
 * Asian locales.
 */
function builtInFormat(id: number): CellFormat {
  if (id === 9 || id === 10) return { kind: 'percent', unit: '' };
  const dates = [
    [14, 22],
    [27, 36],
    [45, 47],
    [50, 58],
  ] as const;
  return dates.some(([from, to]) => id >= from && id <= to) ? { kind: 'date', unit: '' } : plainFormat;
}
