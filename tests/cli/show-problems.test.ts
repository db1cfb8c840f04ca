import { describe, expect, it } from 'vitest';
import { showPlain } from '../../src/cli/show-plain.js';
import { countProblems, type Problem } from '../../src/cli/show-problems.js';

const of = (severity: Problem['severity']): Problem => ({
  code: 'not-a-volume',
  severity,
  file: 'pots.csv',
  found: '',
  expected: '',
  hint: '',
});

describe('problems on the console', () => {
  it.each([
    [[], ''],
    [[of('error')], '1 error'],
    [[of('warning'), of('warning')], '2 warnings'],
    [[of('warning'), of('error'), of('error')], '2 errors, 1 warning'],
  ])('counts %#', (problems, words) => {
    expect(countProblems(problems)).toBe(words);
  });

  it('says where it has stopped counting', () => {
    const many = Array.from({ length: 100_000 }, () => of('error'));
    expect(countProblems(many)).toBe('100000 errors; there may be more');
    expect(countProblems(many.slice(1))).toBe('99999 errors');
  });

  // Control sequences: ECMA-48. Marks of direction: Unicode UAX #9.
  it.each([
    ['red\u001b[31m', 'red\\u001b[31m'],
    ['a\nb\r\tc', 'a\\u000ab\\u000d\\u0009c'],
    ['\u009b2J', '\\u009b2J'],
    ['\u202egnp.exe', '\\u202egnp.exe'],
    ['Öl, 色, 🎨 – “fine”', 'Öl, 色, 🎨 – “fine”'],
  ])('shows %j as %j', (text, shown) => {
    expect(showPlain(text)).toBe(shown);
  });
});
