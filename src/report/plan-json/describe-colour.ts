// Report view: colours as plan.json tells them. In: the plan. Out: undercoats, primers, swaps, substitutes, the frontier.
import type { CoatReason, Mix } from '../../model/colour.js';
import type { FrontierPoint } from '../../model/frontier.js';
import type { Plan } from '../../model/plan.js';
import type { PlanDocument } from './plan-document.js';
import { type Money, roundNumber, roundNumbers, roundTo } from './write-values.js';

type ColourKeys =
  | 'undercoats'
  | 'primers'
  | 'swaps'
  | 'instead'
  | 'frontier'
  | 'frontierNotDrawn'
  | 'fewestPots';

/** Of a plan without colours the lists are empty, but for primers and the frontier's cash. */
export function describeColour(plan: Plan, money: Money): Pick<PlanDocument, ColourKeys> {
  const { undercoats, primers, swaps, instead, frontier } = plan;
  return {
    undercoats: undercoats.map(({ over, under, mlSaved, minutesSaved, ...advice }) => ({
      ...advice,
      ...{ over: describeMix(over), under: describeMix(under) },
      mlSaved: roundNumber(mlSaved),
      minutesSaved: roundTo(2, minutesSaved),
    })),
    primers: primers.primers.map(({ paint, useCost, minutes, ml, coats, ...primer }) => ({
      ...{ paint, best: primers.best.includes(paint), ...primer },
      ...roundNumbers({ coats, ml }),
      ...money.useCost(useCost),
      minutes: roundTo(2, minutes),
    })),
    swaps: swaps.map(({ dE00, ...swap }) => ({ ...swap, dE00: describeDifference(dE00) })),
    instead: instead.flatMap(({ paint, toBuyMl, by }) =>
      by.map((one) => ({
        ...{ paint, toBuyMl: roundNumber(toBuyMl), by: one.paint, sameByName: one.sameByName },
        dE00: describeDifference(one.dE00),
        spareMl: roundNumber(one.spareMl),
      })),
    ),
    frontier: frontier.points.map((point) => describePoint(point, money)),
    frontierNotDrawn: frontier.notDrawn,
    fewestPots: {
      ...describePoint(frontier.fewestPots, money),
      abovePots: frontier.fewestPots.abovePots,
    },
  };
}

const describeMix = (mix: Mix) => mix.map(({ paint, share }) => roundNumbers({ paint, share }));

const describeDifference = (dE00: number | undefined): number | null =>
  dE00 === undefined ? null : roundTo(2, dE00);

const describePoint = (point: FrontierPoint, { cash }: Money): PlanDocument['frontier'][number] => ({
  ...{ dE00: point.dE00, cash: cash(point.cashMinor), pots: point.pots, status: point.status },
  aboveBest: cash(point.aboveBestMinor),
  swaps: point.swaps.map(({ paint, by, dE00 }) => ({ paint, by, dE00: roundTo(2, dE00) })),
  unmet: point.unmet.map(({ paint, ml }) => roundNumbers({ paint, ml })),
});

/** Short, since each line of an army may bear one: shares of mixes, and what else lies beneath, are left out. */
export function describeReason({ under, dE00, coatOpacity, better }: CoatReason) {
  return {
    under: under.map(({ paint }) => paint),
    dE00: roundTo(2, dE00),
    ...(coatOpacity !== undefined && { coatOpacity: roundTo(3, coatOpacity) }),
    ...(better !== undefined && { better }),
  };
}
