// Stock: what the log took from the shelf. In: the pots of a paint in the order in which they are used up, its log rows.
// Out: the pots with what is left in them, and what of that is only estimated.
import { densityName } from '../assumptions/look-up.js';
import { gramsPerUsableMl, isWeighed, usedErrorMl, usedMlOf } from '../assumptions/weigh-use.js';
import { type Assumptions, weakestMark } from '../model/assumption.js';
import type { LogRow, Paint } from '../model/sheets.js';
import type { DoubtfulUse, PastWork, ShelfPot, Take } from '../model/stock.js';

/** A pot of the shelf; rows from the place `since` on came out of it, until it was gone. */
export interface LivingPot {
  readonly pot: ShelfPot;
  readonly since: number;
  readonly until: number;
}

/** A paint's shelf once all rows have taken theirs. */
export interface UsedShelf {
  /** Those that are still there, at the likely values. */
  readonly pots: readonly ShelfPot[];
  /** Some of it is only estimated. */
  readonly unmeasured?: DoubtfulUse;
  /** None is, and some was weighed by a density that is in doubt. */
  readonly weighed?: DoubtfulUse;
}

interface Inputs {
  readonly paint: Paint;
  readonly assumptions: Assumptions;
  readonly past: ReadonlyMap<LogRow, PastWork>;
}

type Level = { -readonly [Key in keyof ShelfPot]: ShelfPot[Key] };

/**
 * Takes each row's paint from the pots, the first in use first. A pot that was counted after the row shows its use already;
 * one on its way holds none of it. A row without an amount takes what its work is estimated at, a row without work nothing.
 * What no pot can give is left out: the sheets have said so.
 * The errors of measured uses add up in squares with that of the reading.
 */
export function useUp(pots: readonly LivingPot[], rows: readonly LogRow[], inputs: Inputs): UsedShelf {
  const levels: Level[] = pots.map(({ pot }) => ({ ...pot }));
  const sizeMl = Math.max(0, ...levels.map((pot) => pot.sizeMl));
  const diary = openDiary(levels, pots);
  rows.forEach((row, at) => {
    if (row.what !== undefined) return;
    const from = levels.flatMap((level, place) => (isOpen(pots[place], level, at) ? [place] : []));
    const container = levels[from[0] ?? -1]?.container;
    if (container === undefined) return;
    const densityGPerMl = gramsPerUsableMl(inputs.paint, container, inputs.assumptions);
    const usedMl = usedMlOf(row, densityGPerMl);
    const work = usedMl === undefined ? inputs.past.get(row) : undefined;
    const ml = usedMl ?? work?.likelyMl;
    if (ml === undefined) return;
    const errorMl = work ? 0 : usedErrorMl(row, { densityGPerMl, sizeMl }, inputs.assumptions);
    const isGuessed = isWeighed(row) && inputs.paint.densityGPerMl === undefined;
    const density = densityName(inputs.paint, container);
    diary.note({ from, ml, errorMl, density, isGuessed, work });
    for (const place of takeOff(levels, from, ml)) widen(levels[place] as Level, errorMl, work);
  });
  return {
    pots: levels.filter((_, place) => pots[place]?.until === Number.POSITIVE_INFINITY),
    ...diary.read(),
  };
}

const isOpen = (life: LivingPot | undefined, { ordered }: Level, at: number): boolean =>
  life !== undefined && !ordered && life.since <= at && at < life.until;

/** Gives the pots that gave some. */
function takeOff(levels: readonly Level[], from: readonly number[], ml: number): number[] {
  let restMl = ml;
  return from.filter((place) => {
    const level = levels[place] as Level;
    const takenMl = Math.min(level.usableMl, restMl);
    if (takenMl <= 0) return false;
    level.usableMl -= takenMl;
    restMl -= takenMl;
    return true;
  });
}

function widen(level: Level, errorMl: number, work: PastWork | undefined): void {
  level.readingErrorMl = Math.hypot(level.readingErrorMl, errorMl);
  if (work) level.mark = weakestMark([level.mark, ...work.lines.map(({ mark }) => mark)]);
}

interface Use extends Pick<Take, 'from' | 'ml' | 'errorMl' | 'density'> {
  readonly isGuessed: boolean;
  readonly work: PastWork | undefined;
}

type OpenTake = { -readonly [Key in Exclude<keyof Take, 'work'>]: Take[Key] } & { readonly work: PastWork[] };

/** Begins with the first use that is in doubt beyond its own error: until then the levels alone say it all. */
function openDiary(levels: readonly Level[], lives: readonly LivingPot[]) {
  const takes: OpenTake[] = [];
  let pots: DoubtfulUse['pots'] | undefined;
  return {
    read(): Pick<UsedShelf, 'unmeasured' | 'weighed'> {
      if (pots === undefined) return {};
      const isEstimated = takes.some(({ work }) => work.length > 0);
      return { [isEstimated ? 'unmeasured' : 'weighed']: { pots, takes } };
    },
    note({ from, ml, errorMl, density, isGuessed, work }: Use): void {
      if (pots === undefined && work === undefined && !isGuessed) return;
      pots ??= levels.map((level, at) => ({
        ...level,
        isGone: lives[at]?.until !== Number.POSITIVE_INFINITY,
      }));
      const last = takes.at(-1);
      const isLike = last !== undefined && last.from.join() === from.join();
      const take = isLike ? last : { from, ml: 0, weighedMl: 0, density, errorMl: 0, work: [] };
      if (!isLike) takes.push(take);
      take.errorMl = Math.hypot(take.errorMl, errorMl);
      if (work !== undefined) take.work.push(work);
      else if (isGuessed) take.weighedMl += ml;
      else take.ml += ml;
    },
  };
}
