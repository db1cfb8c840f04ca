// Promise: draws that ask for the same. In: what each asks for, steps. Out: groups of them.
import { at } from '../../model/at.js';
import { sameMl } from '../../model/volume.js';
import type { Asked } from './list-asked.js';
import type { Steps } from './list-steps.js';

/** Draws that take the same step of each paint. */
export interface DrawGroup {
  readonly draws: number;
  /** The step that it takes of each paint, in their order. */
  readonly steps: Uint16Array;
}

export interface Grouped {
  /** Those that take any step at all. */
  readonly groups: readonly DrawGroup[];
  /** Draws that no order serves, since a paint has not so much on offer. */
  readonly hopeless: number;
}

/** One group for all draws that take the same steps. */
export function groupDraws(
  asked: readonly Asked[],
  steps: readonly Steps[],
  supplyOf: (paint: string) => number,
): Grouped {
  const draws = asked[0]?.ml.length ?? 0;
  const groupOf = new Int32Array(draws);
  const groups: Raised[] = [{ before: -1, place: 0, step: 0 }];
  asked.forEach((one, place) => {
    const { amounts, beyond } = steps[place] as Steps;
    const known = new Map<number, number>();
    const firstMl = (beyond[1] ?? Number.POSITIVE_INFINITY) + sameMl;
    for (let draw = 0; draw < draws; draw++) {
      const ml = one.ml[draw] as number;
      if (ml <= firstMl) continue;
      const before = groupOf[draw] as number;
      const step = stepFor(ml, beyond);
      const key = before * amounts.length + step;
      const group = known.get(key) ?? groups.push({ before, place, step }) - 1;
      known.set(key, group);
      groupOf[draw] = group;
    }
  });
  const { counts, hopeless } = countDraws(groupOf, groups.length, markHopeless(asked, supplyOf));
  const counted = groups.flatMap((raised, group): DrawGroup[] => {
    const inGroup = at(counts, group);
    return group === 0 || inGroup === 0
      ? []
      : [{ draws: inGroup, steps: stepsOf(raised, groups, asked.length) }];
  });
  return { groups: counted, hopeless };
}

/** A group as another one that takes a step of one more paint; the first takes none. */
interface Raised {
  readonly before: number;
  readonly place: number;
  readonly step: number;
}

function stepsOf(raised: Raised, groups: readonly Raised[], paints: number): Uint16Array {
  const steps = new Uint16Array(paints);
  for (let one = raised; one.before >= 0; one = at(groups, one.before)) steps[one.place] = one.step;
  return steps;
}

function stepFor(ml: number, beyond: readonly number[]): number {
  let step = 1;
  while (step + 1 < beyond.length && ml > at(beyond, step + 1) + sameMl) step++;
  return step;
}

function markHopeless(asked: readonly Asked[], supplyOf: (paint: string) => number): Uint8Array {
  const marks = new Uint8Array(asked[0]?.ml.length ?? 0);
  for (const { paint, ml, rising } of asked) {
    const supplyMl = supplyOf(paint) + sameMl;
    if ((rising.at(-1) ?? 0) <= supplyMl) continue;
    for (let draw = 0; draw < marks.length; draw++) if ((ml[draw] as number) > supplyMl) marks[draw] = 1;
  }
  return marks;
}

/** In each group the draws that may be served. */
function countDraws(groupOf: Int32Array, groups: number, isHopeless: Uint8Array) {
  const counts = new Array<number>(groups).fill(0);
  let hopeless = 0;
  for (let draw = 0; draw < groupOf.length; draw++) {
    const group = groupOf[draw] as number;
    if (isHopeless[draw] === 1) hopeless++;
    else counts[group] = at(counts, group) + 1;
  }
  return { counts, hopeless };
}
