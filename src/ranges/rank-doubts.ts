// Ranges: what causes the doubt, and what would settle most of it. In: drawn army, what its lack is worth. Out: factors and
// remedies by the share of the spread that each causes.

import { countUnits } from '../model/count-units.js';
import type { Estimate } from '../model/plan.js';
import type { Doubt, Remedy } from '../model/ranges.js';
import type { Method } from '../model/words.js';
import type { DrawnArmy, DrawnPaint } from './draw-army.js';
import type { DrawnFactor } from './draw-factors.js';
import { shareOfSpread } from './sum-up-draws.js';

/** Under this share a doubt is not worth a word, nor to be told from chance. */
const leastShare = 0.01;
const mostRemedies = 6;

/**
 * Every factor and every pot's reading by its share of the spread of a result, the greatest first; shares of less than a
 * hundredth are left out. They need not add up to 1: what factors do together is nobody's alone.
 */
export function rankDoubts(drawn: DrawnArmy, result: Float64Array): Doubt[] {
  const factors = [...drawn.factors].map(([name, factor]) => ({
    name,
    share: shareOfSpread(effectOf(name, factor), result),
  }));
  return sortDoubts([...factors, ...readingDoubts(drawn.paints, result)]);
}

/** The same for what one paint lacks: only its own readings count. */
export function rankPaintDoubts(drawn: DrawnArmy, paint: DrawnPaint): Doubt[] {
  const factors = [...drawn.factors].map(([name, factor]) => ({
    name,
    share: shareOfSpread(effectOf(name, factor), paint.lackMl),
  }));
  return sortDoubts([...factors, ...readingDoubts([paint], paint.lackMl)]);
}

function readingDoubts(paints: readonly DrawnPaint[], result: Float64Array): Doubt[] {
  return paints.flatMap(({ paint, readings }) =>
    readings.map(({ leftMl }) => ({ name: readingName(paint), share: shareOfSpread(leftMl, result) })),
  );
}

const readingName = (paint: string): string => `reading of ${paint}`;

/** The greatest of each name first. */
function sortDoubts(doubts: readonly Doubt[]): Doubt[] {
  const sums = new Map<string, number>();
  for (const { name, share } of doubts) sums.set(name, (sums.get(name) ?? 0) + share);
  return [...sums]
    .map(([name, share]) => ({ name, share: Math.min(1, share) }))
    .filter(({ share }) => share >= leastShare)
    .sort((a, b) => b.share - a.share);
}

/** What a need goes in proportion with: a transfer's inverse, else the value. */
function effectOf(name: string, { values }: DrawnFactor): Float64Array {
  return name.endsWith(' transfer') ? values.map((value) => 1 / Math.min(1, value)) : values;
}

/**
 * What to do first: weigh a pot before and after the next batch by some method (settles film, transfer and painter
 * together), weigh a pot whose reading is rough, measure a figure. Each by the share of the spread that it would settle.
 */
export function rankRemedies(drawn: DrawnArmy, estimate: Estimate, result: Float64Array): Remedy[] {
  const weigh = methodsOf(estimate).map(({ method, paint }): Remedy => {
    const share = shareOfSpread(
      combine([`${method} wet film`, `${method} transfer`, 'painter'], drawn),
      result,
    );
    return { how: 'weigh', what: method, paint, share };
  });
  const read = readingDoubts(drawn.paints, result).map(
    ({ name, share }): Remedy => ({
      how: 'read',
      what: name.slice(readingName('').length),
      paint: '',
      share,
    }),
  );
  const measure = [...new Set(estimate.jobs.map(({ figure }) => figure))].map((figure): Remedy => {
    const share = shareOfSpread(areaOf(figure, drawn, estimate), result);
    return { how: 'measure', what: figure, paint: '', share };
  });
  return [...weigh, ...read, ...measure]
    .filter(({ share }) => share >= leastShare)
    .sort((a, b) => b.share - a.share)
    .slice(0, mostRemedies);
}

/** The product of what a need goes in proportion with, each over its mean. */
function combine(names: readonly string[], { factors, drawing }: DrawnArmy): Float64Array {
  const product = new Float64Array(drawing.draws).fill(1);
  for (const name of names) {
    const factor = factors.get(name);
    if (factor === undefined) continue;
    const effect = effectOf(name, factor);
    const mean = effect.reduce((sum, value) => sum + value, 0) / effect.length;
    for (let draw = 0; draw < product.length; draw++) {
      product[draw] = ((product[draw] as number) * (effect[draw] as number)) / mean;
    }
  }
  return product;
}

function areaOf(figure: string, drawn: DrawnArmy, { figures }: Estimate): Float64Array {
  const area = new Float64Array(drawn.drawing.draws);
  for (const { factors, share } of figures.get(figure)?.surface ?? []) {
    const part = combine(factors, drawn);
    for (let draw = 0; draw < area.length; draw++)
      area[draw] = (area[draw] as number) + share * (part[draw] as number);
  }
  return area;
}

/** Methods of the remaining work, each with the paint of which it puts out most. */
function methodsOf(estimate: Estimate): { readonly method: Method; readonly paint: string }[] {
  const units = countUnits(estimate.units);
  const ml = new Map<Method, Map<string, number>>();
  for (const job of estimate.jobs) {
    for (const { method, paint, putOutMl } of job.remaining) {
      const paints = ml.get(method) ?? new Map<string, number>();
      ml.set(method, paints.set(paint, (paints.get(paint) ?? 0) + putOutMl * (units.get(job) ?? 0)));
    }
  }
  return [...ml].map(([method, paints]) => ({
    method,
    paint: [...paints].sort(([, a], [, b]) => b - a)[0]?.[0] ?? '',
  }));
}
