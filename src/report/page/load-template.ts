// Report HTML: the only file access of the report. In: nothing. Out: templates, stylesheet and script of each page as text, and
// the hashes by which a page lets in these two and nothing else.
import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';

/** The report's frame, read before the sections; and what holds for a width or for paper, read after them. Later rules win. */
const [firstFolder, lastFolder] = ['page', 'widths'];

/** Pages beside the report, each in a folder of its own. */
const smallPages = ['shop', 'bench'] as const;
export type PageName = 'report' | (typeof smallPages)[number];
const pageNames: readonly PageName[] = ['report', ...smallPages];

/** What small pages have in common, and what they have from the report. */
const [smallFolder, sharedFile] = ['small', 'page/1-pigments.css'];

/** How ticks are kept, for all pages alike. */
const ticksFolder = 'ticks';

interface PageFiles {
  readonly page: string;
  readonly sheet: PageSheet;
}

export interface Templates {
  readonly pages: Readonly<Record<PageName, PageFiles>>;
  readonly partials: readonly { readonly name: string; readonly text: string }[];
}

/** What goes into the page as it is, beside its source for a Content-Security-Policy. */
export interface PageSheet {
  readonly stylesheet: string;
  readonly styleSource: string;
  readonly script: string;
  readonly scriptSource: string;
}

/** templates/ of the checkout, from here. */
const ownFolder = (): URL => new URL('../../../templates/', import.meta.url);

interface TemplateFile {
  /** Folder and name. */
  readonly file: string;
  readonly text: string;
}

/**
 * Reads templates/ of this package, or another folder like it: a folder for each section of the report, named like that of its
 * view, with its template, style and script, one for the report's frame, one for each small page. Each file is found by its
 * name's end, in the order of names.
 */
export async function loadTemplates(folder = ownFolder()): Promise<Templates> {
  const names = (await listFiles(folder)).filter((file) => /\.(hbs|css|js)$/.test(file));
  const files = await Promise.all(
    names.map(async (file) => ({ file, text: await readFile(new URL(file, folder), 'utf8') })),
  );
  const markup = files.filter(({ file }) => file.endsWith('.hbs'));
  const pageOf = (name: PageName): PageFiles => {
    const page = markup.find(({ file }) => nameOf(file) === name);
    if (page === undefined) throw new Error(`${folder} holds no ${name}.hbs`);
    return { page: page.text, sheet: sheetOf(files.filter(({ file }) => isOf(name, file))) };
  };
  return {
    pages: { report: pageOf('report'), shop: pageOf('shop'), bench: pageOf('bench') },
    partials: markup
      .filter(({ file }) => pageNames.every((name) => nameOf(file) !== name))
      .map(({ file, text }) => ({ name: nameOf(file), text: withoutEnds(text) })),
  };
}

/** Whether a style or script is one of a page's. */
function isOf(page: PageName, file: string): boolean {
  const folder = file.slice(0, file.indexOf('/'));
  if (folder === ticksFolder) return true;
  const isSmall = folder === smallFolder || smallPages.some((one) => one === folder);
  if (page === 'report') return !isSmall;
  return file === sharedFile || folder === smallFolder || folder === page;
}

/** `costs/cost-tables.hbs` is the part `cost-tables`. */
const nameOf = (file: string): string => file.slice(file.lastIndexOf('/') + 1, file.lastIndexOf('.'));

/** All files by folder and name. */
async function listFiles(folder: URL): Promise<string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const sections = entries
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name)
    .sort((a, b) => placeOf(a) - placeOf(b) || (a < b ? -1 : 1));
  const lists = await Promise.all(
    sections.map(async (name) =>
      (await readdir(new URL(`${name}/`, folder))).sort().map((file) => `${name}/${file}`),
    ),
  );
  return lists.flat();
}

const firstFolders = [firstFolder, smallFolder];

const placeOf = (section: string): number =>
  firstFolders.includes(section) ? 0 : section === lastFolder ? 2 : 1;

/** HTML lets these ends and quotes be left out (sections 13.1.2.3, 13.1.2.4); in a long report they are a tenth of all bytes. */
const withoutEnds = (html: string): string =>
  html
    .replace(/<\/tr>\n(\{\{\/each\}\})\n/g, '$1')
    .replace(/<\/(td|th|li|dt|dd)>/g, '')
    .replace(/ scope="(\w+)"/g, ' scope=$1');

function sheetOf(files: readonly TemplateFile[]): PageSheet {
  const textsOf = (end: string) => files.flatMap(({ file, text }) => (file.endsWith(end) ? [text] : []));
  const stylesheet = withoutRemarks(textsOf('.css').join('\n'));
  const script = `(() => {\n'use strict';\n${textsOf('.js').map(withoutNotes).join('\n')}})();`;
  return { stylesheet, styleSource: sourceOf(stylesheet), script, scriptSource: sourceOf(script) };
}

/** Content Security Policy Level 3, section 2.3.1: base64 of the hash of the text between the tags, UTF-8. */
const sourceOf = (text: string): string =>
  `sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}`;

/** Comments, indents and line ends are for the folder of looks; no text within the stylesheet holds `: ` or ` {`. */
const withoutRemarks = (css: string): string =>
  css
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/\s*\n\s*/g, '\n')
    .replace(/([{};,])\n/g, '$1')
    .replace(/;?\n?\}/g, '}')
    .replace(/ \{/g, '{')
    .replace(/: /g, ':')
    .trim();

/** Whole lines of comment only: none of these files has a line within a text that begins like one. */
const withoutNotes = (script: string): string =>
  script
    .replace(/^\s*(\/\/|\/\*\*).*$/gm, '')
    .replace(/\n\s*/g, '\n')
    .trimStart();
