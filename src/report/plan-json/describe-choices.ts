// Report view: ways to buy as plan.json tells them. In: those of the plan. Out: the same with money as decimal strings.
import type { Choice, Needed, NextOrder, Sampled } from '../../model/choices.js';
import { describeLine } from './describe-order.js';
import type { PlanDocument } from './plan-document.js';
import { describeChance, type Money, roundNumber } from './write-values.js';

type DocumentChoice = PlanDocument['choices'][number];

export function describeChoice(choice: Choice, money: Money): DocumentChoice {
  const { follows } = choice;
  const cash = (minor: number) => money.cash(Math.round(minor));
  const valuesOf = (of: (one: Sampled) => number) => ({
    ordersAfter: roundNumber(of(follows.ordersAfter)),
    meanInAll: cash(of(follows.meanInAllMinor)),
    highInAll: cash(of(follows.highInAllMinor)),
    leftOver: cash(of(follows.leftOverMinor)),
  });
  return {
    ...describeAim(choice),
    cashNow: cash(choice.cashNowMinor),
    aboveBest: cash(choice.aboveBestMinor),
    ...describeChance('met', choice.met),
    draws: follows.draws,
    ...valuesOf(({ value }) => value),
    errors: valuesOf(({ error }) => error),
    atLeast: follows.atLeast,
    next: follows.next === undefined ? null : describeNext(follows.next, cash),
    lines: choice.lines.map((line) => ({ ...describeLine(line, money), ...describeNeeded(line) })),
    waiting: choice.waiting.map((one) => ({ paint: one.paint, ...describeNeeded(one) })),
  };
}

/** Which way to buy it is. */
export const describeAim = ({ policy, surePercent }: Pick<Choice, 'policy' | 'surePercent'>) => ({
  policy,
  sure: surePercent === undefined ? null : roundNumber(surePercent / 100),
});

const describeNext = (next: NextOrder, cash: (minor: number) => string): DocumentChoice['next'] => ({
  ...describeChance('chance', next.chance),
  unit: next.unit,
  ...describeChance('chanceThere', next.chanceThere),
  cash: cash(next.cashMinor.value),
  cashError: cash(next.cashMinor.error),
});

const describeNeeded = ({ chanceNeeded, threshold }: Needed) => ({
  ...describeChance('chanceNeeded', chanceNeeded),
  threshold: roundNumber(threshold),
});
