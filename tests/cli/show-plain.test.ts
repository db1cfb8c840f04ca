import { expect, it } from 'vitest';
import { showPlain } from '../../src/cli/show-plain.js';

/** UAX #9 and the general categories of Unicode, as the engine has them. */
const unseen = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/u;

it('spells out every control, separator of lines and mark of direction, and no other letter', () => {
  const letters = Array.from({ length: 0x110000 }, (_, code) => String.fromCodePoint(code));
  expect(letters.filter((letter) => (showPlain(letter) !== letter) !== unseen.test(letter))).toEqual([]);
  expect(showPlain('a\u001b[31mb')).toBe('a\\u001b[31mb');
});
