// Report view: where a scale has its ticks. In: least and most. Out: round values in steps of 1, 2 or 5.

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
