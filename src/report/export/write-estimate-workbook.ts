// Export: estimate.xlsx. In: a WorkbookView. Out: the bytes of an XLSX file, by ISO/IEC 29500-1 (SpreadsheetML) and
// 29500-2 (packaging). Written here and not by the workbook library: that one takes a hundred times as long for plain cells.
import type { WorkbookView } from '../view/estimate-workbook/workbook-view.js';
import { packZip } from './pack-zip.js';
import { findStyles, writeStyles } from './write-estimate-styles.js';
import { writeSheetXml } from './write-sheet-xml.js';

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const packaging = 'http://schemas.openxmlformats.org/package/2006';
const types = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/**
 * The whole workbook; the same view gives the same bytes. Text is stored as text, guarded where a spreadsheet could take it
 * for a formula; longer text than a cell may hold is cut. Numbers that are none (a transfer of 0) become error values.
 */
export function writeEstimateWorkbook({ date, sheets }: WorkbookView): Uint8Array {
  const styles = findStyles(sheets);
  const part = (name: string, xml: string) => ({ name, text: head + xml });
  return packZip(
    [
      part('[Content_Types].xml', contentTypes(sheets.length)),
      part('_rels/.rels', relations([['officeDocument', 'xl/workbook.xml']])),
      part('xl/workbook.xml', workbookXml(sheets.map(({ name }) => name))),
      part('xl/_rels/workbook.xml.rels', relations(partsOf(sheets.length))),
      part('xl/styles.xml', writeStyles(styles, main)),
      ...sheets.map((sheet, at) =>
        part(`xl/worksheets/sheet${at + 1}.xml`, writeSheetXml(sheet, styles, main)),
      ),
    ],
    date,
  );
}

const numbers = (count: number): number[] => Array.from({ length: count }, (_, at) => at + 1);

/** The parts that a workbook is made of, each with its kind. */
const partsOf = (sheets: number): [string, string][] => [
  ...numbers(sheets).map((at): [string, string] => ['worksheet', `worksheets/sheet${at}.xml`]),
  ['styles', 'styles.xml'],
];

function contentTypes(sheets: number): string {
  const override = (name: string, kind: string): string =>
    `<Override PartName="/xl/${name}" ContentType="${types}.${kind}+xml"/>`;
  return [
    `<Types xmlns="${packaging}/content-types">`,
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    '<Default Extension="xml" ContentType="application/xml"/>',
    override('workbook.xml', 'sheet.main'),
    override('styles.xml', 'styles'),
    ...numbers(sheets).map((at) => override(`worksheets/sheet${at}.xml`, 'worksheet')),
    '</Types>',
  ].join('');
}

function relations(parts: readonly (readonly [kind: string, target: string])[]): string {
  const each = parts.map(
    ([kind, target], at) => `<Relationship Id="rId${at + 1}" Type="${office}/${kind}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${packaging}/relationships">${each.join('')}</Relationships>`;
}

/** Names are our own: short, and without a letter that XML or a spreadsheet minds. */
function workbookXml(names: readonly string[]): string {
  const sheets = names.map((name, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`);
  return `<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${sheets.join('')}</sheets></workbook>`;
}
