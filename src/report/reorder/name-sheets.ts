// Export: worksheets named after shops. In: names of shops, names that are taken. Out: a name for each that spreadsheets take.
import { fitCellText } from '../workbook/fit-cell-text.js';

/** The longest name of a worksheet, by the published limits of XLSX spreadsheets. */
const longestName = 31;

/** What no name of a worksheet may hold, nor begin or end with; apostrophes and escapes are left out so that formulas need none. */
const [refused, ends] = [/[[\]:*?/\\'\t\n\r]|_(?=x[0-9a-f]{4}_)/gi, /^\s+|\s+$/g];

/** In their order; no two alike but for capitals. A name that cannot be had gets a number behind it. */
export function nameSheets(shops: readonly string[], taken: readonly string[]): string[] {
  // The last one spreadsheet programs keep for themselves.
  const used = new Set([...taken, 'history'].map((name) => name.toLowerCase()));
  return shops.map((shop) => {
    const plain = fitCellText(shop.replace(refused, ' ')).replace(ends, '') || 'shop';
    let name = cut(plain, longestName);
    for (let no = 2; used.has(name.toLowerCase()); no++) {
      const behind = ` ${no}`;
      name = cut(plain, longestName - behind.length) + behind;
    }
    used.add(name.toLowerCase());
    return name;
  });
}

/** Halves no letter. */
const cut = (name: string, most: number): string =>
  name
    .slice(0, most)
    .replace(/[\ud800-\udbff]$/, '')
    .replace(ends, '');
