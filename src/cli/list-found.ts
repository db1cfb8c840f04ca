// Command line: what the sheets hold. In: checked sheets. Out: a line for each sheet that has rows.
import type { Sheets } from './read-or-show.js';
import { countOf } from './show-problems.js';

/** By sheet: `8 units, 109 figures`; a sheet without rows has none. */
export function countFound(sheets: Sheets): ReadonlyMap<string, string> {
  const figures = sheets.army.reduce((sum, { count }) => sum + count, 0);
  const steps = [...sheets.schemes.values()].reduce((sum, scheme) => sum + scheme.steps.length, 0);
  const paints = new Set(sheets.pots.map(({ paint }) => paint)).size;
  const found: readonly (readonly [sheet: string, count: number, words: string])[] = [
    ['pots', sheets.pots.length, `${countOf(sheets.pots.length, 'pot')} of ${countOf(paints, 'paint')}`],
    [
      'offers',
      sheets.offers.length,
      `${countOf(sheets.offers.length, 'offer')}, ${countOf(sheets.shops.size, 'shop')}`,
    ],
    ['figures', sheets.figures.size, countOf(sheets.figures.size, 'figure')],
    ['zones', sheets.zones.length, countOf(sheets.zones.length, 'zone')],
    ['schemes', sheets.schemes.size, `${countOf(sheets.schemes.size, 'scheme')}, ${countOf(steps, 'step')}`],
    ['swaps', sheets.swaps.length, countOf(sheets.swaps.length, 'swap')],
    ['army', sheets.army.length, `${countOf(sheets.army.length, 'unit')}, ${countOf(figures, 'figure')}`],
    ['extras', sheets.extras.length, countOf(sheets.extras.length, 'extra')],
    ['log', sheets.log.length, countOf(sheets.log.length, 'row')],
  ];
  return new Map(found.filter(([, count]) => count > 0).map(([sheet, , words]) => [sheet, words]));
}
