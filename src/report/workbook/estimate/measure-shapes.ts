// Report view: surfaces of boxes and bases as formulas. In: cells with mm. Out: terms in cm2.
import type { BaseShape } from '../../../model/sheets.js';
import { minus, num, over, pi, plus, root, square, type Term, times } from './write-formula.js';

export interface Sides {
  readonly long: Term;
  readonly wide: Term;
  readonly high: Term;
}

const cm2PerMm2 = num(0.01);

/** Sides and top of a box, without its underside: LW + 2LH + 2WH. */
export function boxCm2({ long, wide, high }: Sides): Term {
  const mm2 = plus(times(long, wide), times(num(2), long, high), times(num(2), wide, high));
  return times(mm2, cm2PerMm2);
}

/** Top and edge of a base, before sharing. A round base is as long as wide; its long side is taken. */
export function baseCm2(shape: BaseShape['shape'], size: Sides): { readonly top: Term; readonly edge: Term } {
  return {
    top: times(topMm2(shape, size), cm2PerMm2),
    edge: times(aroundMm(shape, size), size.high, cm2PerMm2),
  };
}

function topMm2(shape: BaseShape['shape'], { long, wide }: Sides): Term {
  if (shape === 'rectangle') return times(long, wide);
  return over(times(pi, ...(shape === 'round' ? [square(long)] : [long, wide])), num(4));
}

/** Round a base; of an oval by Ramanujan's first formula, 1914, with half its sides as half axes. */
function aroundMm(shape: BaseShape['shape'], { long, wide }: Sides): Term {
  if (shape === 'round') return times(pi, long);
  if (shape === 'rectangle') return times(num(2), plus(long, wide));
  const [a, b] = [over(long, num(2)), over(wide, num(2))];
  const inner = root(times(plus(times(num(3), a), b), plus(a, times(num(3), b))));
  return times(pi, minus(times(num(3), plus(a, b)), inner));
}
