// Report view: a row of the swaps sheet, as a painter would write it. In: two paints. Out: one line of CSV.

import { type NumberWords, wordNumerals } from '../../words/word-numbers.js';

/** Sheets whose numbers have a decimal comma are parted by semicolons, as spreadsheet programs there write them. */
const partOf = (words: NumberWords): string => (wordNumerals(words).decimal === ',' ? ';' : ',');

/** The header that goes with the rows. */
export const swapHeader = (words: NumberWords): string =>
  ['scheme', 'step', 'paint', 'instead'].join(partOf(words));

/** Scheme and step are left blank: wherever the paint stands. Names are quoted where CSV needs it (RFC 4180). */
export const swapRow = (paint: string, by: string, words: NumberWords): string =>
  ['', '', quoted(paint), quoted(by)].join(partOf(words));

/** Line breaks of a name become spaces here, since the row is shown on one line. */
function quoted(name: string): string {
  const line = name.replace(/[\r\n\u2028\u2029]+/g, ' ');
  return /[",;\t]|^\s|\s$/.test(line) ? `"${line.replaceAll('"', '""')}"` : line;
}
