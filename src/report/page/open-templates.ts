// Report HTML: templates ready to be filled. In: the files of templates/. Out: functions that fill them. The build puts a
// module in the place of this one in which they are compiled already, and which needs less of the library.
import handlebars from 'handlebars';
import { loadTemplates, type PageName, type PageSheet } from './load-template.js';

export interface OpenTemplates {
  /** An engine of its own, so that what one page registers no other sees. */
  readonly bars: Pick<typeof handlebars, 'registerHelper' | 'SafeString'>;
  readonly page: (content: object) => string;
  readonly sheet: PageSheet;
}

/** Reads and compiles. Throws where a file is missing; a name that a template misspells throws when it is filled. */
export async function openTemplates(name: PageName): Promise<OpenTemplates> {
  const { pages, partials } = await loadTemplates();
  const bars = handlebars.create();
  for (const { name, text } of partials) bars.registerPartial(name, bars.compile(text, { strict: true }));
  const { page, sheet } = pages[name];
  return { bars, page: bars.compile(page, { strict: true }), sheet };
}
