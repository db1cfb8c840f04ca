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
  const groups: Uint16Array[] = [new Uint16Array(asked.length)];
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
      const group = known.get(key) ?? groups.push(raise(groups[before] as Uint16Array, place, step)) - 1;
      known.set(key, group);
      groupOf[draw] = group;
    }
  });
  return countDraws(groupOf, groups, markHopeless(asked, supplyOf));
}

function stepFor(ml: number, beyond: readonly number[]): number {
  let step = 1;
  while (step + 1 < beyond.length && ml > at(beyond, step + 1) + sameMl) step++;
  return step;
}

function raise(steps: Uint16Array, place: number, step: number): Uint16Array {
  const raised = steps.slice();
  raised[place] = step;
  return raised;
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

function countDraws(groupOf: Int32Array, groups: readonly Uint16Array[], isHopeless: Uint8Array): Grouped {
  const counts = new Uint32Array(groups.length);
  let hopeless = 0;
  for (let draw = 0; draw < groupOf.length; draw++) {
    const group = groupOf[draw] as number;
    if (isHopeless[draw] === 1) hopeless++;
    else counts[group] = (counts[group] as number) + 1;
  }
  const counted = groups.map((steps, group) => ({ steps, draws: counts[group] as number }));
  return {
    groups: counted.filter(({ draws, steps }) => draws > 0 && steps.some((step) => step > 0)),
    hopeless,
  };
}
