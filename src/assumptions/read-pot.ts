// Assumptions: what a pot was read to hold. In: the pot, its paint. Out: ml of the labelled volume, and how far off they may be.
import type { Assumptions } from '../model/assumption.js';
import type { Paint, Pot } from '../model/sheets.js';
import { densityName, likely } from './look-up.js';

/** Labelled volume left, in ml. */
export function leftMl(
  { left, ordered, sizeMl, container }: Pot,
  paint: Paint,
  assumptions: Assumptions,
): number {
  if (ordered) return sizeMl;
  if (left.how === 'by eye') return sizeMl * left.share;
  if (left.how === 'in ml') return left.ml;
  const density = paint.densityGPerMl ?? likely(assumptions, densityName(paint, container));
  return Math.min(sizeMl, (left.grams - left.emptyGrams) / density);
}

/** How far a reading may be off, one standard deviation in ml; nothing for a pot that nobody has opened. */
export function readingErrorMl({ left, ordered, sizeMl, openedOn }: Pot, assumptions: Assumptions): number {
  if (ordered) return 0;
  if (left.how === 'weighed') return likely(assumptions, 'error of a weighed pot');
  const isSealed = openedOn === undefined && (left.how === 'by eye' ? left.share === 1 : left.ml === sizeMl);
  if (isSealed) return 0;
  const byEye = left.how === 'by eye' ? 'error by eye' : 'error in ml';
  const percent = likely(assumptions, left.isRough === true ? 'error of a rough reading' : byEye);
  return left.how === 'by eye' && left.share === 0 && left.isRough !== true ? 0 : (percent / 100) * sizeMl;
}
