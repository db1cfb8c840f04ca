// Assumptions: reading the registry by name. In: assumptions and a name. Out: values, and how far they may be off.
import { type Assumption, type Assumptions, familyName } from '../model/assumption.js';
import type { Paint } from '../model/sheets.js';
import type { Container } from '../model/words.js';

/** The 90 % quantile of the standard normal: P10 and P90 lie this many deviations off the median. */
export const z90 = 1.2815516;

/**
 * One assumption; for one figure that of any, as long as nothing was learned of it alone. Throws on a name that the registry
 * lacks, which only a mistake in the code can cause.
 */
export function assume(assumptions: Assumptions, name: string): Assumption {
  const own = assumptions.get(name);
  if (own !== undefined) return own;
  const ofAny = assumptions.get(familyName(name));
  if (ofAny === undefined) throw new Error(`no assumption is called "${name}"`);
  return { ...ofAny, name };
}

/** Its likely value. */
export function likely(assumptions: Assumptions, name: string): number {
  return assume(assumptions, name).likely;
}

/**
 * How far a factor may be off: the mean of the two log deviations of its two-piece lognormal,
 * `ln(likely/low)/z90` below and `ln(high/likely)/z90` above. 0 for a value held as exact.
 */
export function logSpread({ low, high }: Assumption): number {
  if (low === high || low <= 0) return 0;
  return Math.log(high / low) / (2 * z90);
}

/** Usable share, 0 to 1, of the labelled volume of a container. */
export function usableShare(assumptions: Assumptions, container: Container): number {
  return likely(assumptions, usableShareName(container));
}

/** Registry name of the usable share of a container. */
export function usableShareName(container: Container): string {
  return container === 'can' ? 'usable share of a can' : 'usable share of a pot';
}

/** Registry name of the density that a weighing of this paint rests on, where the painter gives none. */
export function densityName(paint: Paint, container: Container): string {
  if (container === 'can') return 'density in a can';
  return paint.kind === 'wash' ? 'density of a wash' : 'density';
}
