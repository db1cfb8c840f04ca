// Readers: the worksheets that a workbook names. In: an open zip. Out: names, hidden or not, and which part
// holds each. Part names and relationships: ECMA-376 part 1, 18.2 (workbook) and part 2, 8.3 (relationships).
import { type OpenZip, WorkbookError } from './open-zip.js';
import { attribute, tags } from './read-tags.js';

export interface WorksheetPart {
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

/** Chart sheets and macro sheets are left out. Throws a WorkbookError where the zip is no workbook. */
export function listWorksheets(zip: OpenZip): WorkbookParts {
  const rootLink = readLinks(zip, '').find(({ type }) => type === 'officeDocument');
  const main = rootLink?.part ?? 'xl/workbook.xml';
  const xml = zip.read(main)?.toString('utf8');
  if (xml === undefined || !/<(?:\w+:)?workbook[\s>]/.test(xml)) {
    throw new WorkbookError('not-a-workbook', `no workbook in ${main}`);
  }
  const links = readLinks(zip, main);
  const partOf = (kind: string): string | undefined => links.find(({ type }) => type === kind)?.part;
  const worksheets = tags(xml, 'sheet').flatMap((tag) => {
    const link = links.find(({ id, type }) => type === 'worksheet' && id === attribute(tag, '\\w+:id'));
    if (link === undefined) return [];
    const isHidden = /hidden$/i.test(attribute(tag, 'state') ?? '');
    return [{ name: attribute(tag, 'name') ?? '', isHidden, part: link.part }];
  });
  const date1904 = /^(1|true)$/.test(attribute(tags(xml, 'workbookPr')[0] ?? '', 'date1904') ?? '');
  return { worksheets, date1904, stylesPart: partOf('styles'), stringsPart: partOf('sharedStrings') };
}

interface Link {
  readonly id: string;
  /** Last step of the type's address: `worksheet`, `styles` ... */
  readonly type: string;
  readonly part: string;
}

/** The relationships of a part; '' stands for the whole package. */
function readLinks(zip: OpenZip, part: string): Link[] {
  const cut = part.lastIndexOf('/') + 1;
  const folder = part.slice(0, cut);
  const xml = zip.read(`${folder}_rels/${part.slice(cut)}.rels`)?.toString('utf8') ?? '';
  return tags(xml, 'Relationship').map((tag) => {
    const target = attribute(tag, 'Target') ?? '';
    const type = attribute(tag, 'Type')?.split('/').at(-1) ?? '';
    return { id: attribute(tag, 'Id') ?? '', type, part: resolvePart(folder, target) };
  });
}

function resolvePart(folder: string, target: string): string {
  return new URL(target, `part:///${folder}`).pathname.replace(/^\/+/, '');
}
