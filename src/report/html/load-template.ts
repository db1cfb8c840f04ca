// Report HTML: the only file access of the report. In: nothing. Out: templates, stylesheet and script as text, and the
// hashes by which a page lets in these two and nothing else.
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';

/** Parts of the page, each a file of its own in templates/. */
const partialNames = [
  'answer',
  'budget',
  'pots',
  'shopping',
  'promise',
  'weigh',
  'learned',
  'instead',
  'frontier',
  'stairs',
  'costs',
  'cost-tables',
  'progress',
  'coats',
  'coat-rows',
  'primers',
  'use',
  'time',
  'evenings',
  'unit-times',
  'ground',
  'assumptions',
  'cautions',
  'trust',
] as const;

/** The stylesheet in pieces; later ones win. */
const lookNames = [
  'pigments',
  'page',
  'sections',
  'drawings',
  'layers',
  'pots',
  'tables',
  'stairs',
  'budget',
  'sure',
  'matter',
  'colours',
  'evenings',
  'tools',
  'narrow',
  'paper',
] as const;

/** The script in pieces. The page stands without it. */
const actNames = ['read-cells', 'sort-rows', 'find-rows', 'tick-bought', 'open-folds'] as const;

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

/** Reads templates/ of this package, or another folder like it. Throws where a file is missing. */
export async function loadTemplates(folder = ownFolder()): Promise<Templates> {
  const read = (file: string): Promise<string> => readFile(new URL(file, folder), 'utf8');
  const [page, looks, acts, partials] = await Promise.all([
    read('report.hbs'),
    Promise.all(lookNames.map((name) => read(`looks/${name}.css`))),
    Promise.all(actNames.map((name) => read(`acts/${name}.js`))),
    Promise.all(partialNames.map(async (name) => ({ name, text: await read(`${name}.hbs`) }))),
  ]);
  const tight = partials.map(({ name, text }) => ({ name, text: withoutEnds(text) }));
  return { page, partials: tight, sheet: sheetOf(looks, acts) };
}

/** HTML lets these ends be left out (section 13.1.2.4); in a long report they are a tenth of all bytes. */
const withoutEnds = (html: string): string => html.replace(/<\/(td|th|li|dt|dd)>/g, '');

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
