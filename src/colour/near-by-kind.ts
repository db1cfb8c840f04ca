// Colour: near colours of one kind. In: paints by name, colours. Out: a search for each kind of paint.
import type { Palette } from './cover-beneath.js';
import { type FindNear, openNear, type Point } from './find-near.js';
import { isClear } from './open-colours.js';

/** A search for each kind of paint; media and varnishes are not told apart by colour. */
export function nearByKind(names: Iterable<string>, { paints, colours }: Palette): Map<string, FindNear> {
  const byKind = new Map<string, Point[]>();
  for (const paint of names) {
    const [found, lab] = [paints.get(paint), colours.labOf(paint)];
    if (found === undefined || lab === undefined || isClear(found)) continue;
    const alike = byKind.get(found.kind) ?? [];
    alike.push({ paint, lab });
    byKind.set(found.kind, alike);
  }
  return new Map([...byKind].map(([kind, points]) => [kind, openNear(points, colours.between)]));
}
