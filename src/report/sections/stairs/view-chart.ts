// Report view: the staircase as shares of a drawing. In: steps that rise, the army's size and cash. Out: risers and ticks.
import type { Plan } from '../../../model/plan.js';
import type { Rise, StairSums } from '../../../model/summary.js';
import type { Tick } from '../../drawing/draw-axes.js';
import { listTicks, shareOf } from '../../drawing/scale.js';
import { hexOf } from '../../words/hex-of.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';

export interface StairsChart {
  readonly title: string;
  readonly says: string;
  readonly risers: readonly Riser[];
  readonly army: {
    readonly across: number;
    readonly up: number;
    readonly label: string;
    /** Where there is little room. */
    readonly short: string;
  };
  readonly currency: string;
  readonly cashTicks: readonly Tick[];
  readonly figureTicks: readonly Tick[];
}

/** Where the cash rises, and the tread that follows it. */
export interface Riser {
  readonly no: number;
  /** The paint that causes it, short; more than one: the first and how many more. */
  readonly name: string;
  readonly title: string;
  /** One colour for each paint that causes it; '' where no sheet gives it. */
  readonly hexes: readonly string[];
  readonly across: number;
  readonly fromUp: number;
  readonly up: number;
  readonly proved: boolean;
}

interface ChartInputs {
  readonly plan: Plan;
  readonly sums: StairSums;
}

/** Undefined where the cash never rises: a flat line would say nothing. */
export function viewStairsChart(
  { plan, sums: { rises, armyMinor } }: ChartInputs,
  words: NumberWords,
): StairsChart | undefined {
  const { figureCount, settings, stairs } = plan;
  const most = rises.at(-1);
  if (most === undefined) return undefined;
  const mostMinor = Math.max(most.cashMinor, armyMinor);
  const figures = countOf(words, figureCount, 'figure');
  return {
    title: 'Cash against figures',
    says: `${countOf(words, rises.length, 'step')} from none to ${words.count(stairs.mostFigures)} figures: ${words.money(armyMinor)} for your army of ${words.count(figureCount)}, ${words.money(most.cashMinor)} at the end. The table that follows lists each step.`,
    risers: rises.map((rise, index) => riserOf(rise, index + 1, { plan, words, mostMinor })),
    army: {
      across: shareOf(figureCount, stairs.mostFigures),
      up: shareOf(armyMinor, mostMinor),
      label: `your army: ${figures}, ${words.money(armyMinor)}`,
      short: `your army: ${words.count(figureCount)}`,
    },
    currency: settings.currency,
    cashTicks: listTicks(mostMinor, words.major),
    figureTicks: listTicks(stairs.mostFigures, words.count),
  };
}

interface RiserInputs {
  readonly plan: Plan;
  readonly words: NumberWords;
  readonly mostMinor: number;
}

function riserOf(rise: Rise, no: number, { plan, words, mostMinor }: RiserInputs): Riser {
  const { figures, cashMinor, riseMinor, because, proved } = rise;
  const [first = '', ...others] = because.map(nameOf);
  return {
    no,
    name: others.length === 0 ? first : `${first} + ${words.count(others.length)}`,
    title: `Figure ${words.count(figures)}: ${words.money(riseMinor)} more for ${listOf([first, ...others])}`,
    hexes: because.map((paint) => hexOf(plan, paint)),
    across: shareOf(figures, plan.stairs.mostFigures),
    fromUp: shareOf(cashMinor, mostMinor, -riseMinor),
    up: shareOf(cashMinor, mostMinor),
    proved,
  };
}
