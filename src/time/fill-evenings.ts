// Time: the work cut into evenings of one painter. In: units in painting order, minutes of an evening. Out: evenings,
// piece by piece, and on which of them each unit is finished.
import type { Unit } from '../model/sheets.js';
import type { Evening, EveningPiece } from '../model/time.js';
import { type Bench, chooseBatch, closeBatch, openBench, soonestReady } from './choose-batch.js';
import { type Clock, fitRound, paintOf, readyAfter, type Stretch } from './paint-round.js';
import { nextRound, type OpenBatch, type UnitWork } from './queue-batches.js';

/** Goes that are spelled out, one being a pass over a batch or part of it: years of evenings for one painter. */
const mostGoes = 5000;

export interface FilledEvenings {
  readonly evenings: readonly Evening[];
  readonly doneOn: ReadonlyMap<Unit, number>;
  /** Brush minutes in `evenings`. */
  readonly brushMin: number;
  /** False where the army has more work than is spelled out. */
  readonly complete: boolean;
}

/**
 * Step by step, first units first; while one batch dries, the next that is dry goes on. When all of the first unit's
 * batches have come to a spray (units of one priority together), it is sprayed, and whatever else awaits the same spray
 * joins. Overnight everything dries; a pass that does not fit is carried on the next evening. A rule of thumb: no claim
 * that fewer evenings are impossible. No work, no evenings.
 */
export function fillEvenings(works: readonly UnitWork[], eveningMin: number): FilledEvenings {
  const bench = openBench(works);
  const evenings: Evening[] = [];
  const doneOn = new Map<Unit, number>();
  let goes = 0;
  let brushMin = 0;
  for (;;) {
    const evening = fillEvening(bench, eveningMin, mostGoes - goes);
    if (evening.pieces.length === 0) return { evenings, doneOn, brushMin, complete: true };
    goes += evening.goes;
    if (goes >= mostGoes) return { evenings, doneOn, brushMin, complete: false };
    brushMin += evening.brushMin;
    evenings.push({ pieces: evening.pieces, minutes: Math.min(evening.now, eveningMin) });
    for (const unit of evening.finished) doneOn.set(unit, evenings.length);
  }
}

/** An evening while it is being filled. */
interface Tonight extends Clock {
  now: number;
  readonly sprayedWith: Set<string>;
  readonly pieces: EveningPiece[];
  readonly finished: Unit[];
  goes: number;
  brushMin: number;
}

function fillEvening(bench: Bench, eveningMin: number, mostOfGoes: number): Tonight {
  const sprayedWith = new Set<string>();
  const tonight: Tonight = {
    eveningMin,
    now: 0,
    sprayedWith,
    pieces: [],
    finished: [],
    goes: 0,
    brushMin: 0,
  };
  bench.spraying = undefined;
  for (const batch of bench.open) Object.assign(batch, { readyAt: 0, paintOut: '' });
  let isGoingOn = true;
  while (isGoingOn && tonight.goes < mostOfGoes) isGoingOn = goOn(bench, tonight);
  return tonight;
}

/** Paints some figures of a batch, or waits till one is dry; false where the evening holds nothing more. */
function goOn(bench: Bench, tonight: Tonight): boolean {
  const batch = chooseBatch(bench, tonight);
  const stretch = batch === undefined ? undefined : fitRound(batch, tonight);
  if (batch !== undefined && stretch !== undefined) {
    paint(bench, tonight, { batch, stretch });
    return true;
  }
  const later = soonestReady(bench, tonight);
  if (later === undefined) return false;
  addPiece(tonight.pieces, { what: 'waiting', minutes: later - tonight.now });
  tonight.now = later;
  return true;
}

interface Go {
  readonly batch: OpenBatch;
  readonly stretch: Stretch;
}

function paint(bench: Bench, tonight: Tonight, { batch, stretch }: Go): void {
  const pass = nextRound(batch)?.pass;
  if (pass === undefined) return;
  const what = pass.spray ? 'spraying' : 'painting';
  addPiece(tonight.pieces, { what, unit: batch.unit.unit, pass, ...stretch });
  if (pass.spray) tonight.sprayedWith.add(pass.palette);
  tonight.now += stretch.minutes;
  tonight.brushMin += stretch.minutes - stretch.setupMin;
  tonight.goes++;
  advance(batch, stretch, tonight.now);
  if (nextRound(batch) === undefined && closeBatch(bench, batch)) tonight.finished.push(batch.unit);
}

/** Moves a batch on by what was painted of it. */
function advance(batch: OpenBatch, stretch: Stretch, now: number): void {
  const round = nextRound(batch);
  if (round === undefined) return;
  batch.paintOut = paintOf(round);
  batch.left -= stretch.figures;
  if (batch.left > 1e-9) {
    batch.readyAt = now;
    return;
  }
  batch.readyAt = readyAfter(batch, stretch, now);
  batch.next++;
  batch.left = nextRound(batch)?.figures ?? 0;
}

/** The same once more (more waiting, or the same pass of the same unit) makes the last piece longer. */
function addPiece(pieces: EveningPiece[], piece: EveningPiece): void {
  const last = pieces.at(-1);
  const longer = last === undefined ? undefined : joined(last, piece);
  if (longer === undefined) pieces.push(piece);
  else pieces[pieces.length - 1] = longer;
}

function joined(last: EveningPiece, piece: EveningPiece): EveningPiece | undefined {
  const minutes = last.minutes + piece.minutes;
  if (last.what === 'waiting' || piece.what === 'waiting') {
    return last.what === piece.what ? { ...last, minutes } : undefined;
  }
  if (last.pass !== piece.pass || last.unit !== piece.unit) return undefined;
  const figures = last.figures + piece.figures;
  return { ...last, minutes, figures, setupMin: last.setupMin + piece.setupMin };
}
