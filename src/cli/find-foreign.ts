// Command line: files of an earlier plan told from somebody else's. In: a folder, our names. Out: the first that is not ours.
import { closeSync, openSync, readSync, statSync } from 'node:fs';
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
export function findForeign(folder: string, names: readonly string[]): string | undefined {
  const verdicts = names.map((name) => ({
    name,
    isText: beginnings.has(name),
    isOurs: isOurs(join(folder, name), beginnings.get(name)),
  }));
  const there = verdicts.filter(({ isOurs }) => isOurs !== undefined);
  const hasOurs = there.some(({ isText, isOurs }) => isText && isOurs);
  return there.find(({ isText, isOurs }) => !(isText ? isOurs : hasOurs))?.name;
}

/** Undefined where there is no such file; of a workbook false, since its beginning tells nothing. */
function isOurs(path: string, beginning: RegExp | undefined): boolean | undefined {
  try {
    statSync(path);
  } catch {
    return undefined;
  }
  return beginning?.test(readStart(path)) ?? false;
}

/** Without a byte order mark; '' where it can't be read. */
function readStart(path: string): string {
  const bytes = Buffer.alloc(lookedAtBytes);
  try {
    const file = openSync(path, 'r');
    try {
      return new TextDecoder().decode(bytes.subarray(0, readSync(file, bytes, 0, lookedAtBytes, 0)));
    } finally {
      closeSync(file);
    }
  } catch {
    return '';
  }
}
