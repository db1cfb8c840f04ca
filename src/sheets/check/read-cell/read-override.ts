// Checks: the painter's own value of an assumption. In: `50`, or `30 / 50 / 80`. Out: an Override, or a mistake.
import type { Assumption } from '../../../model/assumption.js';
import type { Override } from '../../../model/sheets.js';
import { partNumber } from '../../units.js';
import { Mistake, type Written } from './cell-kind.js';
import { parseNumber } from './parse-number.js';

const largest = 1_000_000;
const longest = 100;
/** Between low, likely and high; not within `g/ml`. */
const parting = /\/(?!ml)/i;

/**
 * One number, or low / likely / high in rising order, with or without the assumption's own unit. `60%` is 60 for one counted
 * in percent, else 0.6.
 * Zero is taken only for thinning and drying; shares end at the whole.
 */
export function readOverride(cell: Written, assumption: Assumption): Override | Mistake {
  if (typeof cell === 'string' && cell.length > longest) return new Mistake('not-a-range');
  const values: number[] = [];
  for (const piece of typeof cell === 'string' ? cell.split(parting) : [cell]) {
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
  const text = typeof piece === 'string' ? piece.trim() : piece;
  const { number = text, suffix = '' } = (typeof text === 'string' && partNumber(text)) || {};
  const value = isUnit(suffix, unit) ? parseNumber(number) : undefined;
  if (value === undefined) return new Mistake('not-a-range');
  if (value instanceof Mistake) return value;
  if (value < 0) return new Mistake('negative', `"${name}"`);
  if (value === 0 && !/ (?:thin|dries)$/.test(name)) return new Mistake('zero', `"${name}"`);
  const scaled = suffix === '%' && !unit.startsWith('%') ? value / 100 : value;
  return scaled > mostOf(unit) ? new Mistake('too-much', `"${name}" can be, ${mostOf(unit)}`) : scaled;
}

/** `ml`, and all of it, for what is counted in `ml a sitting`; the micro sign has two letters (Unicode U+00B5, U+03BC). */
function isUnit(suffix: string, unit: string): boolean {
  const [written, wanted] = [suffix, unit].map((one) => one.normalize('NFKC').toLowerCase());
  return suffix === '' || suffix === '%' || written === wanted || written === wanted?.split(' ', 1)[0];
}

/** Shares of paint and of volume end at the whole. */
function mostOf(unit: string): number {
  if (unit.startsWith('%')) return 100;
  return /^of the (?:paint put out|labelled volume)$|^of stature$/.test(unit) ? 1 : largest;
}
