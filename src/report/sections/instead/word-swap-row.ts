// Report view: a row of the swaps sheet, as a painter would write it. In: two paints. Out: one line of CSV.
import Papa from 'papaparse';
import { csvMarks, type NumberWords } from '../../words/word-numbers.js';

/** The header that goes with the rows. */
export const swapHeader = (words: NumberWords): string =>
  rowOf(['scheme', 'step', 'paint', 'instead'], words);

/** Scheme and step are left blank: wherever the paint stands. Line breaks of a name become spaces, since it is one line. */
export const swapRow = (paint: string, by: string, words: NumberWords): string =>
  rowOf(['', '', ...[paint, by].map((name) => name.replace(/[\r\n\u2028\u2029]+/g, ' '))], words);

const rowOf = (cells: readonly string[], words: NumberWords): string =>
  Papa.unparse([[...cells]], { delimiter: csvMarks(words).delimiter });
