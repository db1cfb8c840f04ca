// Model: units that share the lines of a whole scheme, whatever of it is done. In: jobs. Out: how many units share each.
import type { Estimate, Line } from './work.js';

/** How many units share each list of lines: jobs that differ only in what is done have the same one. */
export function countSchemes(jobs: Estimate['jobs']): Map<readonly Line[], number> {
  const counts = new Map<readonly Line[], number>();
  for (const [{ lines }, units] of jobs) counts.set(lines, (counts.get(lines) ?? 0) + units);
  return counts;
}
