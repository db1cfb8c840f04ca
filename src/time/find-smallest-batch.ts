// Time: the smallest batch at which nothing waits. In: passes. Out: figures, and the pass that asks for so many.
import type { Pass, SmallestBatch } from '../model/time.js';

/** Rounding in a quotient of minutes: 15 / 2.5 figures are 6, not 7. */
const margin = 1e-9;

/**
 * Between two passes nothing waits where the rest of the batch, at the quicker of both paces, and the next setup
 * take at least as long as the paint dries: `n >= 1 + (drying - setup) / min(p, p of the next)`. With passes all
 * alike this is Munier & Sourd's `n >= 1 + d / p` (2003). Holds for that batch and every larger one. No pass, or one: 1.
 * Drying of `longMin` or more is left for the end of an evening, and asks for nothing.
 */
export function findSmallestBatch(
  passes: readonly Pass[],
  longMin = Number.POSITIVE_INFINITY,
): SmallestBatch {
  let most = 1;
  let becauseOf: Pass | undefined;
  for (const [index, pass] of passes.entries()) {
    const next = passes[index + 1];
    if (next === undefined || pass.driesMin >= longMin) continue;
    const figures = figuresFor(pass, next);
    if (figures > most) [most, becauseOf] = [figures, pass];
  }
  return { figures: Number.isFinite(most) ? most : undefined, becauseOf };
}

function figuresFor(pass: Pass, next: Pass): number {
  const waits = pass.driesMin - next.setupMin;
  if (waits <= 0) return 1;
  return Math.ceil(1 + waits / Math.min(pass.brushMinPerFigure, next.brushMinPerFigure) - margin);
}
