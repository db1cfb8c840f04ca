// Ranges: measurements that share an error. In: measurements, a row of numbers for each. Out: rows as of measurements whose
// errors are independent, and of deviation 1.

/** One measurement and what its error may be. */
export interface Measured {
  readonly value: number;
  readonly deviation: number;
  /** Covariance of its error with that of the one before; left out: 0. */
  readonly withBefore?: number;
}

/**
 * Each row less its share of the one before, over what its own error is then: forward through the root of the errors' covariance,
 * which has entries beside its diagonal only (Cholesky: `m = c / l`, `l' = sqrt(d^2 - m^2)`). Without shared errors each row over
 * its deviation.
 */
export function whiten(
  measured: readonly Pick<Measured, 'deviation' | 'withBefore'>[],
  rows: readonly (readonly number[])[],
): number[][] {
  let [root, before]: [number, readonly number[]] = [1, []];
  return rows.map((row, place) => {
    const { deviation = 1, withBefore = 0 } = measured[place] ?? {};
    const share = withBefore / root;
    root = Math.sqrt(deviation ** 2 - share ** 2);
    const whitened = row.map((value, at) => (value - share * (before[at] ?? 0)) / root);
    before = whitened;
    return whitened;
  });
}
