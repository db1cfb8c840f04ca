import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { runHalfpot } from './run-halfpot.js';

describe('usage', () => {
  it('prints help, on the whole and for each command, and gives 0', () => {
    const { code, out, err } = runHalfpot(['--help']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const word of ['start', 'check', 'plan', 'Exit codes']) expect(out).toContain(word);
    expect(runHalfpot(['plan', '--help']).out).toContain('--date');
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
  ])('gives 2 for %s, with nothing on stdout', (_, args) => {
    const { code, out, err } = runHalfpot(args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).not.toBe('');
    expect(err).not.toMatch(/\n {4}at /);
  });
});
