// Command line: how headers in the painter's words were read. In: headers by sheet. Out: a line for each sheet.
import type { CheckedSheets } from '../sheets/read-sheets.js';
import { showPlain } from './show-plain.js';

/**
 * `Read from row 3 of Farben.csv as pots: "Farbe" as paint, "Inhalt" as size ml.` and a line end for each sheet; '' where every
 * column has its own name.
 */
export function wordReadAs(readAs: CheckedSheets['readAs']): string {
  return readAs
    .map(({ file, sheet, headerRow, columns }) => {
      const named = columns.map(([header, column]) => `"${header.trim()}" as ${column}`);
      return `Read from row ${headerRow} of ${showPlain(file)} as ${sheet}: ${showPlain(named.join(', '))}.\n`;
    })
    .join('');
}
