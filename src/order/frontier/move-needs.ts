// Frontier: needs moved from paint to paint while that saves. In: servings, who serves them, what so much of a paint
// costs. Out: who serves them then.
import { at } from '../../model/at.js';
import type { Serving } from './list-servings.js';
import { askedOf } from './serving-program.js';

/** Rounds of moves at the most; few find anything after the third. */
const mostRounds = 5;

/** What so many ml of a paint cost; never less for more. */
type CostOf = (paint: string, ml: number) => number;

/** Prices that may still be asked for: each search for a better way ends there, after the same moves on any machine. */
export interface Effort {
  looks: number;
}

/** Who serves what, and what that costs, move by move. */
interface Board {
  readonly servings: readonly Serving[];
  readonly paints: string[];
  readonly askedMl: Map<string, number>;
  readonly costOf: CostOf;
  readonly effort: Effort;
  totalMinor: number;
}

/**
 * A local search of three moves: each need to where it adds least; all needs of a paint away from it; all that a paint can serve
 * to it. Once the effort is spent, needs stay where they are.
 */
export function moveNeeds(
  { servings, from }: { readonly servings: readonly Serving[]; readonly from: readonly string[] },
  costOf: CostOf,
  effort: Effort,
): string[] {
  const askedMl = askedOf(servings, from);
  const totalMinor = [...askedMl].reduce((sum, [paint, ml]) => sum + costOf(paint, ml), 0);
  const board: Board = { servings, paints: [...from], askedMl, costOf, effort, totalMinor };
  const reach = reachOf(servings);
  for (let round = 0; round < mostRounds; round++) {
    const before = board.totalMinor;
    for (const index of servings.keys()) settle(board, index);
    for (const paint of reach.keys()) {
      tryMoves(board, () => {
        for (const [index, by] of board.paints.entries()) if (by === paint) settle(board, index, paint);
      });
    }
    for (const [paint, indexes] of reach) {
      tryMoves(board, () => {
        for (const index of indexes) move(board, index, paint);
        for (const index of indexes) settle(board, index);
      });
    }
    if (board.totalMinor >= before || effort.looks <= 0) break;
  }
  return board.paints;
}

/** For each paint the servings that it may serve and that others may serve as well. */
function reachOf(servings: readonly Serving[]): Map<string, number[]> {
  const reach = new Map<string, number[]>();
  for (const [index, { by }] of servings.entries()) {
    if (by.length === 1) continue;
    for (const one of by) {
      const known = reach.get(one.by);
      if (known === undefined) reach.set(one.by, [index]);
      else known.push(index);
    }
  }
  return reach;
}

function move(board: Board, index: number, to: string): void {
  const from = at(board.paints, index);
  const ml = at(board.servings, index).need.ml;
  if (from === to) return;
  board.totalMinor += addedBy(board, from, -ml) + addedBy(board, to, ml);
  board.askedMl.set(from, askedAfter(board, from, -ml));
  board.askedMl.set(to, askedAfter(board, to, ml));
  board.paints[index] = to;
}

const askedAfter = ({ askedMl }: Board, paint: string, ml: number): number =>
  Math.max(0, (askedMl.get(paint) ?? 0) + ml);

/** What so much more of a paint adds to the total. */
const addedBy = (board: Board, paint: string, ml: number): number =>
  board.costOf(paint, askedAfter(board, paint, ml)) - board.costOf(paint, askedAfter(board, paint, 0));

/** Moves a need to the paint where it adds least, one paint perhaps left out. */
function settle(board: Board, index: number, leftOut?: string): void {
  const { by, need } = at(board.servings, index);
  const here = at(board.paints, index);
  board.effort.looks -= by.length;
  let best = here;
  let bestMinor = here === leftOut ? Number.POSITIVE_INFINITY : -addedBy(board, here, -need.ml);
  for (const { by: paint } of by) {
    if (paint === here || paint === leftOut) continue;
    const minor = addedBy(board, paint, need.ml);
    if (minor < bestMinor) [best, bestMinor] = [paint, minor];
  }
  move(board, index, best);
}

/** Takes moves back that do not save; makes none once the effort is spent. */
function tryMoves(board: Board, moves: () => void): void {
  if (board.effort.looks <= 0) return;
  const before = { paints: [...board.paints], totalMinor: board.totalMinor };
  moves();
  if (board.totalMinor < before.totalMinor) return;
  for (const [index, paint] of before.paints.entries()) move(board, index, paint);
  board.totalMinor = before.totalMinor;
}
