// Checks: numbers with a unit and bounds. In: a cell. Out: a number inside its bounds, or a mistake.
import type { ProblemCode } from '../../../problems/catalogue.js';
import { figureWords } from '../../columns/choice-words.js';
import { headerKey } from '../../match-header.js';
import { partNumber, type Unit } from '../../units.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { parseMeasure, parseNumber } from './parse-number.js';

/** A bound, and in words what stands there: `the smallest pot, 0.5 ml`. */
export type Bound = readonly [value: number, words: string];

interface NumberKind {
  readonly noun: string;
  /** What a cell that holds no number is called. */
  readonly code: ProblemCode;
  readonly example: string;
  /** What the number is in; a cell may say so behind it. */
  readonly unit?: Unit;
  /** What is counted: the cell may say so behind its number. */
  readonly things?: ReadonlySet<string>;
  readonly whole?: boolean;
  /** 0 is refused unless it is allowed here. */
  readonly zero?: boolean;
  /** What a 0 that is refused is called, where there is more to say of it. */
  readonly ifZero?: ProblemCode;
  readonly negative?: boolean;
  readonly least?: Bound;
  readonly most?: Bound;
}

/** A cell kind for numbers; values outside the bounds are questioned, 0 and below named as such. */
export function numberKind(of: NumberKind): CellKind<number> {
  return {
    noun: of.noun,
    read: (cell) => readNumber(cell, of),
    ...(of.unit === undefined ? {} : { takesUnit: true }),
  };
}

function readNumber(cell: Written, of: NumberKind): number | Mistake {
  const value = of.unit === undefined ? parseNumber(withoutThings(cell, of)) : parseMeasure(cell, of.unit);
  if (value === undefined) return new Mistake(of.code, of.example);
  return value instanceof Mistake ? value : checkBounds(value, of);
}

/** `20 figures` is 20. */
function withoutThings(cell: Written, { things }: NumberKind): Written {
  const parted = things === undefined || typeof cell !== 'string' ? undefined : partNumber(cell);
  return parted !== undefined && things?.has(headerKey(parted.suffix)) === true ? parted.number.trim() : cell;
}

/** The value itself, or the mistake in it. */
export function checkBounds(value: number, of: Omit<NumberKind, 'code'>): number | Mistake {
  if (value < 0 && of.negative !== true) return new Mistake('negative', of.noun);
  if (value === 0 && of.zero !== true) return new Mistake(of.ifZero ?? 'zero', of.noun);
  if (of.whole === true && !Number.isInteger(value)) return new Mistake('not-whole', of.example);
  if (of.most !== undefined && value > of.most[0]) return new Mistake('too-much', of.most[1]);
  if (of.least !== undefined && value < of.least[0] && value !== 0)
    return new Mistake('too-little', of.least[1]);
  return value;
}

/** As keys. */
export const figureThings: ReadonlySet<string> = new Set(figureWords.split(', ').map(headerKey));

const volume = { noun: 'a volume', code: 'not-a-volume', example: '12.5', unit: 'ml' } as const;
const weight = { noun: 'a weight', code: 'not-a-weight', example: '31.2', unit: 'g' } as const;
const length = { noun: 'a length', code: 'not-a-length', unit: 'mm' } as const;

/** Of one container, in ml: from half a millilitre to two litres. */
export const potVolume = numberKind({
  ...volume,
  least: [0.5, 'the smallest pot, 0.5 ml'],
  most: [2000, 'the largest can, 2000 ml'],
});
/** Put out, in ml. */
export const usedVolume = numberKind({ ...volume, most: [2000, 'the largest can, 2000 ml'] });
/** Kept on the shelf, in ml; 0 keeps none. */
export const keptVolume = numberKind({
  ...volume,
  zero: true,
  most: [20_000, 'ten of the largest cans, 20000 ml'],
});
/** Grams on the scale. */
export const scaleWeight = numberKind({ ...weight, most: [5000, 'the heaviest can, 5000 g'] });
/** Grams of an empty pot; 0 where the scale was set to zero with it. */
export const emptyWeight = numberKind({ ...weight, zero: true, most: [5000, 'the heaviest can, 5000 g'] });
/** Grams a millilitre that no paint exceeds. */
export const heaviestPaint = 3;
/** Grams a millilitre. */
export const density = numberKind({
  noun: 'a density',
  code: 'not-a-number',
  example: '1.2',
  unit: 'g/ml',
  least: [0.5, 'the lightest paint, 0.5 g/ml'],
  most: [heaviestPaint, `the heaviest paint, ${heaviestPaint} g/ml`],
});
/** Parts of water to one of paint. */
export const thinning = numberKind({
  noun: 'a thinning',
  code: 'not-a-number',
  example: '0.5',
  zero: true,
  most: [50, 'the thinnest paint, 50 parts of water'],
});
/** Soles to eyes in mm: from a mouse to a giant. */
export const eyeHeight = numberKind({
  ...length,
  example: '28',
  least: [3, 'the smallest figure, eyes at 3 mm'],
  most: [300, 'the tallest figure, eyes at 300 mm'],
});
/** The one length of a creature or a thing in mm. */
export const ownLength = numberKind({
  ...length,
  example: '60',
  least: [1, 'the smallest length, 1 mm'],
  most: [3000, 'the largest length, 3000 mm'],
});
/** Of a printed model in mm. */
export const modelHeight = numberKind({
  ...length,
  example: '34',
  least: [1, 'the smallest print, 1 mm'],
  most: [2000, 'the largest print, 2000 mm'],
});
/** In mm; 0 is a sheet of paper. */
export const baseHeight = numberKind({
  ...length,
  example: '3',
  zero: true,
  most: [100, 'the highest base, 100 mm'],
});
/** Of a whole figure in cm2. */
export const surface = numberKind({
  noun: 'an area',
  code: 'not-an-area',
  example: '9.5',
  unit: 'cm2',
  least: [0.01, 'the smallest figure, 0.01 cm2'],
  most: [50_000, 'the largest figure, 50000 cm2'],
});
/** Any number ranks a unit. */
export const rank = numberKind({
  noun: 'a number',
  code: 'not-a-number',
  example: '1',
  zero: true,
  negative: true,
});
/** Figures that one item serves. */
export const servedFigures = numberKind({
  things: figureThings,
  noun: 'a number of figures',
  code: 'not-a-number',
  example: '200',
  most: [1e6, 'the largest army, 1000000 figures'],
});
