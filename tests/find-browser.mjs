// Tests: the Chromium that looks at reports. As a program: says in one line what to type where there is none.
import { accessSync, constants, realpathSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { argv, env, exit } from 'node:process';
import { fileURLToPath } from 'node:url';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/**
 * Path of the browser: CHROMIUM where it is set, else the first Chromium on the search path.
 * @returns {string | undefined} undefined where there is none
 */
export function findBrowser() {
  if (env.CHROMIUM) return isProgram(env.CHROMIUM) ? env.CHROMIUM : undefined;
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  return folders.flatMap((folder) => names.map((name) => join(folder, name))).find(isProgram);
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

if (argv[1] && realpathSync(argv[1]) === fileURLToPath(import.meta.url) && findBrowser() === undefined) {
  console.error(
    'The report tests need Chromium: type "sudo apt-get install chromium", or set CHROMIUM to its path.',
  );
  exit(1);
}
