// Command line: the problems of the sheets. In: problems. Out: a sentence each on the error stream, repeats capped.
import { stderr } from 'node:process';
import { capRepeats, mostProblems } from '../problems/order-problems.js';
import { wordProblem } from '../problems/word-problem.js';
import { showPlain } from './show-plain.js';

/** A problem as the sheets give it. */
export type Problem = Parameters<typeof wordProblem>[0];

/** Prints every problem and how many there are; without problems nothing. */
export function showProblems(problems: readonly Problem[]): void {
  if (problems.length === 0) return;
  const lines = capRepeats(problems).flatMap(({ shown, more }) => [
    ...shown.map((one) => `${one.severity}: ${showPlain(wordProblem(one))}`),
    ...(more === 0 ? [] : [`  and ${more} more of the same in this column`]),
  ]);
  stderr.write(`${[...lines, countProblems(problems)].join('\n')}\n`);
}

/** `2 errors, 1 warning` */
export function countProblems(problems: readonly Problem[]): string {
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  const counts = [countOf(errors, 'error'), countOf(problems.length - errors, 'warning')];
  const told = counts.filter((text) => !text.startsWith('0 ')).join(', ');
  return problems.length < mostProblems ? told : `${told}; there may be more`;
}

/** `1 figure`, `20 figures` */
export function countOf(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}
