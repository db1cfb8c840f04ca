// Ranges: what the shelf holds, by chance. In: stock, drawn factors, seed. Out: usable ml of a paint in each draw.
import { likely, usableShareName } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Drawing, GainOf } from '../model/draws.js';
import type { CountedStock, ShelfPot } from '../model/stock.js';
import { drawNormals } from './draw-factors.js';
import type { ColumnOf } from './put-out.js';

/** What the shelf is drawn from. */
export interface ShelfInputs {
  readonly assumptions: Assumptions;
  readonly columnOf: ColumnOf;
  readonly drawing: Drawing;
}

/** One paint's shelf: all of it, and each pot whose reading is in doubt. */
export interface DrawnShelf {
  readonly haveMl: Float64Array;
  readonly readings: readonly { readonly pot: ShelfPot; readonly leftMl: Float64Array }[];
}

/**
 * Each pot's reading with a normal error of its own, never under empty or over full, times the drawn usable share of its
 * kind. A sealed pot holds just what its label says.
 */
export function drawShelf({ paint, pots }: CountedStock, inputs: ShelfInputs): DrawnShelf {
  const { assumptions, columnOf, drawing } = inputs;
  const haveMl = new Float64Array(drawing.draws);
  const readings: { pot: ShelfPot; leftMl: Float64Array }[] = [];
  pots.forEach((pot, place) => {
    const share = likely(assumptions, usableShareName(pot.container));
    const shares = columnOf(usableShareName(pot.container));
    const middleMl = pot.usableMl / share;
    const leftMl = readPot(pot, middleMl, () => drawNormals(`reading of ${paint} ${place}`, drawing));
    if (leftMl !== undefined) readings.push({ pot, leftMl });
    for (let draw = 0; draw < haveMl.length; draw++) {
      const ml = leftMl === undefined ? middleMl : (leftMl[draw] as number);
      haveMl[draw] =
        (haveMl[draw] as number) + ml * (shares === undefined ? share : (shares[draw] as number));
    }
  });
  return { haveMl, readings };
}

/** Labelled ml left in each draw; undefined where there is no doubt of it. */
function readPot(
  { sizeMl, readingErrorMl }: ShelfPot,
  middleMl: number,
  deviates: () => Float64Array,
): Float64Array | undefined {
  if (readingErrorMl === 0) return undefined;
  const column = deviates();
  for (let draw = 0; draw < column.length; draw++) {
    const leftMl = middleMl + (column[draw] as number) * readingErrorMl;
    column[draw] = Math.min(sizeMl, Math.max(0, leftMl));
  }
  return column;
}

/** What a ml of a bought pot gives in each draw, over the likely; undefined where that is held as exact. */
export function openGains({ assumptions, columnOf }: ShelfInputs): GainOf {
  const known = new Map<string, Float64Array | undefined>();
  return (container) => {
    const name = usableShareName(container);
    if (!known.has(name))
      known.set(
        name,
        columnOf(name)?.map((share) => share / likely(assumptions, name)),
      );
    return known.get(name);
  };
}
