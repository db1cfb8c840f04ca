// Ranges: what weighings teach. In: log rows held against the estimate, assumptions. Out: sharper assumptions, which stay
// tied to each other as one weighing saw them together, and use against estimate.
import { assume, likely, z90 } from '../../assumptions/look-up.js';
import type { Assumption, Assumptions } from '../../model/assumption.js';
import type { FigureArea } from '../../model/plan.js';
import type { Learned, Weighing } from '../../model/ranges.js';
import type { LogRow } from '../../model/sheets.js';
import type { Beliefs } from '../draw-factors.js';
import { factorsOf } from '../list-terms.js';
import { openPutOut } from '../put-out.js';
import { isExact, type TwoPiece, twoPieceOf, valueAt } from '../two-piece.js';
import { fitSlope } from './fit-slope.js';
import { type Matched, type MatchInputs, matchLog } from './match-log.js';
import { type Normal, type Predicted, rootOf, solveNormal } from './solve-normal.js';

/** A factor counts as weighed once the log has taken a twentieth off its spread. */
const sharpened = 0.95;

/** Slopes are taken this far to both sides of a deviate, which evens out the bend at the median of a two-piece spread. */
const slopeStep = 0.25;

interface Factor {
  readonly name: string;
  readonly piece: TwoPiece;
}

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
 * A row's error is the scale's and the difference between batches. Without rows that teach, all stays as it was.
 */
export function learnFromLog({ log, estimateFirst, ...given }: LessonInputs): Lesson {
  const { assumptions } = given;
  const nothing = {
    beliefs: { assumptions, joint: undefined },
    learned: { weighings: [], slope: 1, slopeError: 0 },
  };
  if (log.length === 0) return nothing;
  const estimate = estimateFirst();
  const matched = matchLog(log, { ...given, estimate });
  if (matched.length === 0) return nothing;
  const factors = listFactors(matched, estimate.figures, assumptions);
  const predict = predictor(matched, factors, { assumptions, figures: estimate.figures });
  const measure = (predicted: readonly number[]) =>
    matched.map((one, at) => ({
      value: one.usedMl,
      deviation: errorMl(one, predicted[at] ?? 0, assumptions),
    }));
  const normal = solveNormal(factors.length, predict, measure);
  const expected = predict(factors.map(() => 0)).values;
  return {
    beliefs: {
      assumptions: sharpen(assumptions, factors, { normal, matched, figures: estimate.figures }),
      joint: {
        names: factors.map(({ name }) => name),
        priors: factors.map(({ piece }) => piece),
        mean: normal.mean,
        root: rootOf(normal.covariance),
      },
    },
    learned: tellUse(matched, expected, assumptions),
  };
}

/** The scale's error, and the difference between one batch and the next. */
function errorMl({ readingErrorMl }: Matched, predictedMl: number, assumptions: Assumptions): number {
  const batches = likely(assumptions, 'difference between batches') / 100;
  return Math.max(1e-6, Math.hypot(readingErrorMl, batches * predictedMl));
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

function namesOf({ terms, densityName }: Matched, figures: Figures): Set<string> {
  const names = factorsOf(terms, surfacesOf(figures));
  return densityName === undefined ? names : names.add(densityName);
}

/** Predicts every row at any deviates, through the very formula of the draws: one draw at them, two beside each. */
function predictor(
  matched: readonly Matched[],
  factors: readonly Factor[],
  { assumptions, figures }: { readonly assumptions: Assumptions; readonly figures: Figures },
): (deviates: readonly number[]) => Predicted {
  const draws = 1 + 2 * factors.length;
  return (deviates) => {
    const columns = new Map(
      factors.map(({ name, piece }, at) => {
        const z = deviates[at] ?? 0;
        const column = new Float64Array(draws).fill(valueAt(piece, z));
        column[1 + 2 * at] = valueAt(piece, z - slopeStep);
        column[2 + 2 * at] = valueAt(piece, z + slopeStep);
        return [name, column] as const;
      }),
    );
    const putOut = openPutOut({ assumptions, figures, columnOf: (name) => columns.get(name), draws });
    const rows = matched.map(({ terms, densityName }) =>
      inGrams(putOut(terms), densityName === undefined ? undefined : columns.get(densityName), {
        usual: densityName === undefined ? 1 : likely(assumptions, densityName),
      }),
    );
    return {
      values: rows.map((row) => row[0] ?? 0),
      slopes: rows.map((row) =>
        factors.map((_, at) => ((row[2 + 2 * at] ?? 0) - (row[1 + 2 * at] ?? 0)) / (2 * slopeStep)),
      ),
    };
  };
}

/** What the scale shows for some ml, told in ml of the usual density, as the row's own grams are. */
function inGrams(
  ml: Float64Array,
  density: Float64Array | undefined,
  { usual }: { usual: number },
): Float64Array {
  return density === undefined ? ml : ml.map((value, draw) => (value * (density[draw] ?? usual)) / usual);
}

interface Update {
  readonly normal: Normal;
  readonly matched: readonly Matched[];
  readonly figures: Figures;
}

/** Each factor's own low, likely and high after the weighings; its mark changes once it is sharper. */
function sharpen(
  assumptions: Assumptions,
  factors: readonly Factor[],
  { normal, matched, figures }: Update,
): Assumptions {
  const updated = new Map(assumptions);
  const namesOfRows = matched.map((one) => namesOf(one, figures));
  factors.forEach(({ name, piece }, at) => {
    const mean = normal.mean[at] ?? 0;
    const deviation = Math.sqrt(normal.covariance[at]?.[at] ?? 1);
    const weighings = namesOfRows.filter((names) => names.has(name)).length;
    const was = assume(assumptions, name);
    updated.set(name, {
      ...was,
      low: valueAt(piece, mean - z90 * deviation),
      likely: valueAt(piece, mean),
      high: valueAt(piece, mean + z90 * deviation),
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
): Learned {
  const weighings = matched.map((one, at): Weighing => {
    const { row, date, paint, unit, figures } = one.row;
    const expectedMl = expected[at] ?? 0;
    return {
      row,
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
