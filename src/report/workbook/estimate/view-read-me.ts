// Report view: the first sheet of the workbook. In: the plan, what the workbook holds. Out: what may be changed, what
// follows, and what does not.
import type { Plan } from '../../../model/plan.js';
import type { Recipes } from './list-recipes.js';
import type { SheetView } from './workbook-view.js';

const sheetWords: readonly (readonly [string, string])[] = [
  ['totals', 'what it all comes to now, and as planned'],
  ['assumptions', 'every value that the estimate rests on; the column "likely" is what counts'],
  ['units', 'how many figures, in what batches, how far they are'],
  ['areas', 'the surface of one figure, part by part'],
  ['zones', 'which parts make up a zone of a figure, and how much of each'],
  ['lines', 'paint by paint, step by step: what one figure and one sitting take, and what all of them do'],
  ['paints', 'need, have, likely to buy, price, cost of use'],
  ['pots', 'where the paint comes from, in the order in which it is used up, and what a ml costs'],
  ['recipes', 'what one figure, and one sitting of each step, of a figure in a scheme cost'],
  ['costs', 'cost of use by unit'],
  ['extras', 'what else is used up'],
];

const plainWords: readonly string[] = [
  'Coats that the colours decided: they were chosen by comparing colours. Other coats follow the assumption, or are the scheme’s own.',
  'What is left in the pots, as read on the day of the plan and lowered by the log; only its usable share follows the assumption.',
  'The order and its pots: the program searched for them. If the need grows past the pots, the rest of it counts as unpriced.',
  'What is promised to be enough ("promised ml to buy"): it was drawn many times, not worked out. Low and high are for reading only.',
  'The cash for the order, and each unit’s share of it.',
  'What the log taught: it stands among the assumptions with the mark "weighed". A value that you change is not weighed again.',
  'How many figures the log calls done, and how many zones share one palette.',
];

/** One column of text. */
export function viewReadMe(plan: Plan, { rows, leftOut }: Recipes): SheetView {
  const { currency } = plan.settings;
  const several = rows.reduce((sum, { unit, units }) => sum + (unit === '' ? units : 0), 0);
  const lines = [
    `This is the estimate of ${plan.date}, worked out once more. Change a number and see what becomes of it.`,
    'Blue numbers are there to be changed: a wet film, a transfer, a dress factor, a count, what a pot costs. Black ones are formulas and follow.',
    'Nothing goes back: to keep a value of yours, write its name and the value into your settings sheet and plan again.',
    `Volumes are ml, areas cm2, films µm, money ${currency}. "Whole" is the whole scheme on all figures, "remaining" what is still to be done.`,
    ...boundWords(several, leftOut.length),
    '',
    'The sheets',
    ...sheetWords.map(([name, says]) => `${name}: ${says}.`),
    '',
    'What does not follow',
    ...plainWords,
  ];
  return { name: 'read me', columns: [{ header: 'Halfpot', width: 120 }], rows: lines.map((line) => [line]) };
}

function boundWords(several: number, leftOut: number): string[] {
  const together = `To keep this workbook small, ${several} units are put together by figure, scheme and step done ("more units"): their sittings are plain numbers.`;
  const out = `To keep this workbook small, ${leftOut === 1 ? 'one unit is' : `${leftOut} units are`} left out: paint and cost are plain numbers in the sheets paints and costs, and do not follow. plan.json has their lines.`;
  return [...(several > 0 ? [together] : []), ...(leftOut > 0 ? [out] : [])];
}
