// Readers: the worksheets that a workbook names. In: an open zip. Out: names, hidden or not, and which part
// holds each. Part names and relationships: ECMA-376 part 1, 18.2 (workbook) and part 2, 8.3 (relationships).
import type { OpenZip } from '../../unpack/open-zip.js';
import { readAttributes, scanXml } from '../../unpack/scan-xml.js';
import { WorkbookError } from './workbook-error.js';

interface WorksheetPart {
  readonly name: string;
  readonly isHidden: boolean;
  readonly part: string;
}

export interface WorkbookParts {
  readonly worksheets: readonly WorksheetPart[];
  /** Days are counted from 1904-01-01 instead of 1900. */
  readonly date1904: boolean;
  readonly stylesPart: string | undefined;
  readonly stringsPart: string | undefined;
}

/** More worksheets, or links to parts, than any workbook has. */
const MOST_LISTED = 10_000;

/** Chart sheets and macro sheets are left out. Throws a WorkbookError where the zip is no workbook. */
export async function listWorksheets(zip: OpenZip): Promise<WorkbookParts> {
  const rootLink = (await readLinks(zip, '')).find(({ type }) => type === 'officeDocument');
  const main = rootLink?.part ?? 'xl/workbook.xml';
  const { sheets, date1904 } = await readMain(zip, main);
  const links = await readLinks(zip, main);
  const partOf = (kind: string): string | undefined => links.find(({ type }) => type === kind)?.part;
  const parts = new Map(links.flatMap(({ id, type, part }) => (type === 'worksheet' ? [[id, part]] : [])));
  const worksheets = sheets.flatMap((sheet) => {
    const part = parts.get(sheet.get('id') ?? '');
    if (part === undefined) return [];
    const isHidden = /hidden$/i.test(sheet.get('state') ?? '');
    return [{ name: sheet.get('name') ?? '', isHidden, part }];
  });
  return { worksheets, date1904, stylesPart: partOf('styles'), stringsPart: partOf('sharedStrings') };
}

async function readMain(
  zip: OpenZip,
  main: string,
): Promise<{ readonly sheets: readonly Map<string, string>[]; readonly date1904: boolean }> {
  const chunks = zip.inflate(main);
  if (chunks === undefined) throw new WorkbookError('not-a-workbook', `no workbook in ${main}`);
  const sheets: Map<string, string>[] = [];
  let outer: string | undefined;
  let date1904 = false;
  await scanXml(chunks, {
    open: (name, attributes) => {
      outer ??= name;
      if (name === 'sheet' && sheets.length < MOST_LISTED) sheets.push(readAttributes(attributes));
      if (name === 'workbookPr')
        date1904 = /^(1|true)$/.test(readAttributes(attributes).get('date1904') ?? '');
    },
  });
  if (outer !== 'workbook') throw new WorkbookError('not-a-workbook', `no workbook in ${main}`);
  return { sheets, date1904 };
}

interface Link {
  readonly id: string;
  /** Last step of the type's address: `worksheet`, `styles` ... */
  readonly type: string;
  readonly part: string;
}

/** The relationships of a part; '' stands for the whole package. */
async function readLinks(zip: OpenZip, part: string): Promise<Link[]> {
  const cut = part.lastIndexOf('/') + 1;
  const folder = part.slice(0, cut);
  const links: Link[] = [];
  const chunks = zip.inflate(`${folder}_rels/${part.slice(cut)}.rels`);
  if (chunks === undefined) return links;
  await scanXml(chunks, {
    open: (name, text) => {
      if (name !== 'Relationship' || links.length >= MOST_LISTED) return;
      const attributes = readAttributes(text);
      const type = attributes.get('Type')?.split('/').at(-1) ?? '';
      links.push({
        id: attributes.get('Id') ?? '',
        type,
        part: resolvePart(folder, attributes.get('Target') ?? ''),
      });
    },
  });
  return links;
}

/** A target that is no address leads nowhere. */
function resolvePart(folder: string, target: string): string {
  const base = `part:///${folder}`;
  return URL.canParse(target, base) ? new URL(target, base).pathname.replace(/^\/+/, '') : '';
}
