// Report view: ways to buy as plan.json tells them. In: those of the plan. Out: the same with money as decimal strings.
import type { Choice, Needed, NextOrder, Sampled } from '../../model/choices.js';
import { toMajor } from '../../model/money.js';
import { describeLine } from './describe-order.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber } from './round-number.js';

type DocumentChoice = PlanDocument['choices'][number];
type Cash = (minor: number) => string;

export function describeChoices(choices: readonly Choice[], currency: string): DocumentChoice[] {
  const cash = (minor: number) => toMajor(Math.round(minor), currency);
  return choices.map((choice) => describeChoice(choice, cash));
}

function describeChoice(choice: Choice, cash: Cash): DocumentChoice {
  const { follows } = choice;
  return {
    ...describeAim(choice),
    cashNow: cash(choice.cashNowMinor),
    aboveBest: cash(choice.aboveBestMinor),
    met: roundNumber(choice.met.chance),
    metError: roundNumber(choice.met.error),
    draws: follows.draws,
    ...valuesOf(follows, cash, ({ value }) => value),
    errors: valuesOf(follows, cash, ({ error }) => error),
    atLeast: follows.atLeast,
    next: follows.next === undefined ? null : describeNext(follows.next, cash),
    lines: choice.lines.map((line) => ({ ...describeLine(line, cash), ...describeNeeded(line) })),
    waiting: choice.waiting.map((one) => ({ paint: one.paint, ...describeNeeded(one) })),
  };
}

/** Which way to buy it is. */
export function describeAim({
  policy,
  surePercent,
}: Pick<Choice, 'policy' | 'surePercent'>): Pick<DocumentChoice, 'policy' | 'sure'> {
  return { policy, sure: surePercent === undefined ? null : roundNumber(surePercent / 100) };
}

const valuesOf = (follows: Choice['follows'], cash: Cash, of: (one: Sampled) => number) => ({
  ordersAfter: roundNumber(of(follows.ordersAfter)),
  meanInAll: cash(of(follows.meanInAllMinor)),
  highInAll: cash(of(follows.highInAllMinor)),
  leftOver: cash(of(follows.leftOverMinor)),
});

const describeNext = (next: NextOrder, cash: Cash): DocumentChoice['next'] => ({
  chance: roundNumber(next.chance.chance),
  chanceError: roundNumber(next.chance.error),
  unit: next.unit,
  chanceThere: roundNumber(next.chanceThere.chance),
  chanceThereError: roundNumber(next.chanceThere.error),
  cash: cash(next.cashMinor.value),
  cashError: cash(next.cashMinor.error),
});

const describeNeeded = (one: Needed) => ({
  chanceNeeded: roundNumber(one.chanceNeeded.chance),
  chanceNeededError: roundNumber(one.chanceNeeded.error),
  threshold: roundNumber(one.threshold),
});
