// Ranges: what the shelf holds, by chance. In: stock, drawn factors, seed. Out: usable ml of a paint in each draw.
import { likely, usableShareName } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Drawing, GainOf } from '../model/draws.js';
import type { CountedStock, ShelfPot, Take } from '../model/stock.js';
import { drawNormals } from './draw-factors.js';
import { sumTerms, type Terms } from './list-terms.js';
import type { ColumnOf } from './put-out.js';

/** What the shelf is drawn from. */
export interface ShelfInputs {
  readonly assumptions: Assumptions;
  readonly columnOf: ColumnOf;
  readonly drawing: Drawing;
  readonly putOut: (terms: Terms) => Float64Array;
}

/** One paint's shelf: all of it, and each pot whose reading is in doubt. */
export interface DrawnShelf {
  readonly haveMl: Float64Array;
  readonly readings: readonly { readonly pot: ShelfPot; readonly leftMl: Float64Array }[];
}

/**
 * Each pot's reading with a normal error of its own, never under empty or over full, times the drawn usable share of its
 * kind, less what the draw's own work has taken since. A sealed pot holds just what its label says.
 */
export function drawShelf(stock: CountedStock, inputs: ShelfInputs): DrawnShelf {
  const { paint, pots, unmeasured, weighed } = stock;
  const used = unmeasured ?? weighed;
  const drawn = (used?.pots ?? pots).map((pot, place) =>
    drawPot(pot, `reading of ${paint} ${place}`, inputs),
  );
  for (const [place, take] of (used?.takes ?? []).entries())
    takeFrom(drawn, take, drawTaken(take, `use of ${paint} ${place}`, inputs));
  const here = drawn.filter((_, place) => used?.pots[place]?.isGone !== true);
  const haveMl = new Float64Array(inputs.drawing.draws);
  for (const { usableMl } of here)
    for (let draw = 0; draw < haveMl.length; draw++)
      haveMl[draw] = (haveMl[draw] as number) + (usableMl[draw] as number);
  const readings = here.flatMap(({ pot, leftMl }) => (leftMl === undefined ? [] : [{ pot, leftMl }]));
  const [first] = here;
  // A count would tell all of it at once: the reading, and what the work has taken since.
  const isOpen = unmeasured !== undefined && first !== undefined;
  return { haveMl, readings: isOpen ? [{ pot: first.pot, leftMl: haveMl }] : readings };
}

interface DrawnPot {
  readonly pot: ShelfPot;
  /** Of the label; undefined where there is no doubt of it. */
  readonly leftMl: Float64Array | undefined;
  readonly usableMl: Float64Array;
}

function drawPot(pot: ShelfPot, stream: string, { assumptions, columnOf, drawing }: ShelfInputs): DrawnPot {
  const share = likely(assumptions, usableShareName(pot.container));
  const shares = columnOf(usableShareName(pot.container));
  const middleMl = pot.usableMl / share;
  const leftMl = readPot(pot, middleMl, () => drawNormals(stream, drawing));
  const usableMl = new Float64Array(drawing.draws);
  for (let draw = 0; draw < usableMl.length; draw++) {
    const ml = leftMl === undefined ? middleMl : (leftMl[draw] as number);
    usableMl[draw] = ml * (shares === undefined ? share : (shares[draw] as number));
  }
  return { pot, leftMl, usableMl };
}

/** What went in each draw: by the work, by the draw's own density where it was weighed, and with the error of what was measured. */
function drawTaken(
  take: Take,
  stream: string,
  { assumptions, putOut, columnOf, drawing }: ShelfInputs,
): Float64Array {
  const sum = sumTerms();
  for (const { lines, figure } of take.work) for (const line of lines) sum.add(line, figure, 1);
  const takenMl = putOut(sum.terms);
  const errors = take.errorMl === 0 ? undefined : drawNormals(stream, drawing);
  const densities = columnOf(take.density);
  const likelyDensity = densities === undefined ? 1 : likely(assumptions, take.density);
  for (let draw = 0; draw < takenMl.length; draw++) {
    const weighedMl = (take.weighedMl * likelyDensity) / (densities?.[draw] ?? 1);
    const errorMl = take.errorMl * (errors?.[draw] ?? 0);
    takenMl[draw] = (takenMl[draw] as number) + Math.max(0, take.ml + weighedMl + errorMl);
  }
  return takenMl;
}

/** Out of the first pot as far as it goes, then the next; what none can give is left out. */
function takeFrom(drawn: readonly DrawnPot[], { from }: Take, takenMl: Float64Array): void {
  for (let draw = 0; draw < takenMl.length; draw++) {
    let rest = takenMl[draw] as number;
    for (const place of from) {
      const { usableMl } = drawn[place] as DrawnPot;
      const taken = Math.min(usableMl[draw] as number, rest);
      usableMl[draw] = (usableMl[draw] as number) - taken;
      rest -= taken;
    }
  }
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
export function openGains({ assumptions, columnOf }: Omit<ShelfInputs, 'putOut'>): GainOf {
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
