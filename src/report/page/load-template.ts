// Report HTML: the only file access of the report. In: nothing. Out: templates, stylesheet and script as text, and the
// hashes by which a page lets in these two and nothing else.
import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';

/** The frame, read before the sections; and what holds for a width or for paper, read after them. Later rules win. */
const [firstFolder, lastFolder] = ['page', 'widths'];

export interface Templates {
  readonly page: string;
  readonly partials: readonly { readonly name: string; readonly text: string }[];
  readonly sheet: PageSheet;
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

/**
 * Reads templates/ of this package, or another folder like it: a folder for each section, named like that of its view, with
 * its template, style and script, and one for the frame. Each file is found by its name's end, in the order of names.
 */
export async function loadTemplates(folder = ownFolder()): Promise<Templates> {
  const files = await listFiles(folder);
  const read = async (end: string) =>
    Promise.all(
      files
        .filter((file) => file.endsWith(end))
        .map(async (file) => ({ name: nameOf(file), text: await readFile(new URL(file, folder), 'utf8') })),
    );
  const [markup, looks, acts] = await Promise.all([read('.hbs'), read('.css'), read('.js')]);
  const page = markup.find(({ name }) => name === frame);
  if (page === undefined) throw new Error(`${folder} holds no ${frame}.hbs`);
  const partials = markup
    .filter((one) => one !== page)
    .map(({ name, text }) => ({ name, text: withoutEnds(text) }));
  return { page: page.text, partials, sheet: sheetOf(looks.map(textOf), acts.map(textOf)) };
}

const frame = 'report';

const textOf = ({ text }: { readonly text: string }): string => text;

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

const placeOf = (section: string): number => (section === firstFolder ? 0 : section === lastFolder ? 2 : 1);

/** HTML lets these ends and quotes be left out (sections 13.1.2.3, 13.1.2.4); in a long report they are a tenth of all bytes. */
const withoutEnds = (html: string): string =>
  html
    .replace(/<\/tr>\n(\{\{\/each\}\})\n/g, '$1')
    .replace(/<\/(td|th|li|dt|dd)>/g, '')
    .replace(/ scope="(\w+)"/g, ' scope=$1');

function sheetOf(looks: readonly string[], acts: readonly string[]): PageSheet {
  const stylesheet = withoutRemarks(looks.join('\n'));
  const script = `(() => {\n'use strict';\n${acts.map(withoutNotes).join('\n')}})();`;
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
