// Ranges: what weighings teach. In: log rows held against the estimate, assumptions. Out: sharper assumptions, which stay
// tied to each other as one weighing saw them together, and use against estimate.

import { assume, likely, z90 } from '../../assumptions/look-up.js';
import type { Assumption, Assumptions } from '../../model/assumption.js';
import { at } from '../../model/at.js';
import type { Learned, Weighing } from '../../model/ranges.js';
import type { LogRow } from '../../model/sheets.js';
import type { FigureArea } from '../../model/work.js';
import type { Beliefs } from '../draw-factors.js';
import { factorsOf } from '../list-terms.js';
import { isExact, twoPieceOf, valueAt } from '../two-piece.js';
import { fitSlope } from './fit-slope.js';
import { matchCounts } from './match-counts.js';
import { type Matched, type MatchInputs, matchLog } from './match-log.js';
import { type Factor, openPrediction } from './predict-use.js';
import { deviationsOf, type Normal, type Predict, rootOf, solveNormal } from './solve-normal.js';
import { widenBy } from './widen-by.js';

/** A factor counts as weighed once the log has taken a twentieth off its spread. */
const sharpened = 0.95;

/** The log, and what it is held against. */
interface LessonInputs extends Omit<MatchInputs, 'estimate'> {
  readonly log: readonly LogRow[];
  /** The estimate before any weighing; asked for only where there is a log. */
  readonly estimateFirst: () => MatchInputs['estimate'];
}

interface Lesson {
  readonly beliefs: Beliefs;
  readonly learned: Learned;
}

/**
 * Film, transfer, leftover, painter, surface and density of every row are updated together, in normal deviates of their
 * two-piece lognormals: the normal-normal update of their logs, named so because a product of lognormals is linear there.
 * A count is a row too, of all that was painted since the one before. A row's error is the scale's and the difference between batches, and more where rows contradict one another. The likely values are those whose formula agrees best
 * with prior and rows; the draws lie about a centre a little off them, where the bent halves even out to what was weighed.
 * Without rows that teach, all stays as it was.
 */
export function learnFromLog({ log, estimateFirst, ...given }: LessonInputs): Lesson {
  const { assumptions } = given;
  const nothing = {
    beliefs: { assumptions, joint: undefined },
    learned: { weighings: [], slope: 1, slopeError: 0, widened: 1 },
  };
  if (log.length === 0) return nothing;
  const estimate = estimateFirst();
  const matched = [...matchLog(log, { ...given, estimate }), ...matchCounts(log, { ...given, estimate })];
  if (matched.length === 0) return nothing;
  const factors = listFactors(matched, estimate.figures, assumptions);
  const { atMedians, overSpread } = openPrediction(matched, factors, {
    assumptions,
    figures: estimate.figures,
  });
  const measureBy = (widened: number) => (predicted: readonly number[]) =>
    matched.map((one, row) => ({
      value: one.usedMl,
      deviation: widened * errorMl(one, at(predicted, row), assumptions),
      withBefore: -((widened * (one.sharedErrorMl ?? 0)) ** 2),
    }));
  const solve = (predict: Predict, widened: number) =>
    solveNormal(factors.length, predict, measureBy(widened));
  const first = solve(atMedians, 1);
  const deviations = deviationsOf(first.covariance);
  const told = atMedians(first.mean, deviations).values;
  const learned = deviations.reduce((sum, deviation) => sum + 1 - deviation ** 2, 0);
  const widened = widenBy({ values: told, learned }, measureBy(1)(told));
  const normal = solve(overSpread, widened);
  const medians = widened === 1 ? first.mean : solve(atMedians, widened).mean;
  const [none, whole] = [factors.map(() => 0), factors.map(() => 1)];
  const expected = atMedians(none, whole).values;
  return {
    beliefs: {
      assumptions: sharpen(assumptions, factors, { normal, medians, matched, figures: estimate.figures }),
      joint: {
        names: factors.map(({ name }) => name),
        priors: factors.map(({ piece }) => piece),
        mean: normal.mean,
        root: rootOf(normal.covariance),
      },
    },
    learned: { ...tellUse(matched, expected, assumptions), widened },
  };
}

