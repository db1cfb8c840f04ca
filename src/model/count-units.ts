// Model: units that share a job. In: units with their jobs. Out: how many units share each.
import type { Estimate, Job } from './work.js';

/** How many units share each job, in the order in which jobs are met. */
export function countUnits(units: Estimate['units']): Map<Job, number> {
  const counts = new Map<Job, number>();
  for (const { job } of units) counts.set(job, (counts.get(job) ?? 0) + 1);
  return counts;
}
