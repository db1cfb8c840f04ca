// Command line: files written whole or not at all. In: a folder, names and contents. Out: all of them, or none.
// Every file is first written in full beside its place, under a name of its own; only then are all put in place.
import { rmSync } from 'node:fs';
import { type FileHandle, mkdir, open, readdir, rename, rm, rmdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { nameFault } from './name-fault.js';
import { packPieces } from './pack-pieces.js';

export interface OutputFile {
  readonly name: string;
  /** Pieces are taken one by one, so that a large file never stands in memory. */
  readonly content: string | Uint8Array | Iterable<string>;
}

/** A day: no run takes longer, so a temporary file that old was left by one that was killed. */
const abandonedMs = 86_400_000;

const temporary = /^\.halfpot-\d+-.+\.tmp$/;

/**
 * Makes the folder where needed, writes every file and puts them in place in the order given. On any fault, or when
 * the run is broken off, no temporary file stays. Throws a UsageError for what the caller can mend.
 */
export async function writeFiles(folder: string, files: readonly OutputFile[]): Promise<void> {
  const moves = files.map(({ name, content }) => ({
    content,
    temp: join(folder, `.halfpot-${process.pid}-${name}.tmp`),
    path: join(folder, name),
  }));
  const temps = moves.map(({ temp }) => temp);
  const stopWatching = removeOnSignal(temps);
  let made: string | undefined;
  try {
    made = await mkdir(folder, { recursive: true });
    await removeAbandoned(folder);
    for (const { temp, content } of moves) await writeWhole(temp, content);
    for (const { temp, path } of moves) await rename(temp, path);
  } catch (error) {
    for (const temp of temps) await rm(temp, { force: true }).catch(() => undefined);
    if (made !== undefined) await rmdir(folder).catch(() => undefined);
    throw nameFault(error, folder);
  } finally {
    stopWatching();
  }
}

/** Written and handed to the disk, so that a power cut after the renaming cannot leave an empty file. */
async function writeWhole(path: string, content: OutputFile['content']): Promise<void> {
  const file = await open(path, 'wx');
  try {
    if (typeof content === 'string' || content instanceof Uint8Array) await file.writeFile(content);
    else await writePieces(file, content);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** The next chunk is made while the one before it is on its way to the disk. */
async function writePieces(file: FileHandle, pieces: Iterable<string>): Promise<void> {
  let underWay: Promise<void> = Promise.resolve();
  for (const chunk of packPieces(pieces)) {
    await underWay;
    underWay = file.writeFile(chunk);
  }
  await underWay;
}

/** Breaking off (Ctrl-C, or being asked to end) takes the temporary files along; gives back how to stop watching. */
function removeOnSignal(paths: readonly string[]): () => void {
  const breakOff = (signal: NodeJS.Signals): void => {
    for (const path of paths) rmSync(path, { force: true });
    stop();
    process.kill(process.pid, signal);
  };
  const stop = (): void => {
    process.off('SIGINT', breakOff);
    process.off('SIGTERM', breakOff);
  };
  process.on('SIGINT', breakOff);
  process.on('SIGTERM', breakOff);
  return stop;
}

/** What a killed run left behind. */
async function removeAbandoned(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    if (!temporary.test(name)) continue;
    const path = join(folder, name);
    const there = await stat(path).catch(() => undefined);
    if (there !== undefined && Date.now() - there.mtimeMs > abandonedMs) await rm(path, { force: true });
  }
}
