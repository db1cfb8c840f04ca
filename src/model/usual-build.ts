// Model: how stout a figure is where nobody says. In: the height of its eyes. Out: a build.
import type { Build } from './words.js';

/** Eyes at 25 to 35 mm are heroic, any other figure is true to scale. */
export function usualBuild(eyeMm: number | undefined): Build {
  return eyeMm !== undefined && eyeMm >= 25 && eyeMm <= 35 ? 'heroic' : 'true scale';
}
