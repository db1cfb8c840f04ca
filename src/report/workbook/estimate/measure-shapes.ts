// Report view: surfaces of boxes and bases as formulas. In: cells with mm. Out: terms in cm2.
import type { BaseShape } from '../../../model/figure.js';
import { minus, num, over, pi, plus, root, square, type Term, times } from './write-formula.js';

interface Size {
  readonly long: Term;
  readonly wide: Term;
  readonly high: Term;
}

interface Sides extends Size {
  /** As high, where the top is flat. */
  readonly ridge: Term;
}

const cm2PerMm2 = num(0.01);

/** Sides and top of a box, without its underside: 2(L + W)H, two gables W(R - H)/2, two slopes L sqrt((W/2)^2 + (R - H)^2). */
export function boxCm2({ long, wide, high, ridge }: Sides): Term {
  const roof = minus(ridge, high);
  const slope = root(plus(square(over(wide, num(2))), square(roof)));
  const mm2 = plus(times(num(2), plus(long, wide), high), times(wide, roof), times(num(2), long, slope));
  return times(mm2, cm2PerMm2);
}

/** Top and edge of a base, before sharing. A round base is as long as wide; its long side is taken. */
export function baseCm2(shape: BaseShape['shape'], size: Size): { readonly top: Term; readonly edge: Term } {
  return {
    top: times(topMm2(shape, size), cm2PerMm2),
    edge: times(aroundMm(shape, size), size.high, cm2PerMm2),
  };
}

function topMm2(shape: BaseShape['shape'], { long, wide }: Size): Term {
  if (shape === 'rectangle') return times(long, wide);
  return over(times(pi, ...(shape === 'round' ? [square(long)] : [long, wide])), num(4));
}

/** Round a base; of an oval by Ramanujan's first formula, 1914, with half its sides as half axes. */
function aroundMm(shape: BaseShape['shape'], { long, wide }: Size): Term {
  if (shape === 'round') return times(pi, long);
  if (shape === 'rectangle') return times(num(2), plus(long, wide));
  const [a, b] = [over(long, num(2)), over(wide, num(2))];
  const inner = root(times(plus(times(num(3), a), b), plus(a, times(num(3), b))));
  return times(pi, minus(times(num(3), plus(a, b)), inner));
}
