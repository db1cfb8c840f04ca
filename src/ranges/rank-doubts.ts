// Ranges: what causes the doubt, and what would settle most of it. In: drawn army, what its lack is worth. Out: factors and
// remedies by the share of the spread that each causes.

import type { Doubt, Remedy } from '../model/ranges.js';
import type { Method } from '../model/words.js';
import type { Estimate } from '../model/work.js';
import type { DrawnArmy, SummedPaint } from './draw-army.js';
import type { DrawnFactor } from './draw-factors.js';
import { type Spread, shareOfSpread, spreadOf } from './sum-up-draws.js';

/** Under this share a doubt is not worth a word, nor to be told from chance. */
const leastShare = 0.01;
const mostRemedies = 6;

/** What causes the spread of anything drawn. */
export interface Ranking {
  /**
   * Every factor and every pot's reading by its share of the spread of a result, the greatest first; shares of less than a
   * hundredth are left out. They need not add up to 1: what factors do together is nobody's alone.
   */
  doubtsOf(result: Float64Array): Doubt[];
  /** The same for what one paint lacks: only its own readings count. */
  doubtsOfPaint(paint: SummedPaint): Doubt[];
  /**
   * What to do first: weigh a pot before and after the next batch by some method (settles film, transfer and painter
   * together), weigh a pot whose reading is rough, measure a figure. Each by the share of the spread that it would settle.
   */
  remediesFor(result: Float64Array): Remedy[];
}

/** Ranks what causes any spread in the draws; what each factor does is worked out once. */
export function openRanking(drawn: DrawnArmy, estimate: Estimate): Ranking {
  let known: Map<string, Spread> | undefined;
  const effects = (): Map<string, Spread> => {
    known ??= new Map([...drawn.factors].map(([name, factor]) => [name, spreadOf(effectOf(name, factor))]));
    return known;
  };
  const rank = (result: Spread, paints: readonly SummedPaint[]): Doubt[] => {
    const factors = [...effects()].map(([name, effect]) => ({ name, share: shareOfSpread(effect, result) }));
    return sortDoubts([...factors, ...readingDoubts(paints, result)]);
  };
  return {
    doubtsOf: (result) => rank(spreadOf(result), drawn.paints),
    doubtsOfPaint: (paint) => rank(spreadOf(paint.lackMl), [paint]),
    remediesFor: (result) => rankRemedies({ drawn, estimate, effects: effects() }, spreadOf(result)),
  };
}

function readingDoubts(paints: readonly SummedPaint[], result: Spread): Doubt[] {
  return paints.flatMap(({ paint, readings }) =>
    readings.map(({ leftMl }) => ({
      name: readingName(paint),
      share: shareOfSpread(spreadOf(leftMl), result),
    })),
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

/** What the remedies are ranked from. */
interface Causes {
  readonly drawn: DrawnArmy;
  readonly estimate: Estimate;
  readonly effects: ReadonlyMap<string, Spread>;
}

function rankRemedies(causes: Causes, result: Spread): Remedy[] {
  const { drawn, estimate } = causes;
  const settles = (column: Float64Array): number => shareOfSpread(spreadOf(column), result);
  const weigh = methodsOf(estimate).map(({ method, paint }): Remedy => {
    const names = [`${method} wet film`, `${method} transfer`, 'painter'];
    return { how: 'weigh', what: method, paint, share: settles(combine(names, causes)) };
  });
  const read = drawn.paints.flatMap((one) =>
    readingDoubts([one], result).map(
      ({ share }): Remedy => ({
        how: one.likely.unmeasured === undefined ? 'read' : 'count',
        what: one.paint,
        paint: '',
        share,
      }),
    ),
  );
  const measure = [...new Set([...estimate.jobs.keys()].map(({ figure }) => figure))].map(
    (figure): Remedy => ({
      how: 'measure',
      what: figure,
      paint: '',
      share: settles(areaOf(figure, causes)),
    }),
  );
  return [...weigh, ...read, ...measure]
    .filter(({ share }) => share >= leastShare)
    .sort((a, b) => b.share - a.share)
    .slice(0, mostRemedies);
}

/** The product of what a need goes in proportion with, each over its mean. */
function combine(names: readonly string[], { effects, drawn }: Causes): Float64Array {
  const product = new Float64Array(drawn.drawing.draws).fill(1);
  for (const name of names) {
    const effect = effects.get(name);
    if (effect === undefined) continue;
    const { column, mean } = effect;
    for (let draw = 0; draw < product.length; draw++) {
      product[draw] = ((product[draw] as number) * (column[draw] as number)) / mean;
    }
  }
  return product;
}

function areaOf(figure: string, causes: Causes): Float64Array {
  const area = new Float64Array(causes.drawn.drawing.draws);
  for (const { factors, share } of causes.estimate.figures.get(figure)?.surface ?? []) {
    const part = combine(factors, causes);
    for (let draw = 0; draw < area.length; draw++)
      area[draw] = (area[draw] as number) + share * (part[draw] as number);
  }
  return area;
}

/** Methods of the remaining work, each with the paint of which it puts out most. */
function methodsOf(estimate: Estimate): { readonly method: Method; readonly paint: string }[] {
  const ml = new Map<Method, Map<string, number>>();
  for (const [job, units] of estimate.jobs) {
    for (const { method, paint, putOutMl } of job.remaining) {
      const paints = ml.get(method) ?? new Map<string, number>();
      ml.set(method, paints.set(paint, (paints.get(paint) ?? 0) + putOutMl * units));
    }
  }
  return [...ml].map(([method, paints]) => ({
    method,
    paint: [...paints].sort(([, a], [, b]) => b - a)[0]?.[0] ?? '',
  }));
}
