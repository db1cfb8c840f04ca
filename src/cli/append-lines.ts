// Command line: lines added to a file that others may be adding to. In: a path, how to make the bytes. Out: all of them at
// the end of the file, or none. One write at the end of a file is not mixed with another's; a new file is written in full
// under a name of its own and then linked into place, which only one of several can do.
import { constants } from 'node:fs';
import { type FileHandle, link, open, readdir, readFile, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { UsageError } from './end-run.js';
import { nameFault } from './name-fault.js';

/** Gives the bytes for the end of a file, from those that it holds; undefined: there is no file yet. */
type MakeBytes = (held: Uint8Array | undefined) => Uint8Array;

/** Every turn that fails means that another program made or took away the file just then. */
const mostTurns = 20;

/** An empty file may be one that another program is just filling. */
const emptyWaitMs = 100;

/**
 * Returns when the bytes are on the disk. Throws a UsageError for what the caller can mend, and then the file is as
 * it was. A process that is killed leaves the file with all the bytes or with none, or, where they go over the edge of a page of
 * memory, with those before it.
 */
export async function appendLines(path: string, makeBytes: MakeBytes): Promise<void> {
  try {
    await removeLeftovers(path);
    for (let turn = 0; turn < mostTurns; turn += 1) {
      const held = await readFile(path).catch(unless('ENOENT'));
      if (held?.length === 0 && turn === 0) {
        await wait(emptyWaitMs);
        continue;
      }
      const bytes = makeBytes(held);
      if (held === undefined ? await makeFile(path, bytes) : await addTo(path, held, bytes)) return;
    }
  } catch (error) {
    throw nameFault(error, path);
  }
  throw new UsageError(
    `Cannot write to ${path}: it comes and goes. Try again when no other program is at it.`,
  );
}

/** For one fault undefined; any other is thrown. */
function unless(...codes: readonly string[]): (error: NodeJS.ErrnoException) => undefined {
  return (error) => {
    if (!codes.includes(error.code ?? '')) throw error;
    return undefined;
  };
}

/** False where the file is gone. */
async function addTo(path: string, held: Uint8Array, bytes: Uint8Array): Promise<boolean> {
  const file = await open(path, constants.O_WRONLY | constants.O_APPEND).catch(unless('ENOENT'));
  if (file === undefined) return false;
  try {
    const { bytesWritten } = await file.write(bytes);
    if (bytesWritten < bytes.length) await takeBack(file, held.length, bytesWritten);
    await file.sync();
  } finally {
    await file.close();
  }
  return true;
}

/** The disk was full in the middle of a line: what went in comes out, unless another program has written after it. */
async function takeBack(file: FileHandle, heldBytes: number, written: number): Promise<never> {
  const { size } = await file.stat();
  if (size === heldBytes + written) await file.truncate(heldBytes);
  throw Object.assign(new Error('no space left'), { code: 'ENOSPC' });
}

/** False where another program has made the file meanwhile; its own lines stay. */
async function makeFile(path: string, bytes: Uint8Array): Promise<boolean> {
  const temp = join(dirname(path), `.halfpot-${process.pid}-${basename(path)}.tmp`);
  try {
    await writeNew(temp, bytes);
    const linked = await link(temp, path).then(
      () => true,
      (error: NodeJS.ErrnoException) => (error.code === 'EEXIST' ? false : undefined),
    );
    // Some disks know no links; there the file is made and filled in two steps.
    return linked ?? (await writeNew(path, bytes).then(() => true, unless('EEXIST'))) ?? false;
  } finally {
    await rm(temp, { force: true });
  }
}

async function writeNew(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** What a run that was killed left behind; that of one at work stays. */
async function removeLeftovers(path: string): Promise<void> {
  const ending = `-${basename(path)}.tmp`;
  for (const name of await readdir(dirname(path))) {
    const [, pid] = /^\.halfpot-(\d+)-/.exec(name) ?? [];
    if (pid === undefined || !name.endsWith(ending) || isAtWork(Number(pid))) continue;
    await rm(join(dirname(path), name), { force: true });
  }
}

/** Another process of that number; our own has written nothing yet. */
function isAtWork(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return !(error instanceof Error && 'code' in error && error.code === 'ESRCH');
  }
}
