// Command line: files written whole or not at all. In: a folder, names and contents. Out: all of them, or none.
// Every file is first written in full beside its place, under a name of its own; only then are all put in place, while no
// other run does so: the files of a folder are always of one run.
import { randomBytes } from 'node:crypto';
import { rmSync } from 'node:fs';
import { type FileHandle, mkdir, open, readdir, rm, rmdir, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { holdFolder } from './hold-folder.js';
import { nameFault } from './name-fault.js';
import { packPieces } from './pack-pieces.js';
import { addFiles, replaceFiles } from './put-in-place.js';

export interface OutputFile {
  readonly name: string;
  /** Pieces are taken one by one, so that a large file never stands in memory. */
  readonly content: string | Uint8Array | Iterable<string>;
}

/** A day: no run takes longer, so a temporary file that old was left by one that was killed. */
const abandonedMs = 86_400_000;

const temporary = /^\.halfpot-(?:\d+-.+\.tmp|lock.*)$/;

/**
 * Makes the folder where needed, writes every file and puts them in place in the order given. The last one stands there
 * only with all the others of the same run. On any fault, or when the run is broken off, the folder is as it was. With
 * `add`, no file may be there yet. Throws a UsageError for what the caller can mend.
 */
export async function writeFiles(
  folder: string,
  files: readonly OutputFile[],
  way: 'replace' | 'add' = 'replace',
): Promise<void> {
  const own = `.halfpot-${process.pid}-${randomBytes(6).toString('hex')}`;
  const moves = files.map(({ name, content }) => ({
    content,
    temp: join(folder, `${own}-${name}.tmp`),
    old: join(folder, `${own}-old-${name}.tmp`),
    path: join(folder, name),
  }));
  const temps = moves.map(({ temp }) => temp);
  const stopWatching = removeOnSignal(temps);
  const made: string[] = [];
  try {
    await makeFolders(resolve(folder), made);
    await removeAbandoned(folder);
    // Side by side, since each waits for the disk.
    const ends = await Promise.allSettled(moves.map(({ temp, content }) => writeWhole(temp, content)));
    for (const end of ends) if (end.status === 'rejected') throw end.reason;
    await holdFolder(folder, () => (way === 'add' ? addFiles(moves) : replaceFiles(moves)));
  } catch (error) {
    for (const temp of temps) await rm(temp, { force: true }).catch(() => undefined);
    await removeMade(made);
    throw nameFault(error, folder);
  } finally {
    stopWatching();
  }
}

/** Makes what is missing of a path, from the outermost in; `made` has each folder, also where the next can't be made. */
async function makeFolders(folder: string, made: string[]): Promise<void> {
  if ((await stat(folder).catch(() => undefined)) !== undefined) return;
  if (dirname(folder) !== folder) await makeFolders(dirname(folder), made);
  try {
    await mkdir(folder);
    made.push(folder);
  } catch (error) {
    // Another run has made it meanwhile.
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  }
}

/** The folders that were made for nothing, from the innermost up, as long as nobody has put anything there. */
async function removeMade(made: readonly string[]): Promise<void> {
  for (const folder of made.toReversed()) {
    const isGone = await rmdir(folder).then(
      () => true,
      () => false,
    );
    if (!isGone) return;
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

/** So much is written before it is handed to the disk, which then has little left to do at the end. */
const handedBytes = 2 ** 25;

/** The next chunk is made while the one before it is on its way to the disk. */
async function writePieces(file: FileHandle, pieces: Iterable<string>): Promise<void> {
  let writing: Promise<void> = Promise.resolve();
  let handing: Promise<void> = Promise.resolve();
  let fresh = 0;
  for (const chunk of packPieces(pieces)) {
    await writing;
    if (fresh >= handedBytes) {
      handing = handing.then(() => file.datasync());
      // A fault is told where it is awaited; until then nobody listens.
      handing.catch(() => undefined);
      fresh = 0;
    }
    writing = writeChunk(file, chunk);
    fresh += chunk.length;
  }
  await writing;
  await handing;
}

/** In one go, where the system takes all of it: FileHandle.writeFile would come back here four times. */
async function writeChunk(file: FileHandle, chunk: Uint8Array): Promise<void> {
  for (let written = 0; written < chunk.length; ) {
    written += (await file.write(chunk, written)).bytesWritten;
  }
}

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Breaking off (Ctrl-C, being asked to end, a terminal that is closed) takes the temporary files along; gives back how to stop watching. */
function removeOnSignal(paths: readonly string[]): () => void {
  const breakOff = (signal: NodeJS.Signals): void => {
    for (const path of paths) rmSync(path, { force: true });
    stop();
    process.kill(process.pid, signal);
  };
  const stop = (): void => {
    for (const signal of signals) process.off(signal, breakOff);
  };
  for (const signal of signals) process.on(signal, breakOff);
  return stop;
}

/** What a killed run left behind. */
async function removeAbandoned(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    if (!temporary.test(name)) continue;
    const path = join(folder, name);
    const there = await stat(path).catch(() => undefined);
    if (there !== undefined && Date.now() - there.mtimeMs > abandonedMs)
      await rm(path, { recursive: true, force: true });
  }
}
