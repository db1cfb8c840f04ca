// Export: text that a cell of a workbook can hold. In: any text. Out: the same, but for what the file has no place for,
// which the workbook library would drop, or write as it stands into a file that no spreadsheet opens.

/** Longest text that a cell may hold, by the published limits of XLSX spreadsheets. */
const longestText = 32767;

/** All that needs no look at each letter: most names. */
const plain = /^[ -^`-~]*$/;

/** What XML 1.0 (2.2, Char) has no place for: control characters, halves of pairs, two that are none. */
const notXml = /(?![\t\n\r])\p{Cc}|[\ufffe\uffff]|\p{Cs}/gu;

/**
 * At most 32,767 characters, none of them halved; U+FFFD for each that XML can't hold; one kind of line end. What would
 * be read as an escape, such as `_x0041_` (ISO/IEC 29500-1, 22.9.2.19), is escaped itself, so that it is read as it is
 * here. Blank gives blank.
 */
export function fitCellText(text: string): string {
  if (text.length <= longestText && plain.test(text)) return text;
  return cutText(text)
    .replace(notXml, '\ufffd')
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(/\r\n?/g, '\n');
}

const cutText = (text: string): string =>
  text.length <= longestText ? text : text.slice(0, longestText).replace(/[\ud800-\udbff]$/, '');
