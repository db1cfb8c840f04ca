// Ranges: log rows that can teach. In: the log, the estimate, paints, pots. Out: what each row used, and the terms that the
// estimate puts against it.
import { densityName, usableShareName } from '../../assumptions/look-up.js';
import { gramsPerUsableMl, isWeighed, usedErrorMl, usedMlOf } from '../../assumptions/weigh-use.js';
import type { Assumptions } from '../../model/assumption.js';
import type { LogRow, Paint, Pot } from '../../model/sheets.js';
import { usualPotMl } from '../../model/usual-pot.js';
import type { Estimate, Job, Line } from '../../model/work.js';
import { lineFor, sumTerms, type Terms } from '../list-terms.js';

/** A row that can teach names its unit and how many figures it painted. */
type TeachingRow = LogRow & { readonly unit: string; readonly figures: number };

/** A row held against the lines that it is about. */
export interface Matched {
  readonly row: TeachingRow;
  readonly usedMl: number;
  /** Standard deviation of the reading alone, ml. */
  readonly readingErrorMl: number;
  /** One object for all rows of a unit, paint, step and number of figures. */
  readonly terms: Terms;
  /** What turned grams to ml, where it is in doubt: `grams = ml x density`, from a can over the usable share. */
  readonly byGrams: { readonly density: string | undefined; readonly share: string | undefined };
}

/** What the log is held against. */
export interface MatchInputs {
  readonly estimate: Estimate;
  readonly paints: ReadonlyMap<string, Paint>;
  readonly pots: readonly Pot[];
  readonly assumptions: Assumptions;
}

/**
 * Rows with an amount that name a unit and figures, and whose paint its scheme uses (in the row's step, where it names one).
 * Others teach nothing: without an amount they are progress at the most, without the rest they lower the shelf alone.
 */
export function matchLog(log: readonly LogRow[], inputs: MatchInputs): Matched[] {
  const jobs = new Map(inputs.estimate.units.map(({ unit, job }) => [unit.unit, job]));
  const known = new Map<string, Terms>();
  return log.flatMap((row) => {
    const { unit, figures, nowPaint = row.paint } = row;
    const job = unit === undefined ? undefined : jobs.get(unit);
    if (unit === undefined || figures === undefined || job === undefined) return [];
    const lines = job.lines.filter(({ step, paint }) => paint === nowPaint && step === (row.step ?? step));
    if (lines.length === 0) return [];
    const key = `${unit}\n${nowPaint}\n${row.step}\n${figures}`;
    const terms = known.get(key) ?? termsOf({ job, lines }, figures);
    known.set(key, terms);
    return matchRow({ ...row, unit, figures }, { lines, terms }, inputs) ?? [];
  });
}

interface Work {
  readonly job: Job;
  readonly lines: readonly Line[];
}

/** The lines as if for so many figures; leftovers are those of their own sittings. */
function termsOf({ job, lines }: Work, figures: number): Terms {
  const sum = sumTerms();
  const sittings = Math.ceil(figures / job.batch);
  for (const line of lines) sum.add(lineFor(line, { figures, sittings }), job.figure, 1);
  return sum.terms;
}

interface Held extends Pick<Work, 'lines'> {
  readonly terms: Terms;
}

/** Undefined for a row that does not say how much was used. */
function matchRow(row: TeachingRow, { lines, terms }: Held, inputs: MatchInputs): Matched | undefined {
  const { paints, pots, assumptions } = inputs;
  const paint = paints.get(row.paint) ?? { paint: row.paint, kind: 'colour', alsoCalled: [] };
  const own = pots.filter((pot) => pot.paint === row.paint);
  const container = own[0]?.container ?? (lines[0]?.method === 'spray can' ? 'can' : 'pot');
  const densityGPerMl = gramsPerUsableMl(paint, container, assumptions);
  const usedMl = usedMlOf(row, densityGPerMl);
  if (usedMl === undefined) return undefined;
  const sizeMl = own.length === 0 ? usualPotMl : Math.max(...own.map((pot) => pot.sizeMl));
  const isGuessed = isWeighed(row) && paint.densityGPerMl === undefined;
  return {
    row,
    usedMl,
    readingErrorMl: usedErrorMl(row, { densityGPerMl, sizeMl }, assumptions),
    terms,
    byGrams: {
      density: isGuessed ? densityName(paint, container) : undefined,
      share: isWeighed(row) && container === 'can' ? usableShareName(container) : undefined,
    },
  };
}
