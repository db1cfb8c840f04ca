// Checks: what a blank build means. In: a figure's height. Out: a build.
import type { Build } from '../../model/words.js';

/** Eyes between the two, in mm, are those of figures that are made stout. */
export const heroicEyesMm = [25, 35] as const;

/** Figures of that height are heroic, any other figure is true to scale. */
export function usualBuild(eyeMm: number | undefined): Build {
  const [from, to] = heroicEyesMm;
  return eyeMm !== undefined && eyeMm >= from && eyeMm <= to ? 'heroic' : 'true scale';
}
