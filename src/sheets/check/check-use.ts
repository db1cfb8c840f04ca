// Checks: what the army's schemes ask for, against what there is. In: checked sheets. Out: warnings at the schemes' rows.

import type { Figure } from '../../model/figure.js';
import type { Pair } from '../../model/pair-units.js';
import type { OwnZone } from '../../model/sheets.js';
import {
  modelPartsInZone,
  partsOfFigure,
  partsOfModel,
  readyMadeZones,
  type ZonePart,
} from '../../model/zones.js';
import type { CheckedSchemes } from './check-schemes.js';
import type { CheckedSwaps } from './check-swaps.js';
import type { NameBook } from './keep-names.js';
import { holdsAt } from './open-swaps.js';

interface Use {
  /** Schemes with the figures painted in them, each pair once. */
  readonly pairs: readonly Pair[];
  readonly schemes: CheckedSchemes;
}

/**
 * Paints that a scheme in use needs, or that are used instead, and that neither a pot nor an offer holds; each is told
 * once. What is swapped need not be there.
 */
export function checkPaintsHad(
  { swaps, ...use }: Use & { readonly swaps: CheckedSwaps },
  paints: NameBook,
  had: ReadonlySet<string>,
): void {
  const told = new Set<string>();
  for (const { row, scheme, paint } of rowsInUse(use, paints)) {
    const isThere = had.has(paint) || told.has(paint);
    if (isThere || isSwapped({ scheme, step: row.step ?? 0, paint }, swaps)) continue;
    told.add(paint);
    use.schemes.sheet.blame('paint-not-had', row, 'paint', { found: paint });
  }
  tellInsteadNotHad(swaps, new Set([...had, ...told]));
}

/** A plan of so many takes nearly a minute and less than a gigabyte; no club owns as many. */
const mostPaints = 5000;

/** The row with the first paint too many of the schemes in use. */
export function checkPaintCount(use: Use, paints: NameBook): void {
  const met = new Set<string>();
  const over = rowsInUse(use, paints).find(({ paint }) => met.add(paint).size > mostPaints);
  const details = { found: String(met.size), expected: String(mostPaints) };
  if (over !== undefined) use.schemes.sheet.blame('too-many-paints', over.row, 'paint', details);
}

/** Rows of the schemes in use, with what their names mean. */
function rowsInUse({ pairs, schemes: { sheet, book } }: Use, paints: NameBook) {
  const inUse = new Set(pairs.map(({ scheme }) => scheme));
  return sheet.rows.flatMap((row) => {
    const scheme = row.scheme === undefined ? undefined : book?.find(row.scheme);
    const paint = row.paint === undefined ? undefined : paints.find(row.paint);
    return paint === undefined || scheme === undefined || !inUse.has(scheme) ? [] : [{ row, scheme, paint }];
  });
}

/** A paint that a further row swaps in its turn need not be there either. */
function tellInsteadNotHad({ sheet, entries }: CheckedSwaps, known: Set<string>): void {
  const swapped = new Set(entries.map(({ paint }) => paint));
  for (const { row, instead } of entries) {
    if (known.has(instead) || swapped.has(instead)) continue;
    known.add(instead);
    sheet.blame('paint-not-had', row, 'instead', { found: instead });
  }
}

function isSwapped(
  use: { readonly scheme: string; readonly step: number; readonly paint: string },
  { entries }: CheckedSwaps,
): boolean {
  return entries.some((swap) => holdsAt(swap, use) && (swap.paint === undefined || swap.paint === use.paint));
}

interface Painted extends Use {
  readonly figures: ReadonlyMap<string, Figure>;
  readonly zones: readonly OwnZone[];
}

/** Zones of a scheme of which a figure painted in it has no part; told once for each scheme, zone and figure. */
export function checkZonesOnFigures({ pairs, schemes, figures, zones }: Painted): void {
  const shares = zoneLookup(zones, figures);
  for (const { scheme, figure } of pairs) {
    const body = figures.get(figure);
    if (body === undefined) continue;
    const own: ReadonlySet<string> = new Set(partsOfFigure(body));
    const told = new Set<string>();
    for (const step of schemes.schemes.get(scheme)?.steps ?? []) {
      const { zone } = step;
      const covered = shares(zone, body);
      if (told.has(zone) || covered === undefined || covered.some(({ part }) => own.has(part))) continue;
      told.add(zone);
      const at = schemes.rowOf.get(step);
      if (at !== undefined)
        schemes.sheet.blame('zone-not-on-figure', at, 'zone', { found: zone, expected: figure });
    }
  }
}

/**
 * The parts of a zone on a figure: those of its model, else the painter's row for the figure, then the one for any, then the
 * ready-made. Undefined for a zone that nobody knows, which is told elsewhere.
 */
function zoneLookup(
  zones: readonly OwnZone[],
  figures: ReadonlyMap<string, Figure>,
): (zone: string, figure: Figure) => readonly ZonePart[] | undefined {
  const key = (zone: string, figure = ''): string => `${zone}\n${figure}`;
  const byKey = new Map(zones.map(({ zone, figure, parts }) => [key(zone, figure), parts]));
  const named = new Set([...zones.map(({ zone }) => zone), ...[...figures.values()].flatMap(partsOfModel)]);
  return (zone, figure) => {
    const ofModel = modelPartsInZone(zone, figure);
    if (ofModel.length > 0) return ofModel;
    const known = byKey.get(key(zone, figure.figure)) ?? byKey.get(key(zone)) ?? readyMadeZones.get(zone);
    return known ?? (named.has(zone) ? [] : undefined);
  };
}
