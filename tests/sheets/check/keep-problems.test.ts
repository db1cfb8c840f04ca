// Sheets in which everything is wrong: problems are kept up to a number, and no error is lost to warnings before it.
import { distance } from 'fastest-levenshtein';
import { expect, it, vi } from 'vitest';
import type { Problem } from '../../../src/model/problem.js';
import { type ProblemCode, problem } from '../../../src/problems/catalogue.js';
import { makeFindings, tell } from '../../../src/sheets/check/collect-findings.js';
import { findNearest } from '../../../src/sheets/check/find-nearest.js';

vi.mock('fastest-levenshtein', async (importReal) => {
  const real = await importReal<typeof import('fastest-levenshtein')>();
  return { ...real, distance: vi.fn(real.distance) };
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

it('compares no names that are longer than any', () => {
  const [one, other] = ['x'.repeat(30_000), `${'x'.repeat(29_999)}y`];
  expect(findNearest(one, [other])).toBe('');
  expect(distance).not.toHaveBeenCalled();
  expect(findNearest('x'.repeat(100), ['x'.repeat(99)])).toBe('x'.repeat(99));
});
