// Report HTML: the only file access of the report. In: nothing. Out: the templates and the stylesheet as text.
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
  'pots',
  'tables',
  'stairs',
  'budget',
  'sure',
  'matter',
  'colours',
  'evenings',
  'narrow',
  'paper',
] as const;

export interface Templates {
  readonly page: string;
  readonly partials: readonly { readonly name: string; readonly text: string }[];
  readonly stylesheet: string;
}

/** templates/ of the checkout, from here. */
const ownFolder = (): URL => new URL('../../../templates/', import.meta.url);

/** Reads templates/ of this package, or another folder like it. Throws where a file is missing. */
export async function loadTemplates(folder = ownFolder()): Promise<Templates> {
  const read = (file: string): Promise<string> => readFile(new URL(file, folder), 'utf8');
  const [page, looks, partials] = await Promise.all([
    read('report.hbs'),
    Promise.all(lookNames.map((name) => read(`looks/${name}.css`))),
    Promise.all(partialNames.map(async (name) => ({ name, text: await read(`${name}.hbs`) }))),
  ]);
  return { page, partials, stylesheet: looks.join('\n') };
}
