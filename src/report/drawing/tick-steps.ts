// Drawing: where a scale has its ticks. In: least and most. Out: round values in steps of 1, 2 or 5.

export interface TickSteps {
  /** Where the scale begins: a round value at or under the least. */
  readonly from: number;
  /** From there in equal steps, six at the most, none over `most`. */
  readonly ticks: readonly number[];
}

/** Steps are whole, 1 at the least; `most` must lie above `least`. */
export function tickSteps({ least, most }: { readonly least: number; readonly most: number }): TickSteps {
  const power = 10 ** Math.floor(Math.log10((most - least) / 5));
  const fits = (of: number): boolean => (most - least) / (of * power) <= 5;
  const step = Math.max(1, ([1, 2, 5, 10].find(fits) ?? 10) * power);
  // One step lower where the least would lie on the axis itself.
  const under = Math.floor(least / step) * step;
  const from = Math.max(0, least > 0 && under === least ? under - step : under);
  const count = Math.floor((most - from) / step + 1e-9) + 1;
  return { from, ticks: Array.from({ length: count }, (_, index) => from + index * step) };
}

/** A scale from a round value to the most, which begins at 0 unless the values fall by little. */
export function openScale({ least, most }: { readonly least: number; readonly most: number }): {
  readonly ticks: readonly number[];
  readonly shareOf: (value: number) => number;
} {
  const fallsLittle = most > least && least > most * (1 - smallFall);
  const { from, ticks } = tickSteps(fallsLittle ? { least, most } : { least: 0, most });
  return { ticks, shareOf: (value) => (value - from) / (most - from) };
}

/** Where values fall by less than this share of the most, the scale does not begin at 0. */
const smallFall = 0.4;
