// Time: one batch, step by step: each pass over all its figures, then the next. In: rounds. Out: minutes, and whether
// any other order of work could be shorter.
import { at } from '../model/at.js';
import type { BatchTime } from '../model/time.js';

/** One pass over the first so many figures of a batch. */
export interface Round {
  /** 1 or more. Where rounds differ, the figures left out have had that pass already. */
  readonly figures: number;
  readonly brushMinPerFigure: number;
  readonly setupMin: number;
  /** Minutes before the next round may touch the same figure. */
  readonly driesMin: number;
}

/** Rounding in sums of minutes. */
const tolerance = 1e-9;

/**
 * Elapsed time of a batch painted step by step, and the least that any order of work needs. Where both agree the
 * order is proved: always for two rounds and for rounds that are all alike (Munier & Sourd 2003:
 * `n p + (k - 1) max(n p, p + d)`), and wherever nothing waits. No rounds take no time.
 */
export function timeBatch(rounds: readonly Round[]): Omit<BatchTime, 'batches'> {
  const brushMin = rounds.reduce(
    (sum, { figures, brushMinPerFigure }) => sum + figures * brushMinPerFigure,
    0,
  );
  const setupMin = rounds.reduce((sum, round) => sum + round.setupMin, 0);
  const elapsedMin = elapseStepByStep(rounds);
  const atLeastMin = Math.min(elapsedMin, boundBatch(rounds));
  const isShortest = elapsedMin - atLeastMin <= tolerance * Math.max(1, elapsedMin);
  return {
    figures: rounds.reduce((most, { figures }) => Math.max(most, figures), 0),
    brushMin,
    setupMin,
    waitingMin: waitingOf(elapsedMin, brushMin + setupMin),
    elapsedMin,
    atLeastMin,
    shortest: isShortest ? 'proved' : 'rule of thumb',
  };
}

function waitingOf(elapsedMin: number, workMin: number): number {
  const waiting = elapsedMin - workMin;
  return waiting <= tolerance * Math.max(1, elapsedMin) ? 0 : waiting;
}

/**
 * When the last stroke ends. Between figures of the same history, times of completion are convex in the place of the
 * figure (a maximum of straight lines), so following the first and last of each such run is exact: a batch of
 * thousands costs no more than one of three.
 */
function elapseStepByStep(rounds: readonly Round[]): number {
  const places = runEnds(rounds);
  const dryAt = places.map(() => 0);
  let now = 0;
  for (const { figures, brushMinPerFigure, setupMin, driesMin } of rounds) {
    now += setupMin;
    let before = 0;
    for (const [index, place] of places.entries()) {
      if (place > figures) break;
      const unhindered = now + (place - before) * brushMinPerFigure;
      now = Math.max(unhindered, at(dryAt, index) + brushMinPerFigure);
      dryAt[index] = now + driesMin;
      before = place;
    }
  }
  return now;
}

/** First and last place, from 1, of every run of figures that need the same rounds. */
function runEnds(rounds: readonly Round[]): number[] {
  const lasts = [...new Set(rounds.map(({ figures }) => figures))].sort((a, b) => a - b);
  const ends = lasts.flatMap((last, index) => [index === 0 ? 1 : at(lasts, index - 1) + 1, last]);
  return [...new Set(ends)];
}

/**
 * What no order of work can undercut. All work, one painter. And for rounds j to l: they begin after the earlier
 * rounds of some figure, with their drying; they take their own work; the later rounds of a figure follow. Rounds
 * over different figures share no such chain: then all work, or the whole way of the first figure.
 */
function boundBatch(rounds: readonly Round[]): number {
  const work = rounds.reduce((sum, { figures, brushMinPerFigure }) => sum + figures * brushMinPerFigure, 0);
  const setups = rounds.reduce((sum, { setupMin }) => sum + setupMin, 0);
  const firstSetup = rounds[0]?.setupMin ?? 0;
  const isEven = rounds.every(({ figures }) => figures === rounds[0]?.figures);
  const chains = isEven ? longestChain(rounds) : chainOfOne(rounds);
  return Math.max(work + setups, firstSetup + chains);
}

/** One figure through all rounds, alone. */
function chainOfOne(rounds: readonly Round[]): number {
  return rounds.reduce(
    (sum, { brushMinPerFigure, driesMin }, index) =>
      sum + brushMinPerFigure + (index < rounds.length - 1 ? driesMin : 0),
    0,
  );
}

/** The largest of `head of j + n x rounds j to l + tail of l`; one walk, since head and work of j to l part in two sums. */
function longestChain(rounds: readonly Round[]): number {
  const whole = chainOfOne(rounds);
  let longest = 0;
  let head = 0;
  let workBefore = 0;
  let bestStart = 0;
  for (const { figures, brushMinPerFigure, driesMin } of rounds) {
    bestStart = Math.max(bestStart, head - workBefore);
    workBefore += figures * brushMinPerFigure;
    longest = Math.max(longest, bestStart + workBefore + whole - head - brushMinPerFigure);
    head += brushMinPerFigure + driesMin;
  }
  return longest;
}
