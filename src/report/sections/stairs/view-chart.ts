// Report view: the staircase as shares of a drawing. In: steps that rise, the army's size and cash. Out: risers and ticks.

import type { Rise, StairSums } from '../../../model/order-sums.js';
import { shareOf } from '../../drawing/scale.js';
import { hexOf } from '../../words/hex-of.js';
import type { Worded } from '../../words/view-inputs.js';
import { listTicks, type Tick } from './draw-axes.js';
import type { StairsWords } from './words.js';

export interface StairsChart {
  readonly title: string;
  readonly says: string;
  /** What goes across. */
  readonly across: string;
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

interface ChartInputs extends Worded<StairsWords['chart']> {
  readonly sums: StairSums;
}

/** Undefined where the cash never rises: a flat line would say nothing. */
export function viewStairsChart(inputs: ChartInputs): StairsChart | undefined {
  const { plan, sums, words, texts } = inputs;
  const { rises, armyMinor } = sums;
  const { figureCount, settings, stairs } = plan;
  const most = rises.at(-1);
  if (most === undefined) return undefined;
  const mostMinor = Math.max(most.cashMinor, armyMinor);
  return {
    title: texts.title,
    says: texts.says(plan, sums, most.cashMinor),
    across: texts.across,
    risers: rises.map((rise, index) => riserOf(rise, index + 1, { ...inputs, mostMinor })),
    army: {
      across: shareOf(figureCount, stairs.mostFigures),
      up: shareOf(armyMinor, mostMinor),
      label: texts.army(figureCount, armyMinor),
      short: texts.armyShort(figureCount),
    },
    currency: settings.currency,
    cashTicks: listTicks(mostMinor, words.major),
    figureTicks: listTicks(stairs.mostFigures, words.count),
  };
}

interface RiserInputs extends ChartInputs {
  readonly mostMinor: number;
}

function riserOf(rise: Rise, no: number, { plan, texts, mostMinor }: RiserInputs): Riser {
  const { figures, cashMinor, riseMinor, because, proved } = rise;
  return {
    no,
    name: texts.because(because),
    title: texts.riser(rise),
    hexes: because.map((paint) => hexOf(plan, paint)),
    across: shareOf(figures, plan.stairs.mostFigures),
    fromUp: shareOf(cashMinor, mostMinor, -riseMinor),
    up: shareOf(cashMinor, mostMinor),
    proved,
  };
}
