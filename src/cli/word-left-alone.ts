// Command line: columns that nothing is read from. In: headers by sheet. Out: one line that names them.
import type { CheckedSheets } from '../sheets/read-sheets.js';
import { showPlain } from './show-plain.js';

type LeftAlone = CheckedSheets['leftAlone'];

/** Letters shown of a header. */
const longest = 40;

/**
 * `Left alone, as columns of your own: army.csv "prio", "rank"; pots.csv "shade".`, with `most` headers at the most and a
 * line end; '' where there are none. In a workbook its sheets are named: `sheet army "prio"`.
 */
export function wordLeftAlone(leftAlone: LeftAlone, most: number): string {
  let room = most;
  const shown: string[] = [];
  for (const { file, sheet, headers } of leftAlone) {
    const named = headers.slice(0, room);
    room -= named.length;
    const where = /\.xls[xm]$/i.test(file) ? `sheet ${sheet}` : file;
    if (named.length > 0) shown.push(`${where} ${named.map(quote).join(', ')}`);
  }
  const more = leftAlone.reduce((sum, { headers }) => sum + headers.length, 0) - (most - room);
  if (shown.length === 0) return '';
  const rest = more === 0 ? '' : `; and ${more} more`;
  return `Left alone, as columns of your own: ${showPlain(shown.join('; '))}${rest}.\n`;
}

const quote = (header: string): string =>
  `"${header.length > longest ? `${header.slice(0, longest)} ...` : header.trim()}"`;
