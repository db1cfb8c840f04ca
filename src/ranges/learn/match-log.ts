// Ranges: log rows that can teach. In: the log, the estimate, paints, pots. Out: what each row used, and the terms that the
// estimate puts against it.
import { densityName, likely, usableShareName } from '../../assumptions/look-up.js';
import { gramsPerUsableMl, isWeighed, usedErrorMl, usedMlOf } from '../../assumptions/weigh-use.js';
import type { Assumptions } from '../../model/assumption.js';
import { potsThere } from '../../model/follow-pots.js';
import { isWorkRow, linesOfRow, type WorkRow } from '../../model/lines-of-row.js';
import type { LogRow, Paint, Pot } from '../../model/sheets.js';
import { usualPotMl } from '../../model/usual-pot.js';
import type { Estimate, Line } from '../../model/work.js';
import { sumTerms, type Terms } from '../list-terms.js';

/** A row held against the lines that it is about. */
export interface Matched {
  readonly row: WorkRow;
  /** Of how many batches it is, all alike: their differences even out. */
  readonly batches: number;
  readonly usedMl: number;
  /** Standard deviation of the reading alone, ml. */
  readonly readingErrorMl: number;
  /** Part of it that the one before has with the other sign: a reading that ends one and begins the next. */
  readonly sharedErrorMl?: number;
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
  const uses = log.filter(({ what }) => what === undefined);
  const pots = potsThere({ pots: inputs.pots, log });
  const painter = likely(inputs.assumptions, 'painter');
  const jobs = new Map(inputs.estimate.units.map(({ unit, job }) => [unit.unit, job]));
  const known = new Map<string, Held>();
  return uses.flatMap((row) => {
    const job = isWorkRow(row) ? jobs.get(row.unit) : undefined;
    if (job === undefined || !isWorkRow(row)) return [];
    const { unit, figures, step, nowPaint = row.paint } = row;
    const key = `${unit}\n${nowPaint}\n${step}\n${figures}`;
    const held = known.get(key) ?? holdAgainst(linesOfRow(row, job, painter), job.figure);
    known.set(key, held);
    return held.lines.length === 0 ? [] : (matchRow(row, held, { ...inputs, pots }) ?? []);
  });
}

interface Held {
  readonly lines: readonly Line[];
  readonly terms: Terms;
}

function holdAgainst(lines: readonly Line[], figure: string): Held {
  const sum = sumTerms();
  for (const line of lines) sum.add(line, figure, 1);
  return { lines, terms: sum.terms };
}

/** Undefined for a row that does not say how much was used. */
function matchRow(row: WorkRow, { lines, terms }: Held, inputs: MatchInputs): Matched | undefined {
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
    batches: 1,
    usedMl,
    readingErrorMl: usedErrorMl(row, { densityGPerMl, sizeMl }, assumptions),
    terms,
    byGrams: {
      density: isGuessed ? densityName(paint, container) : undefined,
      share: isWeighed(row) && container === 'can' ? usableShareName(container) : undefined,
    },
  };
}
