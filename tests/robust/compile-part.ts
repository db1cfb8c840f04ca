// Robust: one file of the program and what it imports, compiled for processes of their own. The program itself is built as
// one file, of which a test can't run a part.
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rolldown } from 'rolldown';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Compiles `src/...ts` into a folder; gives the path of the module there. Types are checked elsewhere. */
export async function compilePart(source: string, folder: string): Promise<string> {
  const made = join(folder, basename(source).replace(/\.ts$/, '.mjs'));
  const bundle = await rolldown({ input: join(root, source), platform: 'node' });
  await bundle.write({ file: made, format: 'es' });
  await bundle.close();
  return made;
}
