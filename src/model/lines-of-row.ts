// Model: the work that a log row is about. In: a row, the job of its unit. Out: lines of the job as if for the row's figures.
import type { LogRow } from './sheets.js';
import type { Job, Line } from './work.js';

/** A row that names its unit and how many figures it painted. */
export type WorkRow = LogRow & { readonly unit: string; readonly figures: number };

export const isWorkRow = (row: LogRow): row is WorkRow => row.unit !== undefined && row.figures !== undefined;

/** A line as if for so many figures in so many sittings: leftovers are those of the sittings, `putOutMl` goes with both. */
export function lineFor(
  line: Line,
  { figures, sittings }: Pick<Line, 'figures' | 'sittings'>,
  painter: number,
): Line {
  const [each, kept] = [figures / line.figures, line.leftoverMl * painter];
  const leftoverMl = (line.leftoverMl / line.sittings) * sittings;
  const putOutMl = (line.putOutMl - kept) * each + leftoverMl * painter;
  return { ...line, figures, sittings, onFigureMl: line.onFigureMl * each, leftoverMl, putOutMl };
}

/**
 * Its paint in its step, or in any where it names none. Leftovers are those of the row's own sittings. None where the scheme has no such line.
 */
export function linesOfRow(row: WorkRow, job: Job, painter: number): Line[] {
  const { figures, step, paint, nowPaint = paint } = row;
  const sittings = Math.ceil(figures / job.batch);
  return job.lines
    .filter((line) => line.paint === nowPaint && line.step === (step ?? line.step))
    .map((line) => lineFor(line, { figures, sittings }, painter));
}
