// Summary: each army's share of a plan of several. In: units' costs, the shelf. Out: sums by army, not yet rounded.

import type { ArmyShare } from '../model/cost-sums.js';
import { groupBy } from '../model/group-by.js';
import { addAmounts } from '../model/money.js';
import type { Costs, UnitCost } from '../model/plan.js';
import type { PaintStock } from '../model/stock.js';

interface Inputs {
  readonly costs: Pick<Costs, 'units'>;
  readonly stock: readonly PaintStock[];
}

export function sumArmies({ costs, stock }: Inputs): ArmyShare[] {
  const units = costs.units
    .filter(({ unit }) => unit.army !== undefined)
    .sort((a, b) => a.unit.priority - b.unit.priority);
  const unitsOf = groupBy(units, ({ unit }) => unit.army ?? '');
  const short = stock.filter(({ toBuyMl }) => toBuyMl > 0).map(({ paint }) => paint);
  return [...unitsOf].map(([army, of]) => sumArmy(army, of, short));
}

function sumArmy(army: string, units: readonly UnitCost[], short: readonly string[]): ArmyShare {
  const jobs = new Set(units.map(({ job }) => job));
  const needed = new Set([...jobs].flatMap(({ remaining }) => remaining.map(({ paint }) => paint)));
  const sum = (of: (unit: UnitCost) => number): number => units.reduce((total, unit) => total + of(unit), 0);
  return {
    ...{ army, units: units.length, figures: sum(({ unit }) => unit.count) },
    cashMinor: sum(({ cashMinor }) => cashMinor),
    whole: addAmounts(units.map(({ use }) => use.whole)),
    remaining: addAmounts(units.map(({ use }) => use.remaining)),
    short: short.filter((paint) => needed.has(paint)),
  };
}
