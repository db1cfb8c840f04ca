// Robust: workbooks that nobody's spreadsheet program writes. In: what stands in which part. Out: bytes.
import { fourShortSheets } from '../problems/problem-case.js';
import { makeZip } from '../sheets/read/make-files.js';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINK = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

export const times = (count: number, piece: (at: number) => string): string => {
  const pieces: string[] = [];
  for (let at = 1; at <= count; at += 1) pieces.push(piece(at));
  return pieces.join('');
};

export const textCell = (text: string): string => `<c t="inlineStr"><is><t>${text}</t></is></c>`;

/** `sheetData` of a short sheet. */
const rowsOf = (csv: string): string =>
  csv
    .trimEnd()
    .split('\n')
    .map((line) => {
      const cells = line
        .split(',')
        .map((cell) => (/^\d+$/.test(cell) ? `<c><v>${cell}</v></c>` : textCell(cell)));
      return `<row>${cells.join('')}</row>`;
    })
    .join('');

export interface Hostile {
  /** After the rows of the pots sheet. */
  readonly rows?: string;
  /** In place of the whole pots sheet. */
  readonly whole?: string;
  /** After the rows' end. */
  readonly after?: string;
  readonly names?: string;
  readonly strings?: string;
  readonly styles?: string;
  readonly more?: Readonly<Record<string, string>>;
}

/** The four short sheets as a workbook, with more or other things in pots. */
export function makeHostile({
  rows = '',
  whole,
  after = '',
  names = '',
  strings,
  styles,
  more = {},
}: Hostile): Buffer {
  const sheets = Object.entries(fourShortSheets).map(([file, csv]): [string, string] => {
    const name = file.replace('.csv', '');
    const isPots = name === 'pots';
    const xml = `<worksheet xmlns="${MAIN}"><sheetData>${rowsOf(csv)}${isPots ? rows : ''}</sheetData>${isPots ? after : ''}</worksheet>`;
    return [name, isPots ? (whole ?? xml) : xml];
  });
  const link = (id: string, type: string, target: string): string =>
    `<Relationship Id="${id}" Type="${LINK}/${type}" Target="${target}"/>`;
  const links = [
    ...sheets.map(([name]) => link(name, 'worksheet', `worksheets/${name}.xml`)),
    ...(strings === undefined ? [] : [link('strings', 'sharedStrings', 'sharedStrings.xml')]),
    ...(styles === undefined ? [] : [link('styles', 'styles', 'styles.xml')]),
  ];
  const tags = sheets.map(([name], at) => `<sheet name="${name}" sheetId="${at + 1}" r:id="${name}"/>`);
  return makeZip({
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${LINK}"><sheets>${tags.join('')}</sheets>${names}</workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships>${links.join('')}</Relationships>`,
    ...Object.fromEntries(sheets.map(([name, xml]) => [`xl/worksheets/${name}.xml`, xml])),
    ...(strings === undefined ? {} : { 'xl/sharedStrings.xml': strings }),
    ...(styles === undefined ? {} : { 'xl/styles.xml': styles }),
    ...more,
  });
}

/** The size that the directory gives for a part, changed (PKWARE APPNOTE 4.3.12). */
export function forgeSize(zip: Buffer, part: string, size: number): Buffer {
  zip.writeUInt32LE(size, zip.lastIndexOf(part) - 46 + 24);
  return zip;
}
