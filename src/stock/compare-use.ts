// Stock: what paints really took beside their estimate. In: pots and log as given, the stock as it stands, the estimate. Out: ml
// of both, by paint.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { followPots } from '../model/follow-pots.js';
import { groupByPaint } from '../model/group-by.js';
import { isWorkRow, linesOfRow } from '../model/lines-of-row.js';
import type { LogRow, Pot, Sheets } from '../model/sheets.js';
import type { UseBeside } from '../model/spent.js';
import type { CountedStock } from '../model/stock.js';
import type { Estimate } from '../model/work.js';
import { measurePot } from './measure-pot.js';

/**
 * Only of paints of which something was measured, and of which every use since the pots sheet was read is work that the
 * estimate knows. What was thrown away is used.
 */
export function compareUse(
  { pots, log, paints }: Pick<Sheets, 'pots' | 'log' | 'paints'>,
  {
    stock,
    estimate,
  }: { readonly stock: readonly CountedStock[]; readonly estimate: Pick<Estimate, 'units'> },
  assumptions: Assumptions,
): ReadonlyMap<string, UseBeside> {
  const potsOf = groupByPaint(pots);
  const rowsOf = groupByPaint(log);
  const estimateMl = estimateRow(estimate, likely(assumptions, 'painter'));
  const compared = stock.flatMap(({ paint, haveMl }): [string, UseBeside][] => {
    const [own, rows] = [potsOf.get(paint) ?? [], rowsOf.get(paint) ?? []];
    const kind = paints.get(paint);
    const uses = rows.filter((row) => row.what === undefined && isSince(row, own));
    if (kind === undefined || uses.length === 0 || !rows.some(isMeasured)) return [];
    const estimates = uses.map(estimateMl);
    const estimatedMl = estimates.reduce((sum, ml) => sum + ml, 0);
    if (estimates.includes(0)) return [];
    const bought = followPots(own, rows).lives.filter(({ pot }) => pot.fromLog);
    const hadMl = [...own, ...bought.map(({ pot }) => asBought(pot))]
      .map((pot) => measurePot(pot, kind, assumptions).usableMl)
      .reduce((sum, ml) => sum + ml, 0);
    return [[paint, { usedMl: Math.max(0, hadMl - haveMl), estimatedMl }]];
  });
  return new Map(compared);
}

/** A reading of some day shows that day's use already. */
const isSince = ({ date }: LogRow, pots: readonly Pot[]): boolean =>
  pots.length === 0 || pots.some(({ countedOn }) => countedOn === undefined || countedOn < date);

const isMeasured = ({ what, left, usedMl, beforeG, afterG }: LogRow): boolean =>
  what === undefined
    ? usedMl !== undefined || (beforeG !== undefined && afterG !== undefined)
    : what === 'counted' && left !== undefined;

const asBought = (pot: Pot): Pot => ({ ...pot, left: { how: 'by eye', share: 1 } });

/** Likely ml of a row's work; 0 where the estimate has no such work. */
function estimateRow({ units }: Pick<Estimate, 'units'>, painter: number): (row: LogRow) => number {
  // Of units with one name the first is painted first.
  const jobs = new Map(units.toReversed().map(({ unit, job }) => [unit.unit, job]));
  return (row) => {
    const job = isWorkRow(row) ? jobs.get(row.unit) : undefined;
    if (job === undefined || !isWorkRow(row)) return 0;
    return linesOfRow(row, job, painter).reduce((sum, { putOutMl }) => sum + putOutMl, 0);
  };
}
