// Stock: what the log took from the shelf. In: the pots of a paint in the order in which they are used up, its log rows.
// Out: the pots with what is left in them.
import { gramsPerUsableMl, usedErrorMl, usedMlOf } from '../assumptions/weigh-use.js';
import type { Assumptions } from '../model/assumption.js';
import type { IsoDate, LogRow, Paint } from '../model/sheets.js';
import type { ShelfPot } from '../model/stock.js';

/** A pot of the shelf and the day on which somebody looked into it. */
export interface CountedPot {
  readonly pot: ShelfPot;
  readonly countedOn: IsoDate | undefined;
}

/**
 * Takes each row's paint from the pots, the first in use first. A pot that was counted on the day of the row or later
 * shows its use already; one on its way holds none of it. A row without an amount takes nothing. What no pot can give is
 * left out: the sheets have said so.
 * The errors of the uses add up in squares with that of the reading.
 */
export function useUp(
  pots: readonly CountedPot[],
  rows: readonly LogRow[],
  { paint, assumptions }: { readonly paint: Paint; readonly assumptions: Assumptions },
): ShelfPot[] {
  const left = pots.map(({ pot }) => ({ ...pot }));
  const sizeMl = Math.max(0, ...left.map((pot) => pot.sizeMl));
  for (const row of [...rows].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : a.row - b.row))) {
    const open = left.filter((pot, at) => !pot.ordered && isBefore(pots[at]?.countedOn, row.date));
    const [first] = open;
    if (first === undefined) continue;
    const densityGPerMl = gramsPerUsableMl(paint, first.container, assumptions);
    const usedMl = usedMlOf(row, densityGPerMl);
    if (usedMl === undefined) continue;
    takeOff(open, usedMl, usedErrorMl(row, { densityGPerMl, sizeMl }, assumptions));
  }
  return left;
}

const isBefore = (countedOn: IsoDate | undefined, day: IsoDate): boolean =>
  countedOn === undefined || countedOn < day;

function takeOff(
  pots: { usableMl: number; readingErrorMl: number }[],
  usedMl: number,
  errorMl: number,
): void {
  let restMl = usedMl;
  for (const pot of pots) {
    const takenMl = Math.min(pot.usableMl, restMl);
    if (takenMl <= 0) continue;
    pot.usableMl -= takenMl;
    pot.readingErrorMl = Math.hypot(pot.readingErrorMl, errorMl);
    restMl -= takenMl;
  }
}
