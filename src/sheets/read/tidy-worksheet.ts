// Readers: the XML of one worksheet, made ready for exceljs. In: the XML. Out: the same cells in the plainest
// form, and the merged ranges. exceljs loses or misreads the forms that are rewritten here.
import { cellAddress, columnNumber } from './name-cell.js';

export interface TidyWorksheet {
  readonly xml: string;
  /** `A3:A7` ... */
  readonly merges: readonly string[];
}

/**
 * Rows and cells without an address get one, formulas give way to their stored results (also a stored empty
 * text, which exceljs takes for none), ISO dates become text, and blank styled cells go: a format for whole
 * columns is otherwise a million cells.
 */
export function tidyWorksheet(source: string): TidyWorksheet {
  const addressed = lacksAddress(source) ? addAddresses(source) : source;
  const xml = addressed
    .replace(/<c\s[^>]*\/>|<c\s[^>]*><\/c>/g, '')
    .replace(/<row\s[^>]*(?:\/>|><\/row>)/g, '');
  return { xml: plainDates(storedResults(xml)), merges: findMerges(source) };
}

/** A formula with a result is dropped; one of a text that came out empty leaves a blank cell. */
function storedResults(xml: string): string {
  if (!/<f[\s/>]/.test(xml)) return xml;
  return xml
    .replace(/<f(?:\s[^>]*)?(?:\/>|>[^<]*<\/f>)(?=\s*<v(?:\s[^>]*)?>[^<])/g, '')
    .replace(
      /<c\s(?=[^>]*\bt="str")[^>]*>\s*<f(?:\s[^>]*)?(?:\/>|>[^<]*<\/f>)\s*<v(?:\/>|><\/v>)\s*<\/c>/g,
      '',
    );
}

/** Cells of type `d` hold `2026-01-31T00:00:00`; exceljs would read 2026. */
function plainDates(xml: string): string {
  return xml.includes(' t="d"') ? xml.replace(/(<c\s[^>]*?)\bt="d"/g, '$1t="str"') : xml;
}

const lacksAddress = (xml: string): boolean => /<(?:row|c)(?=[\s/>])(?![^>]*\sr=)[^>]*>/.test(xml);

/** ECMA-376 18.3.1.4 and 18.3.1.73 leave the address free: the cell or row after the one before is meant. */
function addAddresses(xml: string): string {
  let row = 0;
  let column = 0;
  return xml.replace(/<(row|c)(?=[\s/>])([^>]*)>/g, (tag, name: string, rest: string) => {
    const [, letters, number] = /\sr="([A-Z]*)(\d+)"/.exec(rest) ?? [];
    if (name === 'row') {
      row = number === undefined ? row + 1 : Number(number);
      column = 0;
      return number === undefined ? `<row r="${row}"${rest}>` : tag;
    }
    column = letters === undefined ? column + 1 : columnNumber(letters);
    return letters === undefined ? `<c r="${cellAddress(column, row)}"${rest}>` : tag;
  });
}

function findMerges(xml: string): string[] {
  const from = xml.indexOf('<mergeCells');
  if (from === -1) return [];
  return [...xml.slice(from).matchAll(/<mergeCell\s[^>]*?\bref="([^"]+)"/g)].flatMap(
    ([, range]) => range ?? [],
  );
}
