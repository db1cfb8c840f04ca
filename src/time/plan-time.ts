// Time: how long the army takes, the whole stage. In: the estimate, assumptions. Out: minutes, batches, evenings.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Unit } from '../model/sheets.js';
import type { JobTime, MinuteRange, TimePlan } from '../model/time.js';
import type { Estimate, Job } from '../model/work.js';
import { type FilledEvenings, fillEvenings } from './fill-evenings.js';
import type { UnitWork } from './queue-batches.js';
import { rangeMinutes } from './range-minutes.js';
import { type TimedJob, timeJobs } from './time-job.js';

/**
 * Brush time, setup, waiting and evenings of the work still to be done, by one painter, units by priority and then by
 * row. Worked out once for each job, however many units share it. An army without work takes no time and no evening;
 * a unit of which `wholeArmy` has more figures is finished on none of these.
 */
export function planTime(
  { jobs, units }: Estimate,
  assumptions: Assumptions,
  wholeArmy: readonly Unit[] = [],
): TimePlan {
  const timed = timeJobs(jobs.keys(), assumptions);
  const total = (of: (time: JobTime) => number): number =>
    [...timed].reduce((sum, [job, { time }]) => sum + of(time) * (jobs.get(job) ?? 0), 0);
  const eveningMin = likely(assumptions, 'evening min');
  const filled = fillEvenings(listWork(units, timed), eveningMin);
  const brushRange = rangeArmy(jobs, assumptions);
  const counts = new Map(wholeArmy.map((unit) => [placeOf(unit), unit.count]));
  const isCut = (unit: Unit): boolean => unit.count < (counts.get(placeOf(unit)) ?? 0);
  return {
    brushMin: total(({ brushMin }) => brushMin),
    brushRange,
    setupMin: total(({ setupMin }) => setupMin),
    waitingMin: total(({ waitingMin }) => waitingMin),
    elapsedMin: total(({ elapsedMin }) => elapsedMin),
    eveningMin,
    evenings: countEvenings(filled, brushRange.likely, eveningMin),
    spelledOut: filled.evenings,
    eveningsReckoned: !filled.complete,
    units: units.flatMap(({ unit, job }) => {
      const time = timed.get(job)?.time;
      const doneOnEvening = isCut(unit) ? undefined : filled.doneOn.get(unit);
      return time === undefined ? [] : [{ unit, time, doneOnEvening }];
    }),
  };
}

const placeOf = ({ army, row, unit }: Unit): string => [army, row, unit].join('\n');

/** Units with work before them, in painting order; units of one job share its batches. */
function listWork(units: Estimate['units'], timed: ReadonlyMap<Job, TimedJob>): UnitWork[] {
  return [...units]
    .sort((a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row)
    .map(({ unit, job }) => ({ unit, alike: timed.get(job)?.alike ?? [] }))
    .filter(({ alike }) => alike.length > 0);
}

function rangeArmy(jobs: Estimate['jobs'], assumptions: Assumptions): MinuteRange {
  const counted = [...jobs].map(([{ remaining }, units]) => ({
    lines: remaining,
    times: ({ figures }: { readonly figures: number }) => figures * units,
  }));
  return rangeMinutes(counted, assumptions);
}

/** Evenings past those spelled out go on at their mean pace; where none is, each holds `eveningMin` of brush time. */
function countEvenings(
  { evenings, brushMin, complete }: FilledEvenings,
  all: number,
  eveningMin: number,
): number {
  if (complete) return evenings.length;
  const pace = evenings.length === 0 ? eveningMin : brushMin / evenings.length;
  return evenings.length + Math.max(1, Math.ceil((all - brushMin) / pace));
}
