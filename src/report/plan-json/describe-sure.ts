// Report view: ranges, the promise, doubts and weighings as plan.json tells them. In: those of the plan. Out: the same, rounded,
// with money as decimal strings.
import { exactMinor, toMajor } from '../../model/money.js';
import type { Plan } from '../../model/plan.js';
import type { Chance, Range } from '../../model/ranges.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber, useDigits } from './round-number.js';

type Sure = Pick<PlanDocument, 'draws' | 'promise' | 'doubts' | 'remedies' | 'learned'>;

/** All that is said of how sure the plan is, but for the paints' own. */
export function describeSure({ ranges, learned, promised, settings: { currency } }: Plan): Sure {
  return {
    draws: { count: ranges.draws, seed: ranges.seed },
    promise: describePromise(promised, currency),
    doubts: ranges.doubts.map(({ name, share }) => ({ name, shareOfCashSpread: roundNumber(share) })),
    remedies: ranges.remedies.map(({ how, what, paint, share }) => ({
      ...{ how, what, paint },
      shareOfCashSpread: roundNumber(share),
    })),
    learned: {
      slope: roundNumber(learned.slope),
      slopeError: roundNumber(learned.slopeError),
      widened: roundNumber(learned.widened),
      weighings: learned.weighings.map(({ row, isCount = false, date, unit, paint, figures, ...ml }) => ({
        ...{ row, isCount, date, unit, paint, figures },
        usedMl: roundNumber(ml.usedMl),
        expectedMl: roundNumber(ml.expectedMl),
        errorMl: roundNumber(ml.errorMl),
      })),
    },
  };
}

function describePromise(promised: Plan['promised'], currency: string): PlanDocument['promise'] {
  const { likely, levels } = promised;
  return {
    sure: promised.surePercent === undefined ? null : promised.surePercent / 100,
    ...metOf(promised.met),
    metOnFreshDraws: roundNumber(promised.metOnFreshDraws.chance),
    metOnFreshDrawsError: roundNumber(promised.metOnFreshDraws.error),
    metOfOffered: roundNumber(promised.metOfOffered.chance),
    metOfOfferedError: roundNumber(promised.metOfOffered.error),
    likely: { cash: toMajor(likely.cashMinor, currency), ...metOf(likely.met) },
    levels: levels.map(({ surePercent, cashMinor, met, proved }) => ({
      sure: surePercent / 100,
      cash: toMajor(cashMinor, currency),
      ...metOf(met),
      proved,
    })),
  };
}

const metOf = ({ chance, error }: Chance) => ({ met: roundNumber(chance), metError: roundNumber(error) });

/** Low and high of a cost of use, from minor units unrounded. */
export function describeCostRange({ low, high }: Range, currency: string): { low: string; high: string } {
  const cost = (minor: number): string => toMajor(exactMinor(minor), currency, useDigits);
  return { low: cost(low), high: cost(high) };
}
