// Every problem code, through the real readers and checks on real files: exact words, and no follow-up problems.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { problemCodes } from '../../src/problems/catalogue.js';
import { wordProblem } from '../../src/problems/word-problem.js';
import { readSheets } from '../../src/sheets/read-sheets.js';
import { armyCases } from './army-cases.js';
import { cellCases } from './cell-cases.js';
import { crossCases } from './cross-cases.js';
import { fileCases } from './file-cases.js';
import { ledgerCases } from './ledger-cases.js';
import { logCases } from './log-cases.js';
import { modelCases } from './model-cases.js';
import { fourShortSheets, type ProblemCase, writeSheets } from './problem-case.js';
import { swapCases } from './swap-cases.js';

const known = { assumptions: registry, today: '2026-11-02' };
let dir = '';

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'halfpot-problems-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

async function problemsOf(one: ProblemCase) {
  await one.make(dir);
  const { sheets, problems } = await readSheets(one.path?.(dir) ?? dir, known);
  expect(sheets === undefined).toBe(problems.some(({ severity }) => severity === 'error'));
  return problems;
}

const titled = (cases: readonly ProblemCase[]): (readonly [string, ProblemCase])[] =>
  cases.map((one) => [`${one.code}: ${one.says[0]}`, one] as const);

describe('files, tables and headers', () => {
  it.each(titled(fileCases))('%s', async (_, one) => {
    const problems = await problemsOf(one);
    expect(problems.filter(({ code }) => code === one.code).map(wordProblem)).toEqual(one.says);
  });
});

describe('cells and rows', () => {
  it.each(titled([...cellCases, ...crossCases, ...logCases, ...ledgerCases, ...modelCases, ...swapCases]))(
    '%s',
    async (_, one) => {
      const problems = await problemsOf(one);
      expect(problems.map(wordProblem)).toEqual(one.says);
      expect([...new Set(problems.map(({ code }) => code))]).toEqual([one.code]);
    },
  );
});

describe('all codes', () => {
  const cases = [
    ...fileCases,
    ...cellCases,
    ...crossCases,
    ...logCases,
    ...ledgerCases,
    ...modelCases,
    ...swapCases,
    ...armyCases,
  ];

  it('have a case each', () => {
    const cased = new Set(cases.map(({ code }) => code));
    expect(problemCodes.filter((code) => !cased.has(code))).toEqual([]);
  });

  it('are the only ones that cases name', () => {
    const codes: readonly string[] = problemCodes;
    expect(cases.filter(({ code }) => !codes.includes(code)).map(({ code }) => code)).toEqual([]);
  });
});

describe('the four short sheets', () => {
  it('have no problem', async () => {
    writeSheets(dir, fourShortSheets);
    expect((await readSheets(dir, known)).problems).toEqual([]);
  });
});
