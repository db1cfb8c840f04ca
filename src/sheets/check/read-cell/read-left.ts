// Checks: what is left in one pot. In: `60%`, `7.5 ml`, `full`, `empty`, `31.2 g`. Out: how it was read, or a mistake.
import { partNumber, timesUnit } from '../../units.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { readWords } from './left-words.js';
import { parseMeasure, parseNumber, withUnits } from './parse-number.js';

/** A reading before the empty pot's weight is known. Of a rough one the error is larger. */
export type OneReading =
  | { readonly how: 'by eye'; readonly share: number; readonly isRough?: true }
  | { readonly how: 'in ml'; readonly ml: number; readonly isRough?: true }
  | { readonly how: 'in g'; readonly grams: number };

const inUnits = ['%', 'ml', 'g'] as const;

/** A number without a unit could be ml, percent or grams and is questioned. */
export function readOne(cell: Written): OneReading | Mistake {
  const { share, bare, isRough } = readWords(String(cell));
  const reading = share === undefined ? readAmount(bare ?? cell) : ({ how: 'by eye', share } as const);
  if (!isRough || reading instanceof Mistake) return reading;
  return reading.how === 'in g' ? new Mistake('not-a-reading') : { ...reading, isRough };
}

/** Of one pot. */
export const leftKind: CellKind<OneReading> = { noun: 'what is left', read: readOne, takesUnit: true };

function readAmount(cell: Written): OneReading | Mistake {
  const text = typeof cell === 'string' ? cell.trim().toLowerCase() : String(cell);
  const { suffix = '' } = partNumber(text) ?? {};
  const unit = inUnits.find((one) => timesUnit(one, suffix) !== undefined);
  const value = unit === undefined ? parseNumber(cell) : parseMeasure(text, unit);
  if (value === undefined) return new Mistake('not-a-reading');
  if (value instanceof Mistake) return unit === undefined ? withUnits(value, 'ml') : value;
  if (value < 0) return new Mistake('negative', 'what is left');
  return unit === undefined ? withoutUnit(cell, value) : readingOf(value, unit);
}

/** What is less than one is hardly in percent. */
function withoutUnit(cell: Written, value: number): Mistake {
  const percent = value > 0 && value < 1 ? `${Number((value * 100).toPrecision(4))}%` : `${cell}%`;
  return new Mistake('left-without-unit', `${cell} ml, ${percent} or ${cell} g`);
}

function readingOf(value: number, unit: (typeof inUnits)[number]): OneReading | Mistake {
  if (unit === 'ml') return { how: 'in ml', ml: value };
  if (unit === 'g') return { how: 'in g', grams: value };
  return value > 100 ? new Mistake('over-whole') : { how: 'by eye', share: value / 100 };
}
