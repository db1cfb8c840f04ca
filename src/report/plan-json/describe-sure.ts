// Report view: ranges, the promise, doubts and weighings as plan.json tells them. In: those of the plan. Out: the same, rounded,
// with money as decimal strings.
import { exactMinor } from '../../model/money.js';
import type { Plan } from '../../model/plan.js';
import type { Range } from '../../model/ranges.js';
import type { PlanDocument } from './plan-document.js';
import { describeChance, type Money, roundNumbers } from './write-values.js';

type Sure = Pick<PlanDocument, 'draws' | 'promise' | 'doubts' | 'remedies' | 'learned'>;

/** All that is said of how sure the plan is, but for the paints' own. */
export function describeSure({ ranges, learned, promised }: Plan, money: Money): Sure {
  const { slope, slopeError, widened, weighings } = learned;
  return {
    draws: { count: ranges.draws, seed: ranges.seed },
    promise: describePromise(promised, money),
    doubts: ranges.doubts.map(({ name, share }) => roundNumbers({ name, shareOfCashSpread: share })),
    remedies: ranges.remedies.map(({ how, what, paint, share }) =>
      roundNumbers({ how, what, paint, shareOfCashSpread: share }),
    ),
    learned: {
      ...roundNumbers({ slope, slopeError, widened }),
      weighings: weighings.map(({ row, isCount = false, date, unit, paint, figures, ...ml }) => ({
        ...{ row, isCount, date, unit, paint, figures },
        ...roundNumbers({ usedMl: ml.usedMl, expectedMl: ml.expectedMl, errorMl: ml.errorMl }),
      })),
    },
  };
}

function describePromise(promised: Plan['promised'], { cash }: Money): PlanDocument['promise'] {
  const { surePercent, met, metOnFreshDraws, metOfOffered, likely, levels } = promised;
  return {
    sure: surePercent === undefined ? null : surePercent / 100,
    ...describeChance('met', met),
    ...describeChance('metOnFreshDraws', metOnFreshDraws),
    ...describeChance('metOfOffered', metOfOffered),
    likely: { cash: cash(likely.cashMinor), ...describeChance('met', likely.met) },
    levels: levels.map((level) => ({
      ...{ sure: level.surePercent / 100, cash: cash(level.cashMinor) },
      ...describeChance('met', level.met),
      proved: level.proved,
    })),
  };
}

/** Low and high of a cost of use, from minor units unrounded. */
export const describeCostRange = ({ low, high }: Range, { cost }: Money) => ({
  low: cost(exactMinor(low)),
  high: cost(exactMinor(high)),
});
