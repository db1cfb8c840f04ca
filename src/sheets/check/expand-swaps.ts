// Checks: swaps for one unit. In: rows of the swaps sheet, army, schemes. Out: the same as if such a unit had a scheme of its own,
// for which they hold; later stages know of schemes alone.

import { groupBy } from '../../model/group-by.js';
import type { Unit } from '../../model/sheets.js';
import { mostRows } from '../most-rows.js';
import type { CheckedArmy } from './check-army.js';
import type { CheckedSchemes } from './check-schemes.js';
import { findNearest } from './find-nearest.js';
import { foldName } from './fold-name.js';
import type { SwapRow, SwapSheet } from './open-swaps.js';
import { tellOnce } from './tell-once.js';

interface Given {
  readonly army: CheckedArmy;
  readonly schemes: CheckedSchemes;
}

/** A unit that no row names keeps its scheme; one that a row names has that scheme by another name, such as `guard (first spears)`. */
export function expandSwaps(sheet: SwapSheet, given: Given): Given & { readonly sheet: SwapSheet } {
  const named = sheet.rows.filter(({ unit }) => unit !== undefined);
  if (named.length === 0) return { sheet, ...given };
  const { army, schemes } = given;
  const units = new Map(army.units.map((unit) => [foldName(unit.unit), unit]));
  const known = named.flatMap((row) => {
    const unit = findUnit(sheet, row, { units, ...given });
    return unit === undefined ? [] : [{ row, unit }];
  });
  const copies = nameCopies(sheet, known, schemes);
  const own = known.flatMap(({ row, unit }) => {
    const scheme = copies.get(unit);
    return scheme === undefined ? [] : [{ ...row, scheme }];
  });
  const others = sheet.rows.filter(({ unit }) => unit === undefined);
  const also = [...copies].flatMap(([unit, scheme]) =>
    others
      .filter((row) => row.scheme !== undefined && schemes.book?.find(row.scheme) === unit.scheme)
      .filter((row) => !own.some((one) => one.scheme === scheme && isSame(one, row)))
      .map((row) => ({ ...row, scheme })),
  );
  return {
    sheet: { ...tellOnce(sheet), rows: [...own, ...others, ...also] },
    army: {
      ...army,
      units: army.units.map((unit) => ({ ...unit, scheme: copies.get(unit) ?? unit.scheme })),
    },
    schemes: addCopies(schemes, copies),
  };
}

const isSame = (one: SwapRow, other: SwapRow): boolean =>
  one.step === other.step && foldName(one.paint ?? '') === foldName(other.paint ?? '');

/** Undefined for a unit that nobody knows, and for one that is painted in another scheme than the row says; both are told. */
function findUnit(
  sheet: SwapSheet,
  row: SwapRow,
  { units, army, schemes }: Given & { readonly units: ReadonlyMap<string, Unit> },
): Unit | undefined {
  const unit = units.get(foldName(row.unit ?? ''));
  if (unit === undefined) {
    const isThere = army.rowOf === undefined || army.rowOf.has(foldName(row.unit ?? ''));
    const names = army.units.map((one) => one.unit);
    if (!isThere) sheet.blame('unknown-unit', row, 'unit', { expected: findNearest(row.unit ?? '', names) });
    return undefined;
  }
  const scheme = row.scheme === undefined ? unit.scheme : schemes.book?.find(row.scheme);
  if (scheme === unit.scheme) return unit;
  if (scheme !== undefined) sheet.blame('swap-of-other-scheme', row, 'scheme', { expected: unit.scheme });
  else if (schemes.book !== undefined)
    sheet.blame('unknown-scheme', row, 'scheme', { expected: schemes.book.nearest(row.scheme ?? '') });
  return undefined;
}

function nameCopies(
  sheet: SwapSheet,
  known: readonly { readonly row: SwapRow; readonly unit: Unit }[],
  { sheet: { rows }, schemes, book }: CheckedSchemes,
): ReadonlyMap<Unit, string> {
  const rowsOf = groupBy(rows, ({ scheme }) => book?.find(scheme ?? ''));
  const copies = new Map<Unit, string>();
  let sum = 0;
  for (const { row, unit } of known) {
    if (copies.has(unit) || sum > mostRows) continue;
    sum += rowsOf.get(unit.scheme)?.length ?? 0;
    if (sum > mostRows) sheet.blame('too-many-in-all', row, 'unit', { expected: `${mostRows} steps` });
    let name = `${unit.scheme} (${unit.unit})`;
    while (schemes.has(name)) name += ' *';
    copies.set(unit, name);
  }
  return copies;
}

function addCopies(checked: CheckedSchemes, copies: ReadonlyMap<Unit, string>): CheckedSchemes {
  const { sheet, book } = checked;
  const schemes = new Map(checked.schemes);
  const steps = new Map(checked.steps);
  const copyOf = new Map<string, string>();
  const rowsOf = groupBy(sheet.rows, ({ scheme }) => book?.find(scheme ?? ''));
  const more = [...copies].flatMap(([{ scheme: from }, scheme]) => {
    const numbers = steps.get(from);
    schemes.set(book?.add(scheme) ?? scheme, { scheme, steps: schemes.get(from)?.steps ?? [] });
    if (numbers !== undefined) steps.set(scheme, numbers);
    copyOf.set(scheme, from);
    return (rowsOf.get(from) ?? []).map((row) => ({ ...row, scheme }));
  });
  return { ...checked, schemes, steps, copyOf, sheet: { ...sheet, rows: [...sheet.rows, ...more] } };
}
