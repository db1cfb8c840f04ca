// Readers: the model files that figures name. In: the path of the sheets, names. Out: each measured, or why not.
import { realpath, stat } from 'node:fs/promises';
import { dirname, isAbsolute, join, relative, resolve, sep } from 'node:path';
import type { ModelFile, ModelFiles } from '../../model-file.js';
import { measureFile } from './measure-file.js';

/** One after the other: each may take much of the memory that there is. `path` is the folder of the sheets, or a workbook. */
export async function readModels(path: string, names: Iterable<string>): Promise<ModelFiles> {
  const folder = (await stat(path)).isDirectory() ? path : dirname(resolve(path));
  const files = new Map<string, ModelFile>();
  for (const name of names) {
    const found = await findBeside(folder, name);
    files.set(name, typeof found === 'string' ? await measureFile(found) : found);
  }
  return files;
}

/** Its path; a fault where it is not there, or where its name or a link leads out of the folder. */
async function findBeside(folder: string, name: string): Promise<string | ModelFile> {
  const outside: ModelFile = { fault: 'model-outside', detail: '' };
  const written = name.replaceAll('\\', '/');
  if (isAbsolute(written) || /^[a-z]:/i.test(written) || written.split('/').includes('..')) return outside;
  try {
    const real = await realpath(join(folder, written));
    const way = relative(await realpath(folder), real);
    return way.startsWith(`..${sep}`) || isAbsolute(way) ? outside : real;
  } catch {
    return { fault: 'model-missing', detail: '' };
  }
}
