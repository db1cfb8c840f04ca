// Ranges: what the shelf holds, by chance. In: stock, drawn factors, seed. Out: usable ml of a paint in each draw.
import { likely, usableShareName } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Drawing, GainOf } from '../model/draws.js';
import type { CountedStock, ShelfPot, UnmeasuredUse } from '../model/stock.js';
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
export function drawShelf({ paint, pots, unmeasured }: CountedStock, inputs: ShelfInputs): DrawnShelf {
  const drawn = (unmeasured?.pots ?? pots).map((pot, place) =>
    drawPot(pot, `reading of ${paint} ${place}`, inputs),
  );
  for (const take of unmeasured?.takes ?? []) takeFrom(drawn, take, inputs);
  const here = drawn.filter((_, place) => unmeasured?.pots[place]?.isGone !== true);
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

/** Out of the first pot as far as it goes, then the next; what none can give is left out. */
function takeFrom(
  drawn: readonly DrawnPot[],
  take: UnmeasuredUse['takes'][number],
  { putOut }: ShelfInputs,
): void {
  const sum = sumTerms();
  for (const { lines, figure } of take.work) for (const line of lines) sum.add(line, figure, 1);
  const restMl = putOut(sum.terms);
  for (let draw = 0; draw < restMl.length; draw++) {
    let rest = (restMl[draw] as number) + take.ml;
    for (const place of take.from) {
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
