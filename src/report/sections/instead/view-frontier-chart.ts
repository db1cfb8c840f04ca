// Report view: cash against colour as shares of a drawing. In: levels. Out: steps, ticks, a text that says the same.
import type { FrontierLevel } from '../../../model/summary.js';
import type { Tick } from '../../drawing/draw-axes.js';
import { shareOf } from '../../drawing/scale.js';
import { openScale } from '../../drawing/tick-steps.js';
import { isFirm } from './is-firm.js';
import type { Pairing } from './view-pair.js';

/** Across, 1 is the largest difference drawn; upwards, 1 is the most cash and 0 where the scale begins. */
export interface FrontierChart {
  readonly title: string;
  readonly says: string;
  /** What goes across. */
  readonly across: string;
  readonly levels: readonly Level[];
  readonly cashTicks: readonly Tick[];
  readonly differenceTicks: readonly Tick[];
  readonly currency: string;
}

/** Cash from one difference on, till the next level begins. */
export interface Level {
  readonly no: string;
  /** What is swapped here and was not before, short. */
  readonly name: string;
  readonly title: string;
  readonly across: number;
  readonly up: number;
  /** True where it is proved and everything is met. */
  readonly firm: boolean;
}

/** Levels by rising difference, two at the least. */
export function viewFrontierChart(
  levels: readonly FrontierLevel[],
  { plan, words, texts }: Pairing,
): FrontierChart {
  const { chart } = texts.frontier;
  const cash = levels.map(({ cashMinor }) => cashMinor);
  const [least, most] = [Math.min(...cash), Math.max(...cash, 1)];
  const farthest = Math.max(...levels.map(({ toDE00 }) => toDE00), 1);
  const upwards = openScale({ least, most });
  return {
    title: chart.title,
    says: chart.says(levels, farthest),
    across: chart.across,
    levels: levels.map((level, at): Level => {
      const before = levels[at - 1]?.swaps ?? [];
      const fresh = level.swaps.filter(
        ({ paint, by }) => !before.some((one) => one.paint === paint && one.by === by),
      );
      return {
        no: String(at + 1),
        name: chart.swaps(fresh),
        title: chart.level(level, fresh),
        across: shareOf(level.dE00, farthest),
        up: upwards.shareOf(level.cashMinor),
        firm: isFirm(level),
      };
    }),
    currency: plan.settings.currency,
    cashTicks: upwards.ticks.map((minor) => ({ share: upwards.shareOf(minor), text: words.major(minor) })),
    differenceTicks: Array.from({ length: Math.floor(farthest) + 1 }, (_, of) => ({
      share: shareOf(of, farthest),
      text: words.count(of),
    })),
  };
}
