// Time: a stretch of one round on one evening. In: a batch, the time left. Out: how many figures fit, and when they are dry.
import { nextRound, type OpenBatch } from './queue-batches.js';
import type { BatchRound } from './time-job.js';

/** What of an evening is used, and what it holds. */
export interface Clock {
  readonly eveningMin: number;
  readonly now: number;
  /** Palettes with which something was sprayed this evening. */
  readonly sprayedWith: ReadonlySet<string>;
}

export interface Stretch {
  readonly figures: number;
  readonly setupMin: number;
  readonly minutes: number;
}

const margin = 1e-9;

/**
 * Minutes of setup before a batch can go on: none while its paint is out since an earlier coat this evening, nor for
 * a spray with which something else was sprayed this evening.
 */
export function setupOf(batch: OpenBatch, clock: Clock): number {
  const round = nextRound(batch);
  if (round === undefined) return 0;
  const { coat, spray, palette } = round.pass;
  if (batch.paintOut === paintOf(round) || (spray && clock.sprayedWith.has(palette))) return 0;
  // Setup stands with the first coat; a later one that begins an evening needs it again.
  return batch.rounds[batch.next - (coat - 1)]?.setupMin ?? round.setupMin;
}

/** Names the paint that is out for a round. */
export const paintOf = ({ pass }: BatchRound): string => `${pass.step}\n${pass.palette}`;

/**
 * What of a batch's next round fits from `now`: all of it, or so many whole figures that painting takes at least as
 * long as its setup; undefined where it is not worth beginning. With a whole evening before one, something always
 * fits, if need be a part of a figure, and setup takes half the evening at most.
 */
export function fitRound(batch: OpenBatch, clock: Clock): Stretch | undefined {
  const round = nextRound(batch);
  if (round === undefined) return undefined;
  const isFresh = clock.now === 0;
  const setupMin = isFresh ? Math.min(setupOf(batch, clock), clock.eveningMin / 2) : setupOf(batch, clock);
  const paintMin = clock.eveningMin - clock.now - setupMin;
  const most = figuresIn(paintMin, round.brushMinPerFigure);
  const whole = Math.floor(most + margin);
  const figures = Math.min(batch.left, isFresh && whole < 1 ? most : whole);
  const isWorthIt = figures * round.brushMinPerFigure >= setupMin;
  if (figures < batch.left && !isFresh && (figures < 1 || !isWorthIt)) return undefined;
  if (figures <= 0) return undefined;
  return { figures, setupMin, minutes: setupMin + figures * round.brushMinPerFigure };
}

function figuresIn(minutes: number, perFigure: number): number {
  if (minutes < -margin) return 0;
  return perFigure > 0 ? Math.max(0, minutes) / perFigure : Number.POSITIVE_INFINITY;
}

/**
 * The earliest minute at which the round after this stretch may begin its setup so that no figure of it waits:
 * both the first figure of the stretch and the last must be dry when their turn comes.
 */
export function readyAfter(batch: OpenBatch, stretch: Stretch, end: number): number {
  const round = nextRound(batch);
  const next = batch.rounds[batch.next + 1];
  if (round === undefined || next === undefined) return 0;
  const before = round.figures - stretch.figures;
  const last = Math.max(1, Math.min(round.figures, next.figures));
  // A spray may be set up already, so its setup is not counted on to pass the time.
  const setupMin = next.pass.spray ? 0 : next.setupMin;
  const firstDry = end - (stretch.figures - 1) * round.brushMinPerFigure + round.driesMin;
  const lastDry = end + round.driesMin;
  const beforeFirst = before * next.brushMinPerFigure;
  const beforeLast = (last - 1) * next.brushMinPerFigure;
  return Math.max(0, firstDry - beforeFirst - setupMin, lastDry - beforeLast - setupMin);
}
