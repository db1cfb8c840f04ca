// Summary: what results are doubted for. In: marks and doubts of lines, with the ml or the money behind each.
// Out: one mark, and the doubt with most behind it.
import { type Mark, weakestMark } from '../model/assumption.js';
import type { Trust } from '../model/work.js';

/** Which marks some results bear, and how much (ml, money or minutes) each named doubt stands behind. */
export interface Doubts {
  readonly marks: Set<Mark>;
  readonly weights: Map<string, number>;
}

export const noDoubts = (): Doubts => ({ marks: new Set(), weights: new Map() });

/** Adds a result's mark and doubt; `weight` is what hangs on it. */
export function noteDoubt(doubts: Doubts, { mark, biggestDoubt }: Trust, weight: number): void {
  doubts.marks.add(mark);
  if (biggestDoubt === '') return;
  doubts.weights.set(biggestDoubt, (doubts.weights.get(biggestDoubt) ?? 0) + weight);
}

/** The doubts of several results as one. */
export function mergeDoubts(all: readonly Doubts[]): Doubts {
  const merged = noDoubts();
  for (const { marks, weights } of all) {
    for (const mark of marks) merged.marks.add(mark);
    for (const [name, weight] of weights) merged.weights.set(name, (merged.weights.get(name) ?? 0) + weight);
  }
  return merged;
}

/** The weakest mark among the doubts and others, of nothing the strongest there is; of doubts alike the first. */
export function trustOf({ marks, weights }: Doubts, ...others: readonly Mark[]): Trust {
  const [first] = [...weights].sort(([, a], [, b]) => b - a);
  return { mark: weakestMark([...marks, ...others]), biggestDoubt: first?.[0] ?? '' };
}
