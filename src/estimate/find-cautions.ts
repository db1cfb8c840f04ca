// Estimate: what in the work can hurt someone. In: the estimate, extras, paints, orders. Out: which cautions to show.
import type { Order } from '../model/order.js';
import { type Caution, cautions } from '../model/plan.js';
import type { Sheets } from '../model/sheets.js';
import type { Estimate } from '../model/work.js';
import { tellsOf } from './caution-words.js';

/**
 * Cautions for the work still to be done and for what is bought, which may be for the shelf alone. Brushes come with nearly
 * every plan; where nothing is left to do, extras are not used.
 */
export function findCautions(
  estimate: Estimate,
  { extras, paints }: Pick<Sheets, 'extras' | 'paints'>,
  orders: readonly (Pick<Order, 'lines'> | undefined)[],
): Caution[] {
  const lines = [...estimate.jobs.keys()].flatMap(({ remaining }) => remaining);
  const bought = orders.flatMap((order) => order?.lines ?? []).flatMap(({ pots }) => pots);
  const methods = new Set(lines.map(({ method }) => method));
  const items = lines.length === 0 ? [] : extras.map(({ item }) => item);
  const handled = [...new Set([...lines, ...bought].map(({ paint }) => paint))];
  const names = handled.flatMap((paint) => [paint, ...(paints.get(paint)?.alsoCalled ?? [])]);
  const applies: Readonly<Record<Caution, boolean>> = {
    'spray can':
      methods.has('spray can') ||
      bought.some(({ container }) => container === 'can') ||
      items.some((item) => tellsOf(item, 'sprayAmongExtras')),
    airbrush: methods.has('airbrush'),
    solvent:
      names.some((name) => tellsOf(name, 'solvent')) ||
      items.some((item) => tellsOf(item, 'solvent', 'solventAmongExtras')),
    glue: items.some((item) => tellsOf(item, 'glueAmongExtras')),
    brush: [...methods].some((method) => method !== 'spray can' && method !== 'airbrush'),
  };
  return cautions.filter((caution) => applies[caution]);
}
