// Files for the readers' tests, byte by byte where no library writes them: zips, raw worksheets, compound
// files.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32, deflateRawSync } from 'node:zlib';
import exceljs, { type Workbook } from 'exceljs';
import { afterEach } from 'vitest';

/** Makes a new empty folder; it is gone after the test. */
export function useFolder(): () => string {
  const made: string[] = [];
  afterEach(() => {
    for (const dir of made.splice(0)) rmSync(dir, { recursive: true, force: true });
  });
  return () => {
    const dir = mkdtempSync(join(tmpdir(), 'halfpot-read-'));
    made.push(dir);
    return dir;
  };
}

type Rows = readonly (readonly (string | number)[])[];

/** Rows of the four needed sheets, as a workbook holds them. */
export const fourSheets: Readonly<Record<string, Rows>> = {
  pots: [
    ['paint', 'size ml'],
    ['brick red', 17],
    ['earth wash', 24],
  ],
  figures: [
    ['figure', 'eye mm'],
    ['spearman', 28],
  ],
  schemes: [
    ['scheme', 'step', 'zone', 'layer', 'paint'],
    ['red line', 1, 'whole', 'base coat', 'brick red'],
    ['red line', 2, 'whole', 'wash', 'earth wash'],
  ],
  army: [
    ['unit', 'figure', 'count'],
    ['first spears', 'spearman', 20],
  ],
};

/** A workbook by exceljs; `change` may add to it before it is written. */
export async function makeWorkbook(
  sheets: Readonly<Record<string, Rows>>,
  change: (workbook: Workbook) => void = () => {},
): Promise<Buffer> {
  const workbook = new exceljs.Workbook();
  for (const [name, rows] of Object.entries(sheets))
    workbook.addWorksheet(name).addRows(rows.map((row) => [...row]));
  change(workbook);
  return Buffer.from(await workbook.xlsx.writeBuffer());
}

export interface RawWorkbook {
  /** Worksheet name to what stands inside its `sheetData` (or the whole worksheet from `<` to `>`). */
  readonly sheets: Readonly<Record<string, string>>;
  readonly date1904?: boolean;
  /** `xl/styles.xml`; default none. */
  readonly styles?: string;
  readonly more?: Readonly<Record<string, string>>;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINK = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** A workbook written as XML, for what exceljs cannot write. */
export function rawWorkbook({ sheets, date1904 = false, styles, more = {} }: RawWorkbook): Buffer {
  const names = Object.keys(sheets);
  const tags = names.map((name, at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`);
  const links = names.map(
    (_, at) =>
      `<Relationship Id="rId${at + 1}" Type="${LINK}/worksheet" Target="worksheets/sheet${at + 1}.xml"/>`,
  );
  if (styles !== undefined) links.push(`<Relationship Id="rS" Type="${LINK}/styles" Target="styles.xml"/>`);
  const parts = Object.entries(sheets).map(([, xml], at): [string, string] => [
    `xl/worksheets/sheet${at + 1}.xml`,
    /<(\w+:)?worksheet/.test(xml)
      ? xml
      : `<worksheet xmlns="${MAIN}"><sheetData>${xml}</sheetData></worksheet>`,
  ]);
  return makeZip({
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${LINK}"><workbookPr date1904="${date1904 ? 1 : 0}"/><sheets>${tags.join('')}</sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships>${links.join('')}</Relationships>`,
    ...Object.fromEntries(parts),
    ...(styles === undefined ? {} : { 'xl/styles.xml': styles }),
    ...more,
  });
}

/** Styles 0 General, 1 the percent format 9, 2 the date format 14 (ECMA-376 18.8.30), 3 and more as given. */
export function makeStyles(formats: readonly string[] = []): string {
  const own = formats.map((code, at) => `<numFmt numFmtId="${200 + at}" formatCode="${code}"/>`);
  const ids = [0, 9, 14, ...formats.map((_, at) => 200 + at)];
  const cells = ids.map(
    (id) => `<xf numFmtId="${id}" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`,
  );
  return `<styleSheet xmlns="${MAIN}"><numFmts count="${own.length}">${own.join('')}</numFmts><cellXfs count="${ids.length}">${cells.join('')}</cellXfs></styleSheet>`;
}

/**
 * A deflated zip (PKWARE APPNOTE 4.3), written apart from the program's own. `flags` 1 marks every part
 * encrypted.
 */
export function makeZip(parts: Readonly<Record<string, string | Buffer>>, flags = 0): Buffer {
  const locals: Buffer[] = [];
  const listed: Buffer[] = [];
  let at = 0;
  for (const [name, content] of Object.entries(parts)) {
    const bytes = Buffer.from(content);
    const packed = deflateRawSync(bytes);
    const fields = Buffer.alloc(26);
    fields.writeUInt16LE(20, 0);
    fields.writeUInt16LE(flags, 2);
    fields.writeUInt16LE(8, 4);
    fields.writeUInt32LE(crc32(bytes), 10);
    fields.writeUInt32LE(packed.length, 14);
    fields.writeUInt32LE(bytes.length, 18);
    fields.writeUInt16LE(Buffer.byteLength(name), 22);
    const place = Buffer.alloc(14);
    place.writeUInt32LE(at, 10);
    const local = Buffer.concat([Buffer.from([0x50, 0x4b, 3, 4]), fields, Buffer.from(name), packed]);
    listed.push(Buffer.from([0x50, 0x4b, 1, 2, 20, 0]), fields, place, Buffer.from(name));
    at += local.length;
    locals.push(local);
  }
  const directory = Buffer.concat(listed);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(Object.keys(parts).length, 8);
  end.writeUInt16LE(Object.keys(parts).length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...locals, directory, end]);
}

/**
 * The head of a compound file ([MS-CFB] 2.2: signature, versions, byte order, sector sizes) and one directory
 * sector with these stream names ([MS-CFB] 2.6.1: 64 bytes of UTF-16 name in entries of 128 bytes). An
 * encrypted workbook has `EncryptionInfo` and `EncryptedPackage` ([MS-OFFCRYPTO] 2.3.4), an old one
 * `Workbook` ([MS-XLS] 2.1.2).
 */
export function makeCompoundFile(...streams: readonly string[]): Buffer {
  const head = Buffer.alloc(512);
  Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]).copy(head);
  head.writeUInt16LE(0x3e, 24);
  head.writeUInt16LE(3, 26);
  head.writeUInt16LE(0xfffe, 28);
  head.writeUInt16LE(9, 30);
  head.writeUInt16LE(6, 32);
  const directory = Buffer.alloc(512);
  for (const [at, name] of ['Root Entry', ...streams].entries()) {
    directory.write(name, at * 128, 'utf16le');
    directory.writeUInt16LE(2 * name.length + 2, at * 128 + 64);
  }
  return Buffer.concat([head, directory]);
}

/** A PNG's first bytes (ISO/IEC 15948, 5.2). */
export const pictureBytes = Buffer.from([
  0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52,
]);

const odsContent = (table: string): string =>
  `<office:document-content xmlns:office="o" xmlns:table="t" xmlns:text="x"><office:body><office:spreadsheet>${table}</office:spreadsheet></office:body></office:document-content>`;

/** An OpenDocument spreadsheet (ISO/IEC 26300) of these worksheets, as XML. */
export const makeOds = (table: string, manifest = '<manifest:manifest/>'): Buffer =>
  makeZip({ 'META-INF/manifest.xml': manifest, 'content.xml': odsContent(table) });

/** A cell of it that holds a text. */
export const odsText = (written: string): string =>
  `<table:table-cell office:value-type="string"><text:p>${written}</text:p></table:table-cell>`;
