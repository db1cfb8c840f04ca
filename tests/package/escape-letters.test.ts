// Sources in ASCII alone: run, they give what they gave before. Escapes as ECMA-262 has them (12.9.4 strings, 12.9.6 templates,
// 22.2.1 patterns).
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { escapeLetters } from '../../.build/escape-letters.mjs';

const program = fileURLToPath(new URL('../../dist/program/', import.meta.url));

describe('letters beyond ASCII', () => {
  it.each([
    ["'Füllstand 😀'", 'Füllstand 😀'],
    ['`1 €`', '1 €'],
    ['/^[ä-ö😀]+$/u.test("ö😀")', true],
    ['/[\u00b3¹¿]/.test("¹")', true],
    ['({ größe: 1 }).größe', 1],
  ])('are escaped in %s', (source, value) => {
    const escaped = escapeLetters(source, 'a.js');
    expect(escaped).toMatch(/^[\0-\x7f]*$/);
    expect(runInNewContext(escaped)).toBe(value);
  });

  it.each(["'\\é'", 'String.raw`é`'])('cannot be in %s', (source) => {
    expect(() => escapeLetters(source, 'a.js')).toThrow('a.js');
  });

  it('are in no file of the program', () => {
    const files = readdirSync(program).filter((name) => name.endsWith('.js'));
    expect(files.length).toBeGreaterThan(10);
    for (const name of files) expect(readFileSync(join(program, name), 'latin1')).toMatch(/^[\0-\x7f]*$/);
  });
});
