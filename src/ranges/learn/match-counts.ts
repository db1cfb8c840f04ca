// Ranges: counts that can teach. In: the log, the pots, the estimate. Out: what went between two counts, and the terms of the
// work that the estimate puts against it.
import { densityName, likely, usableShare, usableShareName } from '../../assumptions/look-up.js';
import { leftMl, readingErrorMl } from '../../assumptions/read-pot.js';
import { gramsPerUsableMl, usedErrorMl, usedMlOf } from '../../assumptions/weigh-use.js';
import type { Assumptions } from '../../model/assumption.js';
import { type CountSpan, followPots } from '../../model/follow-pots.js';
import { groupByPaint } from '../../model/group-by.js';
import { isWorkRow, linesOfRow, type WorkRow } from '../../model/lines-of-row.js';
import type { LogRow, Paint, Pot } from '../../model/sheets.js';
import type { Job, Line } from '../../model/work.js';
import { sumTerms } from '../list-terms.js';
import type { Matched, MatchInputs } from './match-log.js';

/**
 * What went since the readings before, less what was measured between, is a weighing of all work that nobody measured. Of two
 * counts in a row the one between ends and begins a span: what it reads too high is missing in the next.
 */
export function matchCounts(log: readonly LogRow[], inputs: MatchInputs): Matched[] {
  if (log.every(({ what }) => what !== 'counted')) return [];
  const jobs = new Map(inputs.estimate.units.map(({ unit, job }) => [unit.unit, job]));
  const potsOf = groupByPaint(inputs.pots);
  return [...groupByPaint(log)].flatMap(([paint, logged]) => {
    const { rows, spans } = followPots(potsOf.get(paint) ?? [], logged);
    const known = inputs.paints.get(paint) ?? { paint, kind: 'colour' as const, alsoCalled: [] };
    const given = { ...inputs, paint: known, jobs };
    let last: CountSpan | undefined;
    return spans.flatMap((span) => {
      const matched = matchSpan(span, rows.slice(span.from, span.to), given);
      if (matched === undefined) return [];
      const sharedErrorMl = Math.hypot(...readingErrors(sharedWith(last, span), given));
      last = span;
      return { ...matched, sharedErrorMl };
    });
  });
}

/** Pots whose reading ended the one span and begins the other. */
const sharedWith = (last: CountSpan | undefined, { before }: CountSpan): readonly Pot[] =>
  before.filter((pot) => last?.after.includes(pot));

const readingErrors = (pots: readonly Pot[], { assumptions }: Pick<Given, 'assumptions'>): number[] =>
  pots.map((pot) => readingErrorMl(pot, assumptions) * usableShare(assumptions, pot.container));

interface Given extends Pick<MatchInputs, 'assumptions'> {
  readonly paint: Paint;
  readonly jobs: ReadonlyMap<string, Job>;
}

/** Undefined where nothing was painted between, or something of which nobody knows how much it was. */
function matchSpan(span: CountSpan, rows: readonly LogRow[], given: Given): Matched | undefined {
  const { assumptions, paint } = given;
  const [{ container } = { container: 'pot' as const }] = span.before;
  const densityGPerMl = gramsPerUsableMl(paint, container, assumptions);
  const sizeMl = Math.max(...span.before.map((pot) => pot.sizeMl));
  const uses = rows.filter(({ what }) => what === undefined);
  const measured = uses.filter((row) => usedMlOf(row, densityGPerMl) !== undefined);
  const work = uses.filter((row) => !measured.includes(row)).map((row) => workOf(row, given));
  const known = work.flatMap((one) => one ?? []);
  if (known.length === 0 || known.length < work.length) return undefined;
  const readings = [...span.before, ...span.after];
  const errors = [
    ...readingErrors(readings, given),
    ...measured.map((row) => usedErrorMl(row, { densityGPerMl, sizeMl }, assumptions)),
  ];
  const isGuessed = paint.densityGPerMl === undefined && readings.every(({ left }) => left.how === 'weighed');
  return {
    row: rowOf(span.row, known),
    batches: batchesOf(known),
    usedMl:
      usableIn(span.before, given) -
      usableIn(span.after, given) -
      measured.reduce((sum, row) => sum + (usedMlOf(row, densityGPerMl) ?? 0), 0),
    readingErrorMl: Math.hypot(...errors),
    terms: termsOf(known),
    byGrams: {
      density: isGuessed ? densityName(paint, container) : undefined,
      share: usableShareName(container),
    },
  };
}

interface Work {
  readonly row: WorkRow;
  readonly lines: readonly Line[];
  readonly figure: string;
}

function workOf(row: LogRow, { jobs, assumptions }: Given): Work | undefined {
  const job = isWorkRow(row) && row.step !== undefined ? jobs.get(row.unit) : undefined;
  if (job === undefined || !isWorkRow(row)) return undefined;
  const lines = linesOfRow(row, job, likely(assumptions, 'painter'));
  return lines.length === 0 ? undefined : { row, lines, figure: job.figure };
}

function usableIn(
  pots: readonly Pot[],
  { paint, assumptions }: { readonly paint: Paint; readonly assumptions: Assumptions },
): number {
  return pots.reduce(
    (sum, pot) => sum + leftMl(pot, paint, assumptions) * usableShare(assumptions, pot.container),
    0,
  );
}

function termsOf(work: readonly Work[]) {
  const sum = sumTerms();
  for (const { lines, figure } of work) for (const line of lines) sum.add(line, figure, 1);
  return sum.terms;
}

/** Rows of unequal work even out less than as many alike: `(sum)^2 / sum of squares`. */
function batchesOf(work: readonly Work[]): number {
  const amounts = work.map(({ lines }) => lines.reduce((sum, { putOutMl }) => sum + putOutMl, 0));
  const sum = amounts.reduce((all, one) => all + one, 0);
  const squares = amounts.reduce((all, one) => all + one ** 2, 0);
  return squares > 0 ? sum ** 2 / squares : 1;
}

/** The count as the work that it is about: the units, and their figures. */
function rowOf(row: LogRow, work: readonly Work[]): WorkRow {
  const figuresOf = new Map<string, number>();
  for (const { row: one } of work)
    figuresOf.set(one.unit, Math.max(figuresOf.get(one.unit) ?? 0, one.figures));
  const figures = [...figuresOf.values()].reduce((sum, one) => sum + one, 0);
  return { ...row, unit: [...figuresOf.keys()].join(', '), figures };
}
