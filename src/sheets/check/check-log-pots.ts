// Checks: what the log says of pots. In: its rows, the pots sheet. Out: what became of each pot; what can't be is told.
import { type FollowedPots, followPots, type LedgerFault } from '../../model/follow-pots.js';
import { groupByPaint } from '../../model/group-by.js';
import type { LogRow, Pot } from '../../model/sheets.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import type { LogEntry } from './log-entries.js';

/** A shelf of more pots is no painter's; beyond it they would fill the memory. */
const mostPots = 5000;

const faults: Readonly<Record<LedgerFault, readonly [ProblemCode, 'what' | 'left' | 'sizeMl' | 'pots']>> = {
  'not coming': ['log-not-coming', 'what'],
  'not there': ['log-not-there', 'what'],
  'too many': ['log-not-there', 'pots'],
  'no size': ['log-no-size', 'sizeMl'],
  'over its size': ['left-over-size', 'left'],
  gains: ['log-count-gains', 'left'],
};

/** Follows the pots of each paint through its rows. */
export function checkLogPots(
  entryOf: ReadonlyMap<LogRow, LogEntry>,
  pots: readonly Pot[],
): readonly FollowedPots[] {
  const rowsOf = groupByPaint(withinBounds(entryOf));
  const potsOf = groupByPaint(pots);
  return [...new Set([...potsOf.keys(), ...rowsOf.keys()])].map((paint) => {
    const followed = followPots(potsOf.get(paint) ?? [], rowsOf.get(paint) ?? []);
    for (const { row, fault, most } of followed.faults) tell(entryOf.get(row), fault, most);
    return followed;
  });
}

function withinBounds(entryOf: ReadonlyMap<LogRow, LogEntry>): readonly LogRow[] {
  let bought = 0;
  let isTold = false;
  return [...entryOf.keys()].filter((row) => {
    if (row.what !== 'bought') return true;
    bought += row.pots ?? 1;
    if (bought <= mostPots) return true;
    const details = { found: String(bought), expected: String(mostPots) };
    const entry = isTold ? undefined : entryOf.get(row);
    entry?.sheet.blame('log-too-many-pots', entry.row, 'pots', details);
    isTold = true;
    return false;
  });
}

function tell(entry: LogEntry | undefined, fault: LedgerFault, most: number): void {
  const [code, key] = faults[fault];
  const isVolume = fault === 'over its size' || fault === 'gains';
  entry?.sheet.blame(code, entry.row, key, {
    expected: isVolume ? `${Math.round(most * 10) / 10} ml` : `${most}`,
  });
}
