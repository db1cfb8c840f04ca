// Tests: the Chromium that looks at reports. As a program: says in one line what to type where there is none.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, realpathSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { argv, env, exit } from 'node:process';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/**
 * Path of the browser: CHROMIUM where it is set, else the first Chromium on the search path that starts, else the copy that
 * `npm run browser` may have fetched.
 * @returns {string | undefined} undefined where there is none
 */
export function findBrowser() {
  if (env.CHROMIUM) return [env.CHROMIUM].find(starts);
  const folders = (env.PATH ?? '').split(delimiter).filter(Boolean);
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, chromium.executablePath()].find(starts);
}

/**
 * Some systems have a program of that name which only tells how to install one.
 * @param {string} path
 */
function starts(path) {
  try {
    accessSync(path, constants.X_OK);
  } catch {
    return false;
  }
  return spawnSync(path, ['--version'], { stdio: 'ignore' }).status === 0;
}

if (argv[1] && realpathSync(argv[1]) === fileURLToPath(import.meta.url) && findBrowser() === undefined) {
  console.error('The report tests need Chromium: type "npm run browser", or set CHROMIUM to its path.');
  exit(1);
}
