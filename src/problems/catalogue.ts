// Problems: every code with its severity and exact words. In: a code, a place, what was found and expected.
// Out: a Problem. The words of one area stand in one file; a new code goes there, with a test of its words.
import type { Place, Problem } from '../model/problem.js';
import { armyProblems } from './army-problems.js';
import { cellProblems } from './cell-problems.js';
import { crossProblems } from './cross-problems.js';
import { fileProblems } from './file-problems.js';
import { modelProblems } from './model-problems.js';
import { noteProblems } from './note-problems.js';
import { useProblems } from './use-problems.js';
import type { Wording } from './wording.js';

const catalogue = {
  ...armyProblems,
  ...fileProblems,
  ...noteProblems,
  ...cellProblems,
  ...modelProblems,
  ...crossProblems,
  ...useProblems,
};

export type ProblemCode = keyof typeof catalogue;

export const problemCodes = Object.keys(catalogue) as ProblemCode[];

/** What a problem's words need beside its place. */
export interface Details {
  readonly found?: string;
  readonly expected?: string;
  /** Takes the place of the code's own hint where the site knows better, e.g. a near name. */
  readonly hint?: string;
}

/** Makes a problem of `code` at `place`. A `[...]` of the code's own hint falls away where nothing is expected. */
export function problem(code: ProblemCode, place: Place, details: Details = {}): Problem<ProblemCode> {
  const { found = '', expected = '' } = details;
  const { severity, hint: ownHint } = catalogue[code];
  const hint = fill(details.hint ?? settle(ownHint, expected), found, expected);
  return { code, severity, ...place, found, expected, hint };
}

/** What is wrong, in words, without place and hint. */
export function saysOf(of: Problem): string {
  const wording: Wording | undefined = catalogue[of.code as ProblemCode];
  return wording === undefined ? of.code : fill(settle(wording.says, of.expected), of.found, of.expected);
}

function settle(hint: string, expected: string): string {
  return hint.replace(/\[(.*?)\]/g, expected === '' ? '' : '$1');
}

function fill(text: string, found: string, expected: string): string {
  return text.replace(/\{(found|expected)\}/g, (_, which: string) => (which === 'found' ? found : expected));
}
