// Start: other sets in the place of those of an order. In: needs, wares, an order, how much work. Out: the cheapest order met on the way.
import { at } from '../../model/at.js';
import type { OrderNeed } from '../../model/order.js';
import type { Market } from '../open-market.js';
import type { Shelves } from '../pare-order.js';
import { costOfCounts } from '../write-order.js';
import { SetsChosen } from './sets-chosen.js';

export interface Swapping {
  /** An order, which stands where none is cheaper. */
  readonly known: readonly number[];
  /** What may be looked at, in paints of sets. */
  readonly mostWork: number;
}

export interface Swapped {
  readonly counts: readonly number[];
  /** What was looked at. */
  readonly work: number;
}

/**
 * A pass goes once through all sets. Of 600 paints and 280 sets so many led to orders 0.2 % above the best, three times as many to no
 * better, and a third to 0.6 %.
 */
const mostPasses = 360;

/** Fewer do not settle. */
const leastPasses = 60;

/** How much dearer a step may make the order at first, over what a need costs in the order known. */
const firstThreshold = 0.7;

/**
 * Threshold accepting: each set in turn is bought once more or once less, alone or in exchange for one that shares a paint with
 * it, wherever that makes the order no dearer than a threshold allows, which falls to nothing. What the sets leave is covered by the
 * cheapest pots of each paint. Nothing is drawn: the passes go through sets and neighbours in a fixed order.
 *
 * Source: Dueck & Scheuer 1990 (Threshold accepting: a general purpose optimization algorithm appearing superior to
 * simulated annealing), from memory.
 */
export function swapSets(
  needs: readonly OrderNeed[],
  shelves: Shelves,
  market: Market,
  { known, mostWork }: Swapping,
): Swapped {
  const knownMinor = costOfCounts(shelves.wares, known, market);
  const chosen = new SetsChosen(needs, shelves, market, knownMinor);
  for (const set of chosen.sets) chosen.change(set, at(known, set) - chosen.countOf(set));
  const search = { chosen, shelves, neighbours: chosen.neighbours(), best: known, bestMinor: knownMinor };
  const passes = passesWithin(mostWork - chosen.touched, search);
  const threshold = (firstThreshold * knownMinor) / needs.length;
  for (let pass = 0; pass < passes && chosen.touched < mostWork; pass++)
    passOnce(search, pass, threshold * (1 - pass / passes));
  return { counts: search.best, work: chosen.touched };
}

interface Search {
  readonly chosen: SetsChosen;
  readonly shelves: Shelves;
  /** Of each set, in their order. */
  readonly neighbours: readonly (readonly number[])[];
  best: readonly number[];
  bestMinor: number;
}

/** As many as there is work for: of two passes one changes two sets at a time, and most changes are undone. None where that is too few. */
function passesWithin(work: number, { chosen, shelves: { wares } }: Search): number {
  const paints = chosen.sets.reduce((sum, set) => sum + at(wares, set).mlOf.size, 0);
  const passes = Math.min(mostPasses, Math.floor(work / (3 * paints)));
  return passes < leastPasses ? 0 : passes;
}

/** Of four passes two take a set away wherever there is one, and two add one; every second exchanges it for a neighbour. */
function passOnce(search: Search, pass: number, threshold: number): void {
  const { chosen, neighbours } = search;
  const [isLess, isExchange, turn] = [pass % 4 < 2, pass % 2 === 1, Math.floor(pass / 2)];
  for (const [place, set] of chosen.sets.entries()) {
    const by = canChange(search, set, -1) && (isLess || !canChange(search, set, 1)) ? -1 : 1;
    const near = at(neighbours, place);
    const other = isExchange && near.length > 0 ? at(near, turn % near.length) : undefined;
    const isExchanged = other !== undefined && canChange(search, other, -by);
    const steps = [[set, by] as const, ...(isExchanged ? [[other, -by] as const] : [])];
    if (canChange(search, set, by)) step(search, steps, threshold);
  }
}

function canChange({ chosen, shelves: { wares, held } }: Search, set: number, by: number): boolean {
  const count = chosen.countOf(set) + by;
  return count >= at(held, set) && count <= at(wares, set).most;
}

/** Takes some changes together, and back again where they make the order too dear. */
function step(
  search: Search,
  changes: readonly (readonly [set: number, by: number])[],
  threshold: number,
): void {
  const { chosen } = search;
  const before = chosen.totalMinor;
  for (const [set, by] of changes) chosen.change(set, by);
  if (chosen.totalMinor > before + threshold) {
    for (const [set, by] of changes) chosen.change(set, -by);
  } else if (chosen.totalMinor < search.bestMinor && chosen.isSound) {
    search.bestMinor = chosen.totalMinor;
    search.best = chosen.counts();
  }
}
