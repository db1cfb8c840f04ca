// Report HTML: the page. In: a ReportView, the drawings that templates may call. Out: HTML text, everything escaped.
import type { ReportView } from '../view/report-view.js';
import { loadTemplates } from './load-template.js';

/** Drawings by the name that templates call. Each takes a piece of the view and gives SVG, already escaped. */
export type Drawings = Readonly<Record<string, (piece: never) => string>>;

/** The library, loaded once; a call ahead of time saves the wait. */
export const loadPageLibrary = () => import('handlebars');

/**
 * Fills the templates. Handlebars escapes every text; only the drawings and the stylesheet go in as they are.
 * A name that a template misspells throws. The same view gives the same bytes.
 */
export async function fillTemplates(view: ReportView, drawings: Drawings): Promise<string> {
  const [{ default: handlebars }, { page, partials, stylesheet }] = await Promise.all([
    loadPageLibrary(),
    loadTemplates(),
  ]);
  const bars = handlebars.create();
  const asMarkup = (markup: string) => new handlebars.SafeString(markup);
  for (const [name, draw] of Object.entries(drawings)) {
    bars.registerHelper(name, (piece) => asMarkup((draw as (piece: unknown) => string)(piece)));
  }
  bars.registerHelper('slug', (text: string) => text.replaceAll(' ', '-'));
  for (const { name, text } of partials) bars.registerPartial(name, bars.compile(text, { strict: true }));
  return bars.compile(page, { strict: true })({ ...view, stylesheet: asMarkup(stylesheet) });
}
