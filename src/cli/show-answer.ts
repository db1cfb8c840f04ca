// Command line: the answer. In: the three figures that open the report, the files written. Out: words on the console.
import { stdout } from 'node:process';
import type { AnswerFigure } from '../report/sections/answer/view.js';
import { showPlain } from './show-plain.js';

/** Question, figure and detail of each, then where the files are. */
export function showAnswer(answer: readonly AnswerFigure[], files: readonly string[]): void {
  const told = answer.map(({ question, figure, detail }) =>
    [question, `  ${figure}`, `  ${detail}`].map(showUnfenced).join('\n'),
  );
  stdout.write(`${told.join('\n\n')}\n\nWritten:\n${files.map(showPlain).join('\n')}\n`);
}

/** The report fences names off with isolating marks (U+2068, U+2069), which a terminal has no use for. */
const showUnfenced = (text: string): string => showPlain(text.replace(/[\u2068\u2069]/g, ''));
