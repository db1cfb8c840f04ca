// Report HTML: a page. In: its view, the drawings that templates may call. Out: HTML text, everything escaped.
import type { PageName } from './load-template.js';

/** Drawings by the name that templates call. Each takes a piece of the view and gives SVG, already escaped. */
export type Drawings = Readonly<Record<string, (piece: never) => string>>;

/** Templates and library, loaded once; a call ahead of time saves the wait. */
export const loadPageLibrary = () => import('./open-templates.js');

/**
 * Fills the templates. Handlebars escapes every text; only drawings, stylesheet and script go in as they are.
 * A name that a template misspells throws. The same view gives the same bytes.
 */
export async function fillTemplates(name: PageName, view: object, drawings: Drawings): Promise<string> {
  const { openTemplates } = await loadPageLibrary();
  const { bars, page, sheet } = await openTemplates(name);
  const asMarkup = (markup: string) => new bars.SafeString(markup);
  for (const [called, draw] of Object.entries(drawings)) {
    bars.registerHelper(called, (piece) => asMarkup((draw as (piece: unknown) => string)(piece)));
  }
  bars.registerHelper('slug', (text: string) => text.replaceAll(' ', '-'));
  bars.registerHelper('isLong', (rows: readonly unknown[]) => rows.length > manyRows);
  bars.registerHelper('countRows', (rows: readonly unknown[]) => rows.length);
  const own = Object.entries(sheet).map(([part, text]: [string, string]) => [part, asMarkup(text)]);
  return page({ ...view, ...Object.fromEntries(own) });
}

/** What is read as a whole is folded only past this. */
const manyRows = 60;
