// Command line: one run at a time puts files into a folder. In: the folder, what to do there. Out: it is done.
// The lock is a small folder that stands for milliseconds and says who made it. It comes and goes by renaming, which the
// system does whole or not at all, on every kind of disk.
import { randomBytes } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { UsageError } from './end-run.js';

const lockName = '.halfpot-lock';

/** A run holds the folder for milliseconds; one that takes so long has stopped. */
const longestWaitMs = 10_000;
/** After this a lock is broken, though its maker may be at work: it may be on another machine, where nobody can ask. */
const deadAfterMs = 600_000;
const turnMs = 15;

/** Locks of this very process: another run may have had its number before. */
const held = new Set<string>();

/**
 * Does `act` while no other run does so in the same folder; waits for that, and takes over what a killed run left. `act`
 * must not wait for anything itself. Throws a UsageError where another run goes on and on.
 */
export async function holdFolder(folder: string, act: () => void, waitMs = longestWaitMs): Promise<void> {
  const release = await takeLock(join(folder, lockName), Date.now() + waitMs);
  try {
    act();
  } finally {
    release();
  }
}

/** Gives back how to release it. */
async function takeLock(lock: string, until: number): Promise<() => void> {
  const token = randomBytes(6).toString('hex');
  const temp = join(dirname(lock), `.halfpot-${process.pid}-${token}-lock.tmp`);
  try {
    mkdirSync(temp);
    writeFileSync(join(temp, 'owner'), `${process.pid} ${token} ${hostname()}`);
    held.add(token);
    while (!renamed(temp, lock)) {
      const owner = readOwner(lock);
      if (owner !== undefined && isDead(owner)) await breakLock(lock, owner, until);
      else if (Date.now() > until)
        throw new UsageError(`Another run is writing to ${dirname(lock)}. Try again when it is done.`);
      else await wait(turnMs);
    }
  } catch (error) {
    held.delete(token);
    rmSync(temp, { recursive: true, force: true });
    throw error;
  }
  return () => {
    // One that stood too long may have been broken, and be another run's by now.
    if (readOwner(lock)?.token === token) removeLock(lock, temp);
    held.delete(token);
  };
}

/** False where a lock stands there already: a folder that holds something gives way to no other. */
function renamed(temp: string, lock: string): boolean {
  try {
    renameSync(temp, lock);
    return true;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : undefined;
    // The last two are what Windows says.
    const isTaken = ['ENOTEMPTY', 'EEXIST', 'EPERM', 'EACCES'].includes(String(code));
    if (!isTaken || (statSync(lock, { throwIfNoEntry: false }) === undefined && code === 'EACCES'))
      throw error;
    return false;
  }
}

interface Owner {
  readonly pid: number;
  readonly token: string;
  readonly host: string;
  readonly ageMs: number;
}

/** Undefined where the lock has gone meanwhile. */
function readOwner(lock: string): Owner | undefined {
  try {
    const path = join(lock, 'owner');
    const [pid, token = '', host = ''] = readFileSync(path, 'utf8').split(' ');
    return { pid: Number(pid), token, host, ageMs: Date.now() - statSync(path).mtimeMs };
  } catch {
    return undefined;
  }
}

function isDead({ pid, token, host, ageMs }: Owner): boolean {
  if (ageMs > deadAfterMs) return true;
  if (host !== hostname()) return false;
  if (pid === process.pid) return !held.has(token);
  try {
    process.kill(pid, 0);
    return false;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'ESRCH';
  }
}

/**
 * Removes the lock of a dead run, and none that came after it: only who holds the lock on breaking that very lock may do
 * so. Should that one be killed too, its own lock is broken in the same way.
 */
async function breakLock(lock: string, { token }: Owner, until: number): Promise<void> {
  const release = await takeLock(`${lock}-${/^\w+$/.test(token) ? token : 'odd'}`, until);
  try {
    if (readOwner(lock)?.token === token)
      removeLock(lock, join(dirname(lock), `.halfpot-${process.pid}-${token}-dead.tmp`));
  } finally {
    release();
  }
}

/** First out of the way, then away: at no moment does a lock stand there without its owner. */
function removeLock(lock: string, temp: string): void {
  renameSync(lock, temp);
  rmSync(temp, { recursive: true, force: true });
}
