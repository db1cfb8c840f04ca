// Readers: what was measured on model files, kept for the next time. In: a file's content, as its hash. Out: its measures.
// Everything here may be missing or deleted: then a file is measured again, to the same figures.
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { env, pid, platform } from 'node:process';
import { type MeasuredModel, type MeasuredPiece, mostSkyPercent } from '../../../model/measured.js';

/** The user's folder for what can be made again: XDG Base Directory 0.8 where it is named, else as each system has it. */
export function cacheFolder(): string {
  const named = env.XDG_CACHE_HOME;
  if (named?.startsWith('/')) return join(named, 'halfpot');
  if (platform === 'win32')
    return join(env.LOCALAPPDATA ?? join(homedir(), 'AppData/Local'), 'halfpot/cache');
  return join(homedir(), platform === 'darwin' ? 'Library/Caches' : '.cache', 'halfpot');
}

const pathOf = (key: string): string => join(cacheFolder(), 'models', `${key}.json`);

/** Undefined where nothing is kept, or what is kept is not whole. */
export async function readKept(key: string): Promise<MeasuredModel | undefined> {
  try {
    const kept: unknown = JSON.parse(await readFile(pathOf(key), 'utf8'));
    return isMeasured(kept) ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Whole or not at all; a folder that cannot be written keeps nothing. */
export async function keepMeasured(key: string, model: MeasuredModel): Promise<void> {
  const path = pathOf(key);
  try {
    await mkdir(join(cacheFolder(), 'models'), { recursive: true });
    await writeFile(`${path}.${pid}`, JSON.stringify(model));
    await rename(`${path}.${pid}`, path);
  } catch {
    // The next plan measures it again.
  }
}

function isMeasured(kept: unknown): kept is MeasuredModel {
  const { high, up, triangles, flat, unreal, isInsideOut, unitMm, pieces } = (kept ?? {}) as MeasuredModel;
  return (
    [high, triangles, flat, unreal, unitMm ?? 1].every((number) => Number.isFinite(number)) &&
    ['x', 'y', 'z'].includes(up) &&
    typeof isInsideOut === 'boolean' &&
    Array.isArray(pieces) &&
    pieces.every(isPiece)
  );
}

function isPiece({ part, isSole, area, points, open, hidden }: MeasuredPiece): boolean {
  const areCounts = (counts: unknown): boolean =>
    Array.isArray(counts) && counts.length === mostSkyPercent + 1 && counts.every(Number.isInteger);
  return (
    typeof part === 'string' &&
    typeof isSole === 'boolean' &&
    Number.isFinite(area) &&
    Number.isInteger(points) &&
    areCounts(open) &&
    areCounts(hidden)
  );
}
