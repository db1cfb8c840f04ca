// Command line: files that are written are put where they belong. In: where each is and belongs. Out: all there, or none.
// Nothing here waits, so that no signal comes in between; a process that is killed leaves each file whole or absent.
import { linkSync, lstatSync, renameSync, rmSync } from 'node:fs';

export interface Move {
  /** Where it is written. */
  readonly temp: string;
  readonly path: string;
  /** The name of an older file there until all is done. */
  readonly old: string;
}

/**
 * Puts files over older ones, in their order. First the older last file goes aside, so that at every moment the last file
 * stands there only with all others of the same set; the others stay until their own moment. On any fault, as when another
 * program holds one of them, all older ones come back.
 */
export function replaceFiles(moves: readonly Move[]): void {
  const kept = new Set<Move>();
  const placed: Move[] = [];
  try {
    for (const move of moves.toReversed()) {
      if (isThere(move.path)) kept.add(move === moves.at(-1) ? setAside(move) : keepOld(move));
    }
    for (const move of moves) placed.push(place(move));
  } catch (error) {
    takeBack(placed.filter((move) => !kept.has(move)));
    for (const { old, path } of [...kept].toReversed()) attempt(() => renameSync(old, path));
    throw error;
  } finally {
    // Also on the way back: a file that had not gone yet has two names now.
    for (const { old } of kept) attempt(() => rmSync(old, { force: true }));
  }
}

/** A file stands where one was to be added. */
export class TakenError extends Error {
  constructor(readonly path: string) {
    super(`${path} is already there`);
  }
}

/** Puts files where none may be yet. Throws a TakenError for the first that is; then none is put in place. */
export function addFiles(moves: readonly Move[]): void {
  const placed: Move[] = [];
  try {
    for (const move of moves) placed.push(placeNew(move));
  } catch (error) {
    takeBack(placed);
    throw error;
  }
}

/** Under a second name; where the disk knows none, it goes aside. */
function keepOld(move: Move): Move {
  try {
    linkSync(move.path, move.old);
    return move;
  } catch {
    return setAside(move);
  }
}

function setAside(move: Move): Move {
  renameSync(move.path, move.old);
  return move;
}

function place(move: Move): Move {
  renameSync(move.temp, move.path);
  return move;
}

function takeBack(placed: readonly Move[]): void {
  for (const { path } of placed) attempt(() => rmSync(path, { force: true }));
}

/** Only a link makes the system refuse what has come into being this moment. */
function placeNew(move: Move): Move {
  const { temp, path } = move;
  if (isThere(path)) throw new TakenError(path);
  try {
    linkSync(temp, path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') throw new TakenError(path);
    // Some disks know no links.
    return place(move);
  }
  rmSync(temp, { force: true });
  return move;
}

/** A link to nothing is there too. */
const isThere = (path: string): boolean => lstatSync(path, { throwIfNoEntry: false }) !== undefined;

/** On the way back from a fault every step is tried, whatever became of the one before. */
function attempt(step: () => void): void {
  try {
    step();
  } catch {
    // The first fault is told; this one would only hide it.
  }
}
