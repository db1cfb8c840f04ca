// Colour: what is owned instead. In: stock, paints, colours. Out: for each paint short or not owned, what may stand in.
import { likely } from '../assumptions/look-up.js';
import type { Instead, Substitute } from '../model/colour.js';
import type { Paint } from '../model/sheets.js';
import type { PaintStock } from '../model/stock.js';
import { sameMl } from '../model/volume.js';
import type { Palette } from './cover-beneath.js';
import type { FindNear } from './find-near.js';
import { nearByKind } from './near-by-kind.js';

/**
 * For every paint of which something is to be bought: owned paints of the same kind of which the army leaves some over,
 * by name first (`also called`), then within the farthest distance, nearest first. Paints for which there is none are
 * left out. In the order of the stock.
 */
export function findInstead(stock: readonly PaintStock[], palette: Palette): Instead[] {
  const spare = new Map(stock.filter(isSpare).map(({ paint, leftAfterMl }) => [paint, leftAfterMl]));
  const shelf: Shelf = {
    spare,
    near: nearByKind(spare.keys(), palette),
    names: bookNames(spare.keys(), palette),
  };
  return stock
    .filter(({ toBuyMl }) => toBuyMl > sameMl)
    .map(({ paint, haveMl, toBuyMl }) => {
      const neededMl = haveMl + toBuyMl;
      return { paint, toBuyMl, neededMl, by: listSubstitutes({ paint, neededMl }, shelf, palette) };
    })
    .filter(({ by }) => by.length > 0);
}

const isSpare = ({ haveMl, leftAfterMl }: PaintStock): boolean => haveMl > sameMl && leftAfterMl > sameMl;

interface Shelf {
  readonly spare: ReadonlyMap<string, number>;
  readonly near: ReadonlyMap<string, FindNear>;
  /** Which spare paints go by a name. */
  readonly names: ReadonlyMap<string, readonly string[]>;
}

function bookNames(names: Iterable<string>, { paints }: Palette): Map<string, string[]> {
  const book = new Map<string, string[]>();
  for (const paint of names) {
    for (const name of namesOf(paint, paints.get(paint))) book.set(name, [...(book.get(name) ?? []), paint]);
  }
  return book;
}

/** Every name that a paint goes by, folded as names are compared. */
function namesOf(paint: string, found: Paint | undefined): Set<string> {
  return new Set([paint, ...(found?.alsoCalled ?? [])].map((name) => name.normalize('NFC').toLowerCase()));
}

function listSubstitutes(
  { paint, neededMl }: Pick<Instead, 'paint' | 'neededMl'>,
  shelf: Shelf,
  { paints, colours, assumptions }: Palette,
): Substitute[] {
  const found = paints.get(paint);
  if (found === undefined) return [];
  const byName = new Set([...namesOf(paint, found)].flatMap((name) => shelf.names.get(name) ?? []));
  const lab = colours.labOf(paint);
  const near = lab && shelf.near.get(found.kind)?.(lab, likely(assumptions, 'farthest substitute'));
  const nearNames = (near ?? []).map((one) => one.paint).filter((other) => !byName.has(other));
  const describe = (other: string, sameByName: boolean): Substitute => {
    const dE00 = colours.distance(paint, other);
    const spareMl = shelf.spare.get(other) ?? 0;
    const isEnough = spareMl >= neededMl;
    return { paint: other, sameByName, spareMl, isEnough, ...(dE00 !== undefined && { dE00 }) };
  };
  const alike = [...byName].filter((other) => paints.get(other)?.kind === found.kind);
  return [
    ...alike.map((other) => describe(other, true)).sort(nearestFirst),
    ...nearNames.map((other) => describe(other, false)),
  ].filter((other) => other.paint !== paint);
}

const nearestFirst = (a: Substitute, b: Substitute): number =>
  (a.dE00 ?? Number.MAX_VALUE) - (b.dE00 ?? Number.MAX_VALUE) || (a.paint < b.paint ? -1 : 1);
