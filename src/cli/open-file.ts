// Command line: a page opened with the system's own program. In: its path. Out: nothing; the path is said where that fails.
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { env, platform, stderr } from 'node:process';
import { pathToFileURL } from 'node:url';
import { showPlain } from './show-plain.js';

/** What opens a file on a system, and what is handed to it. No shell is asked: it would read `&` and `%` in a name as its own. */
export function openerOf(system: string, path: string): readonly [program: string, ...handed: string[]] {
  if (system === 'win32') return ['rundll32.exe', 'url.dll,FileProtocolHandler', pathToFileURL(path).href];
  return [system === 'darwin' ? 'open' : 'xdg-open', path];
}

/** An opener that is still at work by then has a window open. */
const patienceMs = 3000;

/** Opens a page, or says where it is; the error stream is told, since plan.json may be on the other. */
export async function openOrSay(path: string): Promise<void> {
  if (!(await openFile(path)))
    stderr.write(`Nothing here opens it by itself. Open ${showPlain(resolve(path))} in a browser.\n`);
}

/** False where the system has no opener, or it says that it failed. */
async function openFile(path: string): Promise<boolean> {
  const [name, ...handed] = openerOf(platform, resolve(path));
  const program = findProgram(name);
  if (program === undefined) return false;
  return new Promise((answer) => {
    const opener = spawn(program, handed, { stdio: 'ignore', detached: true });
    const patience = setTimeout(() => answer(true), patienceMs);
    const say = (isOpen: boolean): void => {
      clearTimeout(patience);
      answer(isOpen);
    };
    opener.on('error', () => say(false));
    opener.on('exit', (code) => say(code === 0));
    opener.unref();
  });
}

/** The first on PATH; never in the current folder. */
const findProgram = (name: string): string | undefined =>
  (env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => folder !== '')
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path));
