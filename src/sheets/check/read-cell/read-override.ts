// Checks: the painter's own value of an assumption. In: `50`, or `30 / 50 / 80`. Out: an Override, or a mistake.
import type { Assumption } from '../../../model/assumption.js';
import type { Override } from '../../../model/sheets.js';
import { Mistake, type Written } from './cell-kind.js';
import { parseNumber } from './parse-number.js';

const largest = 1_000_000;

/**
 * One number, or low / likely / high in rising order. `60%` is 60 for an assumption counted in percent, else 0.6.
 * Zero is taken only for thinning and drying; shares end at the whole.
 */
export function readOverride(cell: Written, assumption: Assumption): Override | Mistake {
  const values: number[] = [];
  for (const piece of typeof cell === 'string' ? cell.split('/') : [cell]) {
    const value = readValue(piece, assumption);
    if (value instanceof Mistake) return value;
    values.push(value);
  }
  return overrideOf(values, assumption.name) ?? new Mistake('not-a-range');
}

function overrideOf(values: readonly number[], name: string): Override | Mistake | undefined {
  const [low, likely, high, more] = values;
  if (low === undefined || more !== undefined) return undefined;
  if (likely === undefined) return { name, likely: low };
  if (high === undefined) return undefined;
  return low <= likely && likely <= high ? { name, low, likely, high } : new Mistake('range-out-of-order');
}

function readValue(piece: Written, { name, unit }: Assumption): number | Mistake {
  const percent = typeof piece === 'string' && /%\s*$/.test(piece);
  const value = parseNumber(percent ? piece.replace(/\s*%\s*$/, '').trim() : trimmed(piece));
  if (value === undefined) return new Mistake('not-a-range');
  if (value instanceof Mistake) return value;
  if (value < 0) return new Mistake('negative', `"${name}"`);
  if (value === 0 && !/ (?:thin|dries)$/.test(name)) return new Mistake('zero', `"${name}"`);
  const scaled = percent && !unit.startsWith('%') ? value / 100 : value;
  return scaled > mostOf(unit) ? new Mistake('too-much', `"${name}" can be, ${mostOf(unit)}`) : scaled;
}

const trimmed = (piece: Written): Written => (typeof piece === 'string' ? piece.trim() : piece);

/** Shares of paint and of volume end at the whole. */
function mostOf(unit: string): number {
  if (unit.startsWith('%')) return 100;
  return /^of the (?:paint put out|labelled volume)$|^of stature$/.test(unit) ? 1 : largest;
}
