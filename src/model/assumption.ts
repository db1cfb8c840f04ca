// Model: what an assumption is, and how marks rank. In: nothing. Out: types and the weaker of two marks.

/** Where a number comes from, strongest first. */
export const marks = [
  'weighed',
  'yours',
  'your model',
  'published',
  'open models',
  'common practice',
  'from memory',
] as const;
export type Mark = (typeof marks)[number];

export interface Assumption {
  /** Its name in the settings sheet and in the report. */
  readonly name: string;
  /** P10; equal to `likely` where the value is held as exact. */
  readonly low: number;
  readonly likely: number;
  /** P90. */
  readonly high: number;
  /** Blank for a plain factor. */
  readonly unit: string;
  readonly mark: Mark;
  readonly source: string;
  /** How many rows of the log it was learned from; only with the mark `weighed`. */
  readonly weighings?: number;
}

/** Every assumption by its name. */
export type Assumptions = ReadonlyMap<string, Assumption>;

/** Name of an assumption as it is drawn for one figure alone: `sculpt (spearman)`. */
export const nameForFigure = (name: string, figure: string): string => `${name} (${figure})`;

/** The assumption behind such a name: no name in the registry has brackets. Any other name is its own. */
export const familyName = (name: string): string => /^(.*?) \(.*\)$/s.exec(name)?.[1] ?? name;

/** Whether areas of figures rest on it, by the way the registry's names are built. */
export const isOfSurface = (name: string): boolean =>
  /^(dress|build|kit|relief|sculpt|surface|sky)\b| of a creature$/.test(name);

/** The weakest of some marks; of none, the strongest there is. */
export function weakestMark(of: readonly Mark[]): Mark {
  return of.reduce((weak, mark) => (marks.indexOf(mark) > marks.indexOf(weak) ? mark : weak), marks[0]);
}
