// Readers: a workbook cut down to what exceljs has to see. In: an open zip, the worksheets wanted. Out: a new
// workbook in memory, merged ranges. Pictures, notes, tables, macros and all other worksheets cannot
// slow or break the read.
import type { SheetName } from '../../model/words.js';
import type { WorkbookParts, WorksheetPart } from './list-worksheets.js';
import { type OpenZip, WorkbookError } from './open-zip.js';
import { slimStyles } from './slim-styles.js';
import { storeZip } from './store-zip.js';
import { tidyWorksheet } from './tidy-worksheet.js';

export interface SlimWorkbook {
  /** Its worksheets bear the sheets' own names. */
  readonly bytes: Buffer;
  readonly merges: ReadonlyMap<SheetName, readonly string[]>;
}

const SPREADSHEET = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** Throws a WorkbookError where a wanted part is missing, damaged or too large. */
export function slimWorkbook(
  zip: OpenZip,
  parts: WorkbookParts,
  wanted: ReadonlyMap<SheetName, WorksheetPart>,
): SlimWorkbook {
  const merges = new Map<SheetName, readonly string[]>();
  const sheets = [...wanted].map(([sheet, { part }]) => {
    const tidy = tidyWorksheet(readXml(zip, part));
    if (parts.stringsPart === undefined && /<c\s[^>]*\bt="s"/.test(tidy.xml)) throw missing('shared strings');
    merges.set(sheet, tidy.merges);
    return tidy.xml;
  });
  const strings = parts.stringsPart === undefined ? undefined : readXml(zip, parts.stringsPart);
  const styles = parts.stylesPart === undefined ? '' : readXml(zip, parts.stylesPart);
  const texts: [string, string][] = [
    ['xl/workbook.xml', workbookXml([...wanted.keys()], parts.date1904)],
    ['xl/_rels/workbook.xml.rels', linksXml(sheets.length)],
    ['xl/styles.xml', slimStyles(styles)],
    ...(strings === undefined ? [] : [['xl/sharedStrings.xml', strings] satisfies [string, string]]),
    ...sheets.map((xml, index): [string, string] => [`xl/worksheets/sheet${index + 1}.xml`, xml]),
  ];
  return { bytes: storeZip(new Map(texts.map(([name, xml]) => [name, Buffer.from(xml)]))), merges };
}

const missing = (what: string): WorkbookError => new WorkbookError('broken-workbook', `${what} missing`);

/** Text of a part, its elements without the prefix that some programs put before each; exceljs knows none. */
function readXml(zip: OpenZip, part: string): string {
  const xml = zip.read(part)?.toString('utf8');
  if (xml === undefined) throw missing(part);
  const prefix = /<(\w+):(?:worksheet|sst|styleSheet)[\s>]/.exec(xml)?.[1];
  return prefix === undefined ? xml : xml.replace(new RegExp(`(</?)${prefix}:`, 'g'), '$1');
}

function workbookXml(names: readonly SheetName[], date1904: boolean): string {
  const sheets = names.map(
    (name, index) => `<sheet name="${name}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
  );
  const days = date1904 ? '<workbookPr date1904="1"/>' : '<workbookPr/>';
  return `<workbook xmlns="${SPREADSHEET}" xmlns:r="${LINKS}">${days}<sheets>${sheets.join('')}</sheets></workbook>`;
}

function linksXml(count: number): string {
  const links = Array.from({ length: count }, (_, index) => {
    const target = `worksheets/sheet${index + 1}.xml`;
    return `<Relationship Id="rId${index + 1}" Type="${LINKS}/worksheet" Target="${target}"/>`;
  });
  return `<Relationships>${links.join('')}</Relationships>`;
}
