// Time: how far brush minutes may be off. In: lines, assumptions. Out: low, likely, high.
import { assume, likely } from '../assumptions/look-up.js';
import type { Assumption, Assumptions } from '../model/assumption.js';
import type { MinuteRange } from '../model/time.js';
import type { Line } from '../model/work.js';
import { isWide, minutesOfLine } from './minutes-of-coat.js';

/** Some lines, and how many times each counts. */
interface CountedLines {
  readonly lines: readonly Line[];
  readonly times: (line: Line) => number;
}

/**
 * Brush minutes of lines with their P10 and P90. Minutes are proportional to each factor that part of them rests on
 * (handling, pace, care, and what the surface rests on; with the surface of a zone for a wider brush they grow half as
 * fast, as roots do). Each factor goes to its low and its high in turn, and the
 * changes, being independent, are added in squares (GUM 5.1.6). No lines give 0 throughout; low is never under 0.
 */
export function rangeMinutes(counted: readonly CountedLines[], assumptions: Assumptions): MinuteRange {
  const restsOn = new Map<string, number>();
  let sum = 0;
  for (const { lines, times } of counted) {
    for (const line of lines) sum += weighLine(line, { times: times(line), restsOn }, assumptions);
  }
  const factors = [...restsOn].map(([name, minutes]) => ({ minutes, factor: assume(assumptions, name) }));
  const offBy = (bound: (factor: Assumption) => number): number =>
    Math.hypot(...factors.map(({ minutes, factor }) => minutes * (bound(factor) / factor.likely - 1)));
  return {
    low: Math.max(0, sum - offBy(({ low }) => low)),
    likely: sum,
    high: sum + offBy(({ high }) => high),
  };
}

interface Weighing {
  readonly times: number;
  /** Minutes proportional to each factor, by its name. */
  readonly restsOn: Map<string, number>;
}

/** Adds a line's minutes to the factors that they rest on; returns them. */
function weighLine(line: Line, { times, restsOn }: Weighing, assumptions: Assumptions): number {
  const { layer, method, surface } = line;
  const minutes = minutesOfLine(line, assumptions) * times;
  const handling = likely(assumptions, `${method} handling`) * line.coats * line.mixShare * times;
  const painting = minutes - handling;
  const add = (name: string, share: number): unknown => restsOn.set(name, (restsOn.get(name) ?? 0) + share);
  add(`${method} handling`, handling);
  add(`${method} pace`, painting);
  add(`${layer} care`, painting);
  const bySurface = isWide(line, assumptions) ? painting / 2 : painting;
  for (const { factors, share } of surface) for (const name of factors) add(name, bySurface * share);
  return minutes;
}
