// The browser of the report tests: found, or got in ways that hang on the system.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { env, execPath } from 'node:process';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { afterAll, describe, expect, it } from 'vitest';
import { findBrowser } from './find-browser.mjs';
import { waysToGet } from './get-browser.mjs';

const folder = mkdtempSync(join(tmpdir(), 'halfpot-browser-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const pathOf = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

function run(script: string, more: Readonly<Record<string, string>>) {
  const { status, stdout, stderr } = spawnSync(execPath, [pathOf(script)], {
    env: { ...env, ...more },
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

describe('the browser', () => {
  const found = findBrowser() ?? '';

  it('is named where there is one', () => {
    expect(run('get-browser.mjs', {})).toEqual({
      code: 0,
      out: `Browser for the report tests: ${found}\n`,
      err: '',
    });
  });

  it('is the one of CHROMIUM and no other, if it starts', () => {
    const given = join(folder, 'given');
    symlinkSync(found, given);
    expect(run('get-browser.mjs', { CHROMIUM: given }).out).toBe(`Browser for the report tests: ${given}\n`);
    for (const broken of [join(folder, 'nothing'), '/bin/false']) {
      const { code, out, err } = run('get-browser.mjs', { CHROMIUM: broken });
      expect({ code, out }).toEqual({ code: 1, out: '' });
      expect(err).toBe(
        `CHROMIUM is ${broken}, which does not start. Correct it, or unset it to have one found.\n`,
      );
    }
  });

  it('may be a copy that was fetched for the tests', () => {
    const copies = join(folder, 'copies');
    const copy = join(copies, relative(join(homeOfCopies()), chromium.executablePath()));
    mkdirSync(dirname(copy), { recursive: true });
    symlinkSync(found, copy);
    const { out } = run('get-browser.mjs', { CHROMIUM: '', PATH: folder, PLAYWRIGHT_BROWSERS_PATH: copies });
    expect(out).toBe(`Browser for the report tests: ${copy}\n`);
  });

  it('is asked for before any test runs', () => {
    const { code, err } = run('find-browser.mjs', { CHROMIUM: '/bin/false' });
    expect(code).toBe(1);
    expect(err).toBe(
      'The report tests need Chromium: type "npm run browser", or set CHROMIUM to its path.\n',
    );
  });
});

/** Three folders above the program: the copy's own, the system's, the program. */
function homeOfCopies(): string {
  return join(chromium.executablePath(), '../../..');
}

describe('a browser that is not there', () => {
  /** Programs that would run, without their paths and switches. */
  const commandsOf = (system: Parameters<typeof waysToGet>[0]) =>
    waysToGet(system).map(({ commands }) =>
      commands.map((command) => command.map((word) => word.replace(/^.*[\\/]/, '')).join(' ')),
    );
  const fetched = 'node cli.js install chromium --no-shell';
  const quietly = 'env DEBIAN_FRONTEND=noninteractive apt-get -qq';
  const installed = (before: string) => [
    `${before}${quietly} update`,
    `${before}${quietly} install -y --no-install-recommends chromium`,
  ];

  it('comes from the system where that may be asked, else from where the tests fetch one', () => {
    expect(commandsOf({ hasApt: true, asRoot: [] })).toEqual([installed(''), [`${fetched} --with-deps`]]);
    expect(commandsOf({ hasApt: true, asRoot: ['sudo', '-n'] })).toEqual([
      installed('sudo -n '),
      [`${fetched} --with-deps`],
    ]);
  });

  it.each([
    ['no apt-get', { hasApt: false, asRoot: [] }],
    ['no rights', { hasApt: true, asRoot: undefined }],
  ])('is fetched where there is %s', (_, system) => {
    expect(commandsOf(system)).toEqual([[fetched]]);
  });
});

it('is got by the line that README tells to type, and that a fresh machine runs', () => {
  const line = 'npm ci && npm run browser && npm test';
  for (const name of ['../README.md', '../.ci/run'])
    expect(readFileSync(pathOf(name), 'utf8').split('\n'), name).toContainEqual(
      expect.stringMatching(`^${line}( |$)`),
    );
});
