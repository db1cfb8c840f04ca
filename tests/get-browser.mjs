// Tests: `npm run browser`. Finds the browser that looks at reports, or gets one, and says in a line what it does.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { argv, env, execPath, exit, getuid, platform } from 'node:process';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './find-browser.mjs';

/**
 * @typedef {{ says: string, commands: readonly (readonly string[])[] }} Way how to get a browser: what it says of itself, and
 *   what it runs
 */

/**
 * What may be tried on a system, in turn.
 * @param {{ hasApt: boolean, asRoot: readonly string[] | undefined }} system whether it has apt-get, and what to put before a
 *   command that needs root; undefined where nothing helps
 * @returns {readonly Way[]}
 */
export function waysToGet({ hasApt, asRoot }) {
  const player = join(
    dirname(createRequire(import.meta.url).resolve('playwright-core/package.json')),
    'cli.js',
  );
  const fetch = [execPath, player, 'install', 'chromium', '--no-shell'];
  if (!hasApt || asRoot === undefined)
    return [{ says: 'No Chromium here: fetching a copy for these tests alone.', commands: [fetch] }];
  const apt = [...asRoot, 'env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', '-qq'];
  return [
    {
      says: 'No Chromium here: installing the package of that name with apt-get.',
      commands: [
        [...apt, 'update'],
        [...apt, 'install', '-y', '--no-install-recommends', 'chromium'],
      ],
    },
    {
      says: 'No Chromium among the packages: fetching a copy for these tests alone, and the packages it needs.',
      commands: [[...fetch, '--with-deps']],
    },
  ];
}

/** What happens in a system with or without Chromium, as a program would see it. */
const succeeds = (command, ...args) => spawnSync(command, args, { stdio: 'ignore' }).status === 0;

function lookAround() {
  const asRoot = getuid?.() === 0 ? [] : succeeds('sudo', '-n', 'true') ? ['sudo', '-n'] : undefined;
  return { hasApt: platform === 'linux' && succeeds('apt-get', '--version'), asRoot };
}

/** Runs commands until one fails; what they say goes to the console. */
const runAll = (commands) =>
  commands.every(([command = '', ...args]) => spawnSync(command, args, { stdio: 'inherit' }).status === 0);

function getBrowser() {
  for (const { says, commands } of waysToGet(lookAround())) {
    console.log(says);
    const found = runAll(commands) ? findBrowser() : undefined;
    if (found !== undefined) return found;
  }
  return undefined;
}

function main() {
  const found = findBrowser() ?? (env.CHROMIUM ? undefined : getBrowser());
  if (found !== undefined) {
    console.log(`Browser for the report tests: ${found}`);
    return 0;
  }
  console.error(
    env.CHROMIUM
      ? `CHROMIUM is ${env.CHROMIUM}, which does not start. Correct it, or unset it to have one found.`
      : 'No Chromium could be had. Install one, and set CHROMIUM to its path where it is not found.',
  );
  return 1;
}

if (argv[1] === fileURLToPath(import.meta.url)) exit(main());
