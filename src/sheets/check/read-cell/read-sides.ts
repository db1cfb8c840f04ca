// Checks: bases and boxes. In: `round 25`, `25x50`, `90x30x20`. Out: shapes in mm, or a mistake.
import type { BaseShape, BoxSides } from '../../../model/figure.js';
import { baseWords } from '../../columns/choice-words.js';
import { type CellKind, Mistake, type Written } from './cell-kind.js';
import { parseNumber } from './parse-number.js';
import { wordFinder } from './read-choice.js';
import { type Bound, checkBounds } from './read-number.js';

const findShape = wordFinder(['round', 'square', 'oval', 'rectangle', 'none'], baseWords);
/** The word for the shape stands in front or behind. */
const shapes = /^(\p{L}{2,})?\s*([\d.,\sxX×*]+?)\s*(?:mm|MM|Mm)?\s*(\p{L}{2,})?$/u;
const longest = 60;

interface SideLimits {
  readonly noun: string;
  readonly example: string;
  readonly least: Bound;
  readonly most: Bound;
}

const ofBase: SideLimits = {
  noun: 'a side of a base',
  example: '25',
  least: [2, 'the smallest base, 2 mm'],
  most: [1000, 'the largest base, 1000 mm'],
};
const ofBox: SideLimits = {
  noun: 'a side of a box',
  example: '90',
  least: [0.5, 'the thinnest box, 0.5 mm'],
  most: [3000, 'the largest box, 3000 mm'],
};

/** The sides in a text such as `25 x 50`; undefined where one of them is no number. */
function readSides(text: string, limits: SideLimits): readonly number[] | Mistake | undefined {
  const sides: number[] = [];
  for (const piece of text.split(/[x×*]/i)) {
    const side = parseNumber(piece.trim());
    if (side === undefined || side instanceof Mistake) return side;
    const checked = checkBounds(side, limits);
    if (checked instanceof Mistake) return checked;
    sides.push(checked);
  }
  return sides;
}

/** `round 25`, `25mm round`, `square 20`, `25x50` or `oval 60x35`; the longer side comes first; `none` is no base. */
function readBase(cell: Written): BaseShape | 'none' | Mistake {
  const text = typeof cell === 'string' && cell.length <= longest ? cell.trim() : '';
  if (findShape(text) === 'none') return 'none';
  const [, before, numbers, after] = shapes.exec(text) ?? [];
  const word = before ?? after ?? '';
  const shape = word === '' ? '' : findShape(word);
  if (shape === undefined || (before !== undefined && after !== undefined)) return new Mistake('not-a-base');
  const sides = numbers === undefined ? undefined : readSides(numbers, ofBase);
  if (sides instanceof Mistake) return sides;
  return shapeOf(shape, sides ?? []) ?? new Mistake('not-a-base');
}

function shapeOf(shape: string, sides: readonly number[]): BaseShape | undefined {
  const [one, other, third] = sides;
  if (one === undefined || third !== undefined) return undefined;
  if (other === undefined) {
    if (shape === 'round') return { shape: 'round', acrossMm: one };
    return shape === 'square' ? { shape: 'rectangle', longMm: one, wideMm: one } : undefined;
  }
  const sized = { longMm: Math.max(one, other), wideMm: Math.min(one, other) };
  if (shape === 'oval') return { shape: 'oval', ...sized };
  return shape === '' || shape === 'rectangle' ? { shape: 'rectangle', ...sized } : undefined;
}

/** `90x30x20`: length, width, height; `80x60x40x65`: with a pitched roof, up to the eaves and up to the ridge. */
function readBox(cell: Written): BoxSides | Mistake {
  const text = typeof cell === 'string' && cell.length <= longest ? cell.trim().replace(/\s*mm$/i, '') : '';
  const sides = readSides(text, ofBox);
  if (sides instanceof Mistake) return sides;
  const [longMm, wideMm, highMm, ridgeMm, more] = sides ?? [];
  if (longMm === undefined || wideMm === undefined || highMm === undefined || more !== undefined) {
    return new Mistake('not-a-box');
  }
  if (ridgeMm === undefined) return { longMm, wideMm, highMm };
  return ridgeMm < highMm ? new Mistake('ridge-under-eaves') : { longMm, wideMm, highMm, ridgeMm };
}

export const baseKind: CellKind<BaseShape | 'none'> = { noun: 'a base', read: readBase };
export const boxKind: CellKind<BoxSides> = { noun: 'a box', read: readBox };