/** The scale's error, and the difference between one batch and the next. */
function errorMl(
  { readingErrorMl, batches }: Matched,
  predictedMl: number,
  assumptions: Assumptions,
): number {
  const difference = likely(assumptions, 'difference between batches') / 100 / Math.sqrt(batches);
  return Math.max(1e-6, Math.hypot(readingErrorMl, difference * predictedMl));
}

type Figures = ReadonlyMap<string, FigureArea>;

const surfacesOf = (figures: Figures) => new Map([...figures].map(([name, { surface }]) => [name, surface]));

/** Every factor in doubt that some row rests on. */
function listFactors(matched: readonly Matched[], figures: Figures, assumptions: Assumptions): Factor[] {
  const names = new Set(matched.flatMap((one) => [...namesOf(one, figures)]));
  return [...names]
    .map((name) => ({ name, piece: twoPieceOf(assume(assumptions, name)) }))
    .filter(({ piece }) => !isExact(piece));
}

function namesOf({ terms, byGrams }: Matched, figures: Figures): Set<string> {
  const names = factorsOf(terms, surfacesOf(figures));
  for (const name of [byGrams.density, byGrams.share]) if (name !== undefined) names.add(name);
  return names;
}

interface Update {
  readonly normal: Normal;
  /** Deviates of the likely values. */
  readonly medians: readonly number[];
  readonly matched: readonly Matched[];
  readonly figures: Figures;
}

/** Ten digits, so that no result hangs on the order in which sums were made. */
const tidy = (value: number): number => Number(value.toPrecision(10));

/** Each factor's own low, likely and high after the weighings; its mark changes once it is sharper. */
function sharpen(
  assumptions: Assumptions,
  factors: readonly Factor[],
  { normal, medians, matched, figures }: Update,
): Assumptions {
  const updated = new Map(assumptions);
  const namesOfRows = matched.map((one) => namesOf(one, figures));
  const deviations = deviationsOf(normal.covariance);
  factors.forEach(({ name, piece }, factor) => {
    const mean = at(normal.mean, factor);
    const median = at(medians, factor);
    const deviation = at(deviations, factor);
    const weighings = namesOfRows.filter((names) => names.has(name)).length;
    const was = assume(assumptions, name);
    updated.set(name, {
      ...was,
      low: tidy(valueAt(piece, Math.min(median, mean - z90 * deviation))),
      likely: tidy(valueAt(piece, median)),
      high: tidy(valueAt(piece, Math.max(median, mean + z90 * deviation))),
      ...(deviation <= sharpened ? weighedMark(weighings) : movedMark(was)),
    });
  });
  return updated;
}

const weighedMark = (weighings: number): Pick<Assumption, 'mark' | 'source' | 'weighings'> => ({
  mark: 'weighed',
  source: `your log: ${weighings} ${weighings === 1 ? 'weighing' : 'weighings'}`,
  weighings,
});

const movedMark = ({ source }: Assumption): Pick<Assumption, 'source'> => ({
  source: `${source}${source === '' ? '' : '; '}your log moved it a little`,
});

function tellUse(
  matched: readonly Matched[],
  expected: readonly number[],
  assumptions: Assumptions,
): Omit<Learned, 'widened'> {
  const weighings = matched.map((one, index): Weighing => {
    const { row, what, date, paint, unit, figures } = one.row;
    const expectedMl = at(expected, index);
    return {
      row,
      ...(what === 'counted' ? { isCount: true } : {}),
      date,
      paint,
      unit,
      figures,
      usedMl: one.usedMl,
      expectedMl,
      errorMl: errorMl(one, expectedMl, assumptions),
    };
  });
  const { slope, deviation } = fitSlope(
    weighings.map(({ expectedMl, usedMl }) => ({ x: expectedMl, y: usedMl })),
  );
  const xx = weighings.reduce((sum, { expectedMl }) => sum + expectedMl ** 2, 0);
  const byErrors =
    xx === 0
      ? 0
      : Math.sqrt(weighings.reduce((sum, { expectedMl, errorMl: e }) => sum + (expectedMl * e) ** 2, 0)) / xx;
  return { weighings, slope, slopeError: Math.max(deviation, byErrors) };
}
