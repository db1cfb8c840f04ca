// Report view: how far plan.json rounds. In: a number. Out: the same with at most six digits after the point.

/** Digits after the point of costs of use and of what is given per figure or per ml. */
export const useDigits = 6;

/** So many digits after the point. */
export const roundTo = (digits: number, value: number): number =>
  Math.round(value * 10 ** digits) / 10 ** digits;

/** Six digits after the point, which is far below what any area or volume means. */
export const roundNumber = (value: number): number => Math.round(value * 1e6) / 1e6;
