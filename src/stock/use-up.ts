// Stock: what the log took from the shelf. In: the pots of a paint in the order in which they are used up, its log rows.
// Out: the pots with what is left in them, and what of that is only estimated.
import { gramsPerUsableMl, usedErrorMl, usedMlOf } from '../assumptions/weigh-use.js';
import { type Assumptions, weakestMark } from '../model/assumption.js';
import type { LogRow, Paint } from '../model/sheets.js';
import type { PastWork, ShelfPot, UnmeasuredUse } from '../model/stock.js';

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
  readonly unmeasured: UnmeasuredUse | undefined;
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
    diary.note(from, ml, work);
    for (const place of takeOff(levels, from, ml)) widen(levels[place], diary.pots?.[place], errorMl, work);
  });
  return {
    pots: levels.filter((_, place) => pots[place]?.until === Number.POSITIVE_INFINITY),
    unmeasured: diary.pots && { pots: diary.pots, takes: diary.takes },
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

function widen(level: Level | undefined, before: Level | undefined, errorMl: number, work?: PastWork): void {
  for (const pot of [level, before]) if (pot) pot.readingErrorMl = Math.hypot(pot.readingErrorMl, errorMl);
  if (level && work) level.mark = weakestMark([level.mark, ...work.lines.map(({ mark }) => mark)]);
}

interface Take {
  readonly from: readonly number[];
  ml: number;
  readonly work: PastWork[];
}

/** Begins with the first use that nobody measured: until then the levels alone say it all. */
function openDiary(levels: readonly Level[], lives: readonly LivingPot[]) {
  const takes: Take[] = [];
  let pots: (Level & { readonly isGone: boolean })[] | undefined;
  return {
    takes,
    get pots() {
      return pots;
    },
    note(from: readonly number[], ml: number, work: PastWork | undefined): void {
      if (pots === undefined && work === undefined) return;
      pots ??= levels.map((level, at) => ({
        ...level,
        isGone: lives[at]?.until !== Number.POSITIVE_INFINITY,
      }));
      const last = takes.at(-1);
      const isLike = last !== undefined && last.from.join() === from.join();
      const take = isLike ? last : { from, ml: 0, work: [] };
      if (!isLike) takes.push(take);
      if (work === undefined) take.ml += ml;
      else take.work.push(work);
    },
  };
}
