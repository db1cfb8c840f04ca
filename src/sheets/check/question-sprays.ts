// Checks: steps that are sprayed because nobody said how they go on. In: checked schemes, pots, offers. Out: a warning at each
// paint of a scheme that comes in no can.
import type { Offer, Pot } from '../../model/sheets.js';
import type { Container, Layer } from '../../model/words.js';
import type { CheckedSchemes } from './check-schemes.js';

/** Layers that a blank method leaves to the spray can. */
export const sprayedLayers: readonly Layer[] = ['primer', 'varnish'];

/** A bottle of primer that is taken for a can asks for several times its paint, and for the cautions of spraying. */
export function questionSprays(
  { sheet, schemes, rowOf }: CheckedSchemes,
  held: { readonly pots: readonly Pot[]; readonly offers: readonly Offer[] },
): void {
  const containers = containersOf(held);
  for (const { steps } of schemes.values()) {
    const told = new Set<string>();
    for (const step of steps) {
      const { layer, method, paints } = step;
      const paint = paints[0]?.paint ?? '';
      const comesIn = containers.get(paint);
      const isSprayed = method === undefined && sprayedLayers.includes(layer);
      const at = rowOf.get(step);
      if (!isSprayed || at === undefined || comesIn === undefined || comesIn.has('can') || told.has(paint))
        continue;
      told.add(paint);
      sheet.blame('sprayed-without-can', at, 'method', { found: layer, expected: paint });
    }
  }
}

/** What each paint comes in, owned or on offer. */
function containersOf({
  pots,
  offers,
}: Parameters<typeof questionSprays>[1]): ReadonlyMap<string, ReadonlySet<Container>> {
  const found = new Map<string, Set<Container>>();
  for (const { paint, container } of [...pots, ...offers.flatMap((offer) => offer.pots)]) {
    const known = found.get(paint) ?? new Set();
    found.set(paint, known.add(container));
  }
  return found;
}
