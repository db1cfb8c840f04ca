// Checks: schemes written short. In: rows of the schemes sheet. Out: the rows of each scheme as if they were written out: steps
// numbered, lists of zones apart, and what a scheme begins like filled in.

import { groupBy } from '../../model/group-by.js';
import { mostRows } from '../most-rows.js';
import { type SchemeRow, type SchemeSheet, sharesStep } from './differ-scheme.js';
import type { NameBook } from './keep-names.js';
import { Mistake } from './read-cell/cell-kind.js';
import { stepNumber } from './read-cell/read-count.js';
import { type Books, resolveLikes, type Written } from './resolve-likes.js';

/** By scheme, in the order of their first rows; undefined for one whose beginning is not known, which is told. */
export function expandSchemes(
  sheet: SchemeSheet,
  given: Books,
): ReadonlyMap<string, readonly SchemeRow[] | undefined> {
  const byScheme = groupBy(sheet.rows, ({ scheme }) =>
    scheme === undefined ? undefined : given.book.add(scheme),
  );
  let room = mostRows;
  const written = new Map<string, Written>();
  for (const [scheme, rows] of byScheme) {
    const like = rows.find((row) => row.like !== undefined);
    const numbered = like === undefined ? numberSteps(sheet, rows) : rows;
    const apart = numbered.flatMap((row) => {
      const zones = splitZones(row, given.zones);
      const isNew = room >= 0;
      room -= zones.length - 1;
      if (isNew && room < 0)
        sheet.blame('too-many-in-all', row, 'zone', { expected: `${mostRows} rows more` });
      return room < 0 ? [row] : zones;
    });
    written.set(scheme, { scheme, rows: apart, like });
  }
  return resolveLikes(sheet, written, given);
}

/** A blank step is one more than that of the row above; rows of one mix share it. */
function numberSteps(sheet: SchemeSheet, rows: readonly SchemeRow[]): readonly SchemeRow[] {
  let above: SchemeRow | undefined;
  let last = 0;
  let blanks = 0;
  const numbered = rows.map((row) => {
    if (row.step !== undefined || row.bad.includes('step')) last = row.step ?? last + 1;
    else {
      blanks += 1;
      if (above === undefined || !sharesStep(row, above)) last += 1;
    }
    above = row;
    return row.step === undefined && !row.bad.includes('step') ? { ...row, step: last } : row;
  });
  sheet.useBlank('step', blanks);
  const over = numbered.find(({ step = 1 }) => stepNumber.read(step) instanceof Mistake);
  const mistake = over === undefined ? undefined : stepNumber.read(over.step ?? 1);
  if (over !== undefined && mistake instanceof Mistake)
    sheet.blame(mistake.code, over, 'step', { found: String(over.step), expected: mistake.expected });
  return numbered;
}

/** There are not as many parts; a longer list is no list of zones, and asked about as one. */
const mostZones = 100;
/** `tunic, trousers` is a row for each, unless a zone is called so. */
export function splitZones(row: SchemeRow, zones: NameBook | undefined): readonly SchemeRow[] {
  const { zone } = row;
  if (zone === undefined || !zone.includes(',') || zones?.find(zone) !== undefined) return [row];
  const names = zone.split(',').flatMap((name) => (name.trim() === '' ? [] : [name.trim()]));
  return names.length === 0 || names.length > mostZones
    ? [row]
    : names.map((name) => ({ ...row, zone: name }));
}
