// Sheets in which everything is wrong: problems are kept up to a number, and no error is lost to warnings before it.
import { distance } from 'fastest-levenshtein';
import { beforeEach, expect, it, vi } from 'vitest';
import type { Problem } from '../../../src/model/problem.js';
import { type ProblemCode, problem } from '../../../src/problems/catalogue.js';
import { makeFindings, tell } from '../../../src/sheets/check/collect-findings.js';
import { findNearest } from '../../../src/sheets/check/find-nearest.js';

// The real comparison, counted.
vi.mock('fastest-levenshtein', { spy: true });
beforeEach(() => {
  vi.mocked(distance).mockClear();
});

const of = (code: ProblemCode): Problem<ProblemCode> => problem(code, { file: 'pots.csv' });

it('keeps a hundred thousand problems', () => {
  const findings = makeFindings();
  for (let count = 0; count < 100_500; count += 1) tell(findings, of('near-column'));
  expect(findings.problems).toHaveLength(100_000);
  for (let count = 0; count < 2000; count += 1) tell(findings, of('not-a-volume'));
  expect(findings.problems).toHaveLength(101_000);
  expect(findings.problems.at(-1)?.severity).toBe('error');
});

// Comparing takes the lengths of both multiplied.
it.each([
  ['a name of a hundred letters with one as long as can be near it', 100, 133, 1],
  ['none of a hundred with a longer one', 100, 134, 0],
  ['no name that is longer than any', 101, 101, 0],
  ['nor any of thirty thousand letters', 30_000, 30_000, 0],
])('compares %s', (_, letters, others, comparisons) => {
  const other = 'x'.repeat(others);
  expect(findNearest('x'.repeat(letters), [other])).toBe(comparisons === 0 ? '' : other);
  expect(distance).toHaveBeenCalledTimes(comparisons);
});
