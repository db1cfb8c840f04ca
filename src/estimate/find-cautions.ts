// Estimate: what in the work can hurt someone. In: the estimate, paints, extras. Out: which cautions to show.
import type { Caution } from '../model/plan.js';
import type { Sheets } from '../model/sheets.js';
import type { Estimate } from '../model/work.js';

/** Words by which painters name solvents among their extras and mediums; a hint, not a list of products. */
const solventWords =
  /thinner|solvent|spirit|turp|acetone|alcohol|ethanol|propanol|isopropyl|\bipa\b|naphtha|benzine?\b|xylene|toluene|brush cleaner|lacquer|enamel/i;

/** Cautions for the work still to be done. Brushes come with nearly every plan; an empty plan has none. */
export function findCautions(estimate: Estimate, { extras }: Pick<Sheets, 'extras'>): Caution[] {
  const lines = [...estimate.jobs.keys()].flatMap(({ remaining }) => remaining);
  if (lines.length === 0) return [];
  const methods = new Set(lines.map(({ method }) => method));
  const names = [...extras.map(({ item }) => item), ...new Set(lines.map(({ paint }) => paint))];
  const found: [Caution, boolean][] = [
    ['spray can', methods.has('spray can')],
    ['airbrush', methods.has('airbrush')],
    ['solvent', names.some((name) => solventWords.test(name))],
    ['brush', [...methods].some((method) => method !== 'spray can' && method !== 'airbrush')],
  ];
  return found.filter(([, applies]) => applies).map(([caution]) => caution);
}
