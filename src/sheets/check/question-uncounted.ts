// Checks: progress that no pot shows. In: rows that count as progress and name no amount, pots by paint, the day of the plan.
// Out: nothing; where the need shrinks while a pot looks as full as before, its count is asked for.
import type { IsoDate } from '../../model/sheets.js';
import { type HeldPot, type Shelf, uncountedSince } from './gather-shelf.js';
import type { LogEntry } from './open-log.js';

/** Asked once a paint, at the last of its rows: a count after that one is a count after all of them. */
export function questionUncounted(progress: readonly LogEntry[], shelf: Shelf, day: IsoDate): void {
  const asking = new Map<string, LogEntry[]>();
  for (const entry of progress) {
    const { paint = '', row } = entry;
    if (uncountedSince(shelf.get(paint) ?? [], row.date ?? '').length === 0) continue;
    const others = asking.get(paint);
    if (others === undefined) asking.set(paint, [entry]);
    else others.push(entry);
  }
  for (const [paint, entries] of asking) ask(entries, shelf.get(paint) ?? [], day);
}

function ask(entries: readonly LogEntry[], pots: readonly HeldPot[], day: IsoDate): void {
  const last = entries.reduce((one, other) => (dayOf(other) < dayOf(one) ? one : other));
  const before = entries.length - 1;
  const countedOn = dayOf(last) > day ? dayOf(last) : day;
  last.sheet.blame('log-uncounted', last.row, 'usedMl', {
    found: before === 0 ? 'this row counts' : `this row and ${before} before it count`,
    expected: `${rowsOf(uncountedSince(pots, dayOf(last)))}, and the day, such as ${countedOn}`,
  });
}

const dayOf = ({ row }: LogEntry): IsoDate => row.date ?? '';

const mostRows = 3;

/** `row 2 of the pots sheet`, `rows 2, 4, 5 and 2 more of the pots sheet`; of a sheet in parts `row 2 of pots desk.csv`. */
function rowsOf(pots: readonly HeldPot[]): string {
  const places = [...new Set(pots.map(({ place }) => place))];
  const isInParts = places.some((place) => place.includes(' of '));
  const rows = isInParts ? places : places.map((place) => place.replace('row ', ''));
  const more = rows.length - mostRows;
  const named = `${rows.slice(0, mostRows).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
  if (isInParts) return named;
  return `${rows.length === 1 ? 'row' : 'rows'} ${named} of the pots sheet`;
}
