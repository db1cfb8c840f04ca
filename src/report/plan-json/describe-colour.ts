// Report view: colours as plan.json tells them. In: the plan. Out: undercoats, primers, swaps, substitutes, the frontier.
import type { CoatReason, Mix } from '../../model/colour.js';
import type { FrontierPoint } from '../../model/frontier.js';
import { toMajor } from '../../model/money.js';
import type { Plan } from '../../model/plan.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber, roundTo, useDigits } from './round-number.js';

type ColourKeys =
  | 'undercoats'
  | 'primers'
  | 'swaps'
  | 'instead'
  | 'frontier'
  | 'frontierNotDrawn'
  | 'fewestPots';

/** Of a plan without colours the lists are empty, but for primers and the frontier's cash. */
export function describeColour(plan: Plan): Pick<PlanDocument, ColourKeys> {
  const { undercoats, primers, swaps, instead, frontier, settings } = plan;
  const { currency } = settings;
  return {
    undercoats: undercoats.map(({ over, under, mlSaved, minutesSaved, ...advice }) => ({
      ...advice,
      ...{ over: describeMix(over), under: describeMix(under) },
      mlSaved: roundNumber(mlSaved),
      minutesSaved: roundTo(2, minutesSaved),
    })),
    primers: primers.primers.map(({ paint, useCost, minutes, ml, coats, ...primer }) => ({
      ...{ paint, best: primers.best.includes(paint), ...primer },
      coats: roundNumber(coats),
      ml: roundNumber(ml),
      useCost: toMajor(useCost.exactMinor, currency, useDigits),
      atLeast: useCost.atLeast,
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
    frontier: frontier.points.map((point) => describePoint(point, currency)),
    frontierNotDrawn: frontier.notDrawn,
    fewestPots: {
      ...describePoint(frontier.fewestPots, currency),
      abovePots: frontier.fewestPots.abovePots,
    },
  };
}

const describeMix = (mix: Mix) => mix.map(({ paint, share }) => ({ paint, share: roundNumber(share) }));

const describeDifference = (dE00: number | undefined): number | null =>
  dE00 === undefined ? null : roundTo(2, dE00);

function describePoint(point: FrontierPoint, currency: string): PlanDocument['frontier'][number] {
  const { dE00, cashMinor, pots, status, aboveBestMinor, swaps, unmet } = point;
  return {
    dE00,
    cash: toMajor(cashMinor, currency),
    pots,
    status,
    aboveBest: toMajor(aboveBestMinor, currency),
    swaps: swaps.map((swap) => ({ paint: swap.paint, by: swap.by, dE00: roundTo(2, swap.dE00) })),
    unmet: unmet.map(({ paint, ml }) => ({ paint, ml: roundNumber(ml) })),
  };
}

/** Short, since each line of an army may bear one: shares of mixes, and what else lies beneath, are left out. */
export function describeReason({ under, dE00, coatOpacity, better }: CoatReason) {
  return {
    under: under.map(({ paint }) => paint),
    dE00: roundTo(2, dE00),
    ...(coatOpacity !== undefined && { coatOpacity: roundTo(3, coatOpacity) }),
    ...(better !== undefined && { better }),
  };
}
