// Tests: a value that the program read, as readings write it. In: a value of a row. Out: its text.
import { minorDigits } from '../../../src/model/money.js';

/** `currency` is set for prices, which come in minor units. Undefined for no value. */
export function showValue(value: unknown, currency: string): string | undefined {
  if (value === undefined) return undefined;
  if (typeof value === 'number') return currency === '' ? String(value) : showPrice(value, currency);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  // Of a gift no price is said.
  if (value === 'gift') return undefined;
  if (Array.isArray(value)) return value.map((one) => showValue(one, currency)).join(', ');
  return typeof value === 'object' && value !== null ? showObject(value as Shown) : String(value);
}

function showPrice(minor: number, currency: string): string {
  const digits = minorDigits(currency);
  return `${(minor / 10 ** digits).toFixed(digits)} ${currency}`;
}

/** Readings, bases and boxes. */
interface Shown {
  readonly how?: string;
  readonly of?: readonly Shown[];
  readonly count?: number;
  readonly share?: number;
  readonly isRough?: boolean;
  readonly ml?: number;
  readonly grams?: number;
  readonly shape?: string;
  readonly acrossMm?: number;
  readonly longMm?: number;
  readonly wideMm?: number;
  readonly highMm?: number;
}

function showObject(value: Shown): string {
  const { how, of, count, share, isRough, ml, grams, shape, acrossMm, longMm, wideMm, highMm } = value;
  const rough = isRough === true ? '~' : '';
  if (how === 'by eye' && share !== undefined) return `${rough}${Number((share * 100).toFixed(2))}%`;
  if (how === 'in ml') return `${rough}${ml} ml`;
  if (of !== undefined) return of.map(showObject).join(', ');
  if (count !== undefined) return `${count} x ${ml}`;
  if (how === 'in g') return `${grams} g`;
  if (shape === 'round') return `round ${acrossMm}`;
  const sides = [longMm, wideMm, ...(highMm === undefined ? [] : [highMm])].join('x');
  if (shape === undefined) return sides;
  return longMm === wideMm && shape === 'rectangle' ? `square ${longMm}` : `${shape} ${sides}`;
}
