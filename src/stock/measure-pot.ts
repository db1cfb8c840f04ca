// Stock: what is left in one pot. In: a pot, its paint, assumptions. Out: usable ml and the mark of the reading.
import { assume, densityName, usableShare, usableShareName } from '../assumptions/look-up.js';
import { leftMl, readingErrorMl } from '../assumptions/read-pot.js';
import { type Assumptions, type Mark, weakestMark } from '../model/assumption.js';
import type { Paint, Pot } from '../model/sheets.js';
import type { ShelfPot } from '../model/stock.js';

/**
 * Usable paint left in a pot, in ml: the labelled volume left times the usable share of its kind. A pot on its
 * way counts as full. Weighed: `(g - empty g) / density`. A 17 ml pot at 60 % holds 17 x 0.6 x 0.94 = 9.588 ml.
 */
export function measurePot(pot: Pot, paint: Paint, assumptions: Assumptions): ShelfPot {
  const share = usableShare(assumptions, pot.container);
  const { row, fromLog, sizeMl, container, ordered, priceMinor, place } = pot;
  return {
    row,
    ...(fromLog === undefined ? {} : { fromLog }),
    sizeMl,
    container,
    usableMl: leftMl(pot, paint, assumptions) * share,
    fullUsableMl: sizeMl * share,
    ordered,
    readingErrorMl: readingErrorMl(pot, assumptions),
    mark: markOf(pot, paint, assumptions),
    ...(priceMinor === undefined ? {} : { priceMinor }),
    ...(place === undefined ? {} : { place }),
  };
}

function markOf({ left, container }: Pot, paint: Paint, assumptions: Assumptions): Mark {
  const names = [usableShareName(container)];
  if (left.how === 'weighed' && paint.densityGPerMl === undefined) names.push(densityName(paint, container));
  return weakestMark(['yours', ...names.map((name) => assume(assumptions, name).mark)]);
}
