// Checks: what is left in a pot. In: `60%`, `7.5 ml`, `full`, `empty`, `31.2 g`. Out: how it was read, or a mistake.
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { parseNumber } from './parse-number.js';

/** A reading before the empty pot's weight is known. */
export type WrittenReading =
  | { readonly how: 'by eye'; readonly share: number }
  | { readonly how: 'in ml'; readonly ml: number }
  | { readonly how: 'in g'; readonly grams: number };

const withUnit = /^(.*?)\s*(%|ml|g)$/i;

/** A number without a unit could be ml, percent or grams and is questioned. */
function readLeft(cell: Written): WrittenReading | Mistake {
  const text = typeof cell === 'string' ? cell.trim().toLowerCase() : String(cell);
  if (text === 'full') return { how: 'by eye', share: 1 };
  if (text === 'empty') return { how: 'by eye', share: 0 };
  const [, amount = text, unit = ''] = withUnit.exec(text) ?? [];
  const value = parseNumber(amount);
  if (value === undefined) return new Mistake('not-a-reading');
  if (value instanceof Mistake) return new Mistake(value.code, withUnits(value.expected, unit));
  if (value < 0) return new Mistake('negative', 'what is left');
  return unit === '' ? withoutUnit(cell) : readingOf(value, unit);
}

const withUnits = (readings: string, unit: string): string =>
  readings
    .split(' or ')
    .map((one) => `${one} ${unit === '' ? 'ml' : unit}`)
    .join(' or ');

function withoutUnit(cell: Written): Mistake {
  return new Mistake('left-without-unit', `${cell} ml, ${cell}% or ${cell} g`);
}

function readingOf(value: number, unit: string): WrittenReading | Mistake {
  if (unit === 'ml') return { how: 'in ml', ml: value };
  if (unit === 'g') return { how: 'in g', grams: value };
  return value > 100 ? new Mistake('over-whole') : { how: 'by eye', share: value / 100 };
}

export const leftKind: CellKind<WrittenReading> = { noun: 'what is left', read: readLeft };
