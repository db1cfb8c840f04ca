// Sheets in which everything is wrong: problems are kept up to a number, and no error is lost to warnings before it.
import { expect, it } from 'vitest';
import type { Problem } from '../../../src/model/problem.js';
import { type ProblemCode, problem } from '../../../src/problems/catalogue.js';
import { makeFindings, tell } from '../../../src/sheets/check/collect-findings.js';
import { findNearest } from '../../../src/sheets/check/find-nearest.js';

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
  const started = performance.now();
  expect(
    findNearest(
      one,
      Array.from({ length: 1000 }, () => other),
    ),
  ).toBe('');
  expect(performance.now() - started).toBeLessThan(1000);
  expect(findNearest('x'.repeat(100), ['x'.repeat(99)])).toBe('x'.repeat(99));
});
