// Command line: files of an earlier plan told from somebody else's. In: a folder, our names. Out: the first that is not ours.
import { open, stat } from 'node:fs/promises';
import { join } from 'node:path';

const page = /^<!doctype html>[\s\S]* – Halfpot<\/title>/i;

/** How our texts begin, also where a spreadsheet program has saved one anew. */
const beginnings: ReadonlyMap<string, RegExp> = new Map([
  ['report.html', page],
  ['shop.html', page],
  ['bench.html', page],
  ['reorder.csv', /^"?for"?[,;\t]"?entry"?[,;\t]/],
  ['plan.json', /^\{\s*"version":/],
  ['compare.html', /^<!doctype html>[\s\S]* – Halfpot<\/title>/i],
  ['compare.json', /^\{\s*"version":/],
]);

const lookedAtBytes = 4096;

/** Undefined where every file there is ours. A workbook is known by a text of ours beside it. */
export async function findForeign(folder: string, names: readonly string[]): Promise<string | undefined> {
  const verdicts = await Promise.all(
    names.map(async (name) => ({ name, isText: beginnings.has(name), isOurs: await isOurs(folder, name) })),
  );
  const there = verdicts.filter(({ isOurs }) => isOurs !== undefined);
  const hasOurs = there.some(({ isText, isOurs }) => isText && isOurs);
  return there.find(({ isText, isOurs }) => !(isText ? isOurs : hasOurs))?.name;
}

/** Undefined where there is no such file; of a workbook false, since its beginning tells nothing. */
async function isOurs(folder: string, name: string): Promise<boolean | undefined> {
  const path = join(folder, name);
  if ((await stat(path).catch(() => undefined)) === undefined) return undefined;
  return beginnings.get(name)?.test(await readStart(path).catch(() => '')) ?? false;
}

/** Without a byte order mark. */
async function readStart(path: string): Promise<string> {
  const file = await open(path);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(lookedAtBytes), 0, lookedAtBytes, 0);
    return new TextDecoder().decode(buffer.subarray(0, bytesRead));
  } finally {
    await file.close();
  }
}
