// Report view: cash against figures. In: the plan's staircase. Out: the steps as rows, what one more figure costs, notes.
import type { Plan } from '../../model/plan.js';
import { cashAt, listRises, type Rise } from './list-rises.js';
import type { StairRow, StairsView } from './stairs-view.js';
import type { ViewInputs } from './view-inputs.js';
import { hexOf } from './view-palette.js';
import { viewStairsChart } from './view-stairs-chart.js';
import { wordAim } from './word-aim.js';
import { nameOf } from './word-name.js';
import { countOf, listOf, type NumberWords } from './word-numbers.js';
import { wordBut } from './word-promise.js';
import { searchLonger } from './word-proof.js';

/** Undefined for an army of nobody, which has no steps. */
export function viewStairs({ plan, words }: ViewInputs): StairsView | undefined {
  const { stairs, figureCount } = plan;
  if (stairs.steps.length === 0) return undefined;
  const rises = listRises(stairs.steps);
  const armyMinor = Math.max(plan.order.totalMinor, cashAt(stairs.steps, figureCount));
  const unproved = stairs.steps.filter(({ proved }) => !proved).length;
  return {
    lead: wordLead(plan, words),
    next: wordNext({ plan, armyMinor, rises }, words),
    chart: viewStairsChart({ plan, rises, armyMinor }, words),
    caption: `Where the cash rises, ${countOf(words, rises.length, 'step')}${unproved === 0 ? ', each proved: no order for so many figures costs less' : ''}`,
    rows: rises.map((rise, index) => viewRow(rise, index + 1, { plan, words })),
    showProved: unproved > 0,
    notes: wordNotes(plan, unproved, words),
  };
}

function wordLead(plan: Plan, words: NumberWords): string {
  const { estimate } = plan;
  const [first] = [...estimate.units].sort(
    (a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row,
  );
  const start = first === undefined ? '' : `, ${nameOf(first.unit.unit)} first`;
  return `The least cash for paint, postage included, against the number of figures. They are painted by priority${start}; after the army’s last figure a second army follows from scratch, in the same order. What ${wordAim(plan, words)} takes over the likely needs of your army is kept in proportion at every number of figures. Paint that no offer covers costs nothing here.`;
}

interface NextInputs {
  readonly plan: Plan;
  /** Cash for the army. */
  readonly armyMinor: number;
  readonly rises: readonly Rise[];
}

function wordNext({ plan, armyMinor, rises }: NextInputs, words: NumberWords): StairsView['next'] {
  const { stairs, figureCount, order } = plan;
  const after = rises.find(({ figures }) => figures > figureCount);
  const reach = wordReach(order);
  if (after === undefined) return { figure: 'nothing', says: `${reach}, even for twice the army.` };
  const extraMinor = Math.max(0, after.cashMinor - armyMinor);
  const because = listOf(after.because.map(nameOf));
  if (after.figures === figureCount + 1)
    return { figure: words.money(extraMinor), says: `More of ${because} would be needed.` };
  const at = `figure ${words.count(after.figures)} (${because})`;
  if (!stairs.everyStep)
    return {
      figure: extraMinor === 0 ? 'nothing' : `at most ${words.money(extraMinor)}`,
      says: `The next step shown is ${at}; not every step was looked for, so it may come earlier.`,
    };
  const last = words.count(after.figures - 1);
  return {
    figure: 'nothing',
    says: `${reach}, up to figure ${last}. The next step is ${at}: ${words.money(extraMinor)}.`,
  };
}

function wordReach(order: Plan['order']): string {
  const what = order.lines.length === 0 ? 'Your pots' : 'Your pots and this order';
  return `${what} still reach${wordBut(order)}`;
}

/** A step of a large army may come of hundreds of paints; plan.json has them all. */
const mostNames = 12;

function viewRow(
  { figures, cashMinor, riseMinor, because, proved }: Rise,
  no: number,
  { plan, words }: { readonly plan: Plan; readonly words: NumberWords },
): StairRow {
  return {
    no: words.count(no),
    figures: words.count(figures),
    cash: words.money(cashMinor),
    rise: words.money(riseMinor),
    paints: because.slice(0, mostNames).map((paint) => ({ paint, hex: hexOf(plan, paint) })),
    others: because.length > mostNames ? `and ${words.count(because.length - mostNames)} more` : '',
    proved: proved ? 'proved' : 'not proved',
  };
}

function wordNotes({ stairs }: Plan, unproved: number, words: NumberWords): string[] {
  const missed =
    'There are too many steps to look for each: between those shown the cash may rise earlier than drawn, never later.';
  const open = `${countOf(words, unproved, 'step is', 'steps are')} not proved: a cheaper order may exist there. ${searchLonger}`;
  return [...(stairs.everyStep ? [] : [missed]), ...(unproved === 0 ? [] : [open])];
}
