// Policy: when a pot is worth buying now. In: its price, what another order takes. Out: how likely it must be that it is needed.

/** What is at stake, in minor units. */
export interface Stakes {
  readonly priceMinor: number;
  /** What the shop asks for one delivery. */
  readonly postageMinor: number;
  /** What another order is worth beyond its postage; undefined: one postage more. */
  readonly againMinor: number | undefined;
}

/** What is bought beyond this quantile is hardly ever needed, whatever it costs. */
const mostQuantile = 0.99;

/**
 * The share of cases to provide for where running short costs `short` and a spare one costs `over`: `short / (short + over)`.
 * Where neither costs anything, a half. Source: the newsvendor's rule, Arrow, Harris & Marschak 1951 (Optimal inventory policy).
 */
export function shareToCover(short: number, over: number): number {
  return short + over === 0 ? 0.5 : short / (short + over);
}

/**
 * The chance of being needed from which on a pot is bought now, 0.01 to 1. A pot that is not needed costs its price; one that
 * is missing costs another order. At 2.95 with postage of 3.95, and as much again: 2.95 / 10.85 = 0.272.
 */
export function thresholdOf({ priceMinor, postageMinor, againMinor = postageMinor }: Stakes): number {
  return 1 - Math.min(mostQuantile, shareToCover(postageMinor + againMinor, priceMinor));
}
