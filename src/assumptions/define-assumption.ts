// Assumptions: short ways to write a registry entry. In: name, values, unit, mark, source. Out: an Assumption.
import type { Assumption, Mark } from '../model/assumption.js';

/** Low, likely, high; or one number for a value held as exact. */
type Values = number | readonly [low: number, likely: number, high: number];

interface Origin {
  readonly unit?: string;
  readonly mark: Mark;
  readonly source: string;
}

/** One registry entry. */
export function define(name: string, values: Values, { unit = '', mark, source }: Origin): Assumption {
  const [low, likely, high] = typeof values === 'number' ? [values, values, values] : values;
  return { name, low, likely, high, unit, mark, source };
}
