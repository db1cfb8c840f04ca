// Estimate: an army of fewer figures. In: demands with the figures wanted of each, the army. Out: its units, cut short.
import { at } from '../model/at.js';

import type { Unit } from '../model/sheets.js';
import type { UnitDemand } from '../model/work.js';

/** The army with so many figures of each demand, in the army's order; units of none fall away. */
export function cutArmy(
  demands: readonly UnitDemand[],
  figures: readonly number[],
  army: readonly Unit[],
): Unit[] {
  const countOf = new Map(demands.map(({ unit }, index) => [unit, at(figures, index)]));
  return army.flatMap((unit) => {
    const count = countOf.get(unit.unit) ?? 0;
    return count > 0 ? [{ ...unit, count }] : [];
  });
}
