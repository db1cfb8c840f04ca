// Summary: each army's share of a plan of several. In: units' costs, the shelf. Out: sums by army, not yet rounded.

import type { ArmyShare } from '../model/cost-sums.js';
import { type Amount, zeroMinor } from '../model/money.js';
import type { Costs, UnitCost } from '../model/plan.js';
import type { PaintStock } from '../model/stock.js';

interface Inputs {
  readonly costs: Pick<Costs, 'units'>;
  readonly stock: readonly PaintStock[];
}

export function sumArmies({ costs, stock }: Inputs): ArmyShare[] {
  const unitsOf = new Map<string, UnitCost[]>();
  for (const one of costs.units.toSorted((a, b) => a.unit.priority - b.unit.priority)) {
    const { army } = one.unit;
    if (army === undefined) continue;
    const units = unitsOf.get(army);
    if (units === undefined) unitsOf.set(army, [one]);
    else units.push(one);
  }
  const short = stock.filter(({ toBuyMl }) => toBuyMl > 0).map(({ paint }) => paint);
  return [...unitsOf].map(([army, units]) => sumArmy(army, units, short));
}

function sumArmy(army: string, units: readonly UnitCost[], short: readonly string[]): ArmyShare {
  const jobs = new Set(units.map(({ job }) => job));
  const needed = new Set([...jobs].flatMap(({ remaining }) => remaining.map(({ paint }) => paint)));
  const sum = (of: (unit: UnitCost) => number): number => units.reduce((total, unit) => total + of(unit), 0);
  return {
    ...{ army, units: units.length, figures: sum(({ unit }) => unit.count) },
    cashMinor: sum(({ cashMinor }) => cashMinor),
    whole: addUp(units.map(({ use }) => use.whole)),
    remaining: addUp(units.map(({ use }) => use.remaining)),
    short: short.filter((paint) => needed.has(paint)),
  };
}

const addUp = (amounts: readonly Amount[]): Amount => ({
  exactMinor: amounts.reduce((sum, { exactMinor }) => sum.plus(exactMinor), zeroMinor),
  atLeast: amounts.some(({ atLeast }) => atLeast),
});
