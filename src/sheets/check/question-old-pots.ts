// Checks: pots that may have dried up. In: the pots sheet, the log, the years that an opened pot keeps. Out: nothing; each pot
// that is older and was not counted since is asked about.
import { groupByPaint } from '../../model/group-by.js';
import { holdsPaint } from '../../model/holds-paint.js';
import type { IsoDate, LogRow } from '../../model/sheets.js';
import type { OwnedPot, PotSheet } from './check-pots.js';

interface Given {
  readonly sheet: PotSheet;
  readonly log: readonly LogRow[];
  readonly years: number;
  readonly day: IsoDate;
}

/** A count of its paint in the log is one of the pot. */
export function questionOldPots(owned: readonly OwnedPot[], { sheet, log, years, day }: Given): void {
  const counts = groupByPaint(log.filter(({ what }) => what === 'counted'));
  for (const { pot, row } of owned) {
    if (pot.openedOn === undefined || !holdsPaint(pot)) continue;
    const oldOn = yearsAfter(pot.openedOn, years);
    const counted = [pot.countedOn ?? '', ...(counts.get(pot.paint) ?? []).map(({ date }) => date)];
    if (day < oldOn || counted.some((on) => on >= oldOn)) continue;
    sheet.blame('pot-old', row, 'opened', { found: pot.openedOn, expected: oldOn });
  }
}

/** Whole years; the 29th of February sorts before the 1st of March in any year. */
const yearsAfter = (date: IsoDate, years: number): IsoDate =>
  `${String(Number(date.slice(0, 4)) + Math.round(years)).padStart(4, '0')}${date.slice(4)}`;
