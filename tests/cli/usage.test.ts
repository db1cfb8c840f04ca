import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { makeFolder, runHalfpot } from './run-halfpot.js';

describe('usage', () => {
  it('prints help, on the whole and for each command, and gives 0', () => {
    const { code, out, err } = runHalfpot(['--help']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const word of ['start', 'check', 'plan', 'Exit codes']) expect(out).toContain(word);
    expect(runHalfpot(['plan', '--help']).out).toContain('--date');
  });

  it('ends the help of each command in an example that works', () => {
    const [, listed = ''] = runHalfpot(['--help']).out.split(/Commands:|Example:/);
    const commands = [...listed.matchAll(/^ {2}([a-z]+)/gm)].map(([, name = '']) => name);
    expect(commands).toEqual(expect.arrayContaining(['start', 'check', 'plan']));
    const cwd = makeFolder();
    // As listed: start comes first and makes the sheets that the others read.
    for (const command of commands) {
      const [, typed = ''] = /Example:\n {2}halfpot (.+)/.exec(runHalfpot([command, '--help']).out) ?? [];
      const args = [...typed.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
      expect(args[0], command).toBe(command);
      expect(runHalfpot(args, { cwd }), typed).toMatchObject({ code: 0 });
    }
  });

  it('prints the version of the package', () => {
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
    expect(runHalfpot(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });

  it.each([
    ['nothing', []],
    ['an unknown command', ['paint']],
    ['an unknown flag', ['plan', '--fast']],
    ['a flag without its value', ['plan', '--out']],
    ['one word too many', ['check', 'a', 'b']],
    ['start without a folder', ['start']],
    ['a flag given twice', ['log', '.', '--paint', 'Oat', '--paint', 'Rye', '--used', '1']],
    ['a flag of plan given twice', ['plan', '--out', 'a', '--out', 'b']],
  ])('gives 2 for %s, with nothing on stdout', (_, args) => {
    const { code, out, err } = runHalfpot(args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).not.toBe('');
    expect(err).not.toMatch(/\n {4}at /);
  });

  it('says which flag is given twice', () => {
    const { err } = runHalfpot(['log', '.', '--paint', 'Oat', '--paint', 'Rye', '--used', '1']);
    expect(err).toBe(
      `error: option '--paint <name>' argument 'Rye' is invalid. It is given twice, also as "Oat".\n(halfpot --help lists what there is.)\n`,
    );
  });
});
