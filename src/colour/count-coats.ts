// Colour: coats from opacity. In: shares of a film with their opacity, a colour distance, a limit. Out: opacity, coats.

/** A paint's share of the film and what one unthinned coat of it hides, both 0 to 1. */
export interface Hiding {
  readonly share: number;
  readonly opacity: number;
  /** Parts of water to one of paint. */
  readonly thin: number;
}

/**
 * What one coat hides, 0 to 1: `1 - product of (1 - o)^(share / (1 + thin))`. Thinned paint lays less film, and a paint
 * of a mix only its share. One paint of 0.7 thinned 1 to 1: 1 - 0.3^0.5 = 0.452. Nothing in it hides nothing.
 */
export function coatOpacity(film: readonly Hiding[]): number {
  const shown = film.reduce((left, { share, opacity, thin }) => {
    const open = 1 - Math.min(1, Math.max(0, opacity));
    return left * open ** (share / (1 + thin));
  }, 1);
  return 1 - shown;
}

interface ShowThrough {
  /** Colour distance between the coat and what lies beneath it. */
  readonly dE00: number;
  /** What one coat hides, 0 to 1. */
  readonly opacity: number;
  /** Colour distance that is just visible, above 0. */
  readonly limit: number;
}

/**
 * The least number of coats, 1 or more, after which what shows through, `dE00 x (1 - opacity)^n`, is no more than
 * just visible. A weak yellow (0.7) 60 away from the brown beneath, limit 2: 3. Undefined where a coat hides nothing
 * and something shows.
 */
export function coatsToHide({ dE00, opacity, limit }: ShowThrough): number | undefined {
  if (dE00 <= limit || opacity >= 1) return 1;
  if (opacity <= 0 || limit <= 0) return undefined;
  // Without the margin, 0.02 to reach with an opacity of 0.98 would be 1.0000000000000002 coats.
  return Math.max(1, Math.ceil(Math.log(limit / dE00) / Math.log(1 - opacity) - 1e-12));
}
